// The highlighting as an editor applies it: scopes of each piece of a text.

import { createRequire } from 'node:module';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { createRegistry } from 'vscode-tmgrammar-test/dist/common/index.js';

const syntax = fileURLToPath(new URL('../../syntax', import.meta.url));
// The editor's own Markdown grammar, into which fenced blocks are injected.
const editor = path.join(path.dirname(createRequire(import.meta.url).resolve('code-server/package.json')), 'lib/vscode');

export const grammarFile = path.join(syntax, 'ampwright.tmLanguage.json');

export const openRegistry = () =>
  createRegistry([
    { scopeName: 'source.ampwright', path: grammarFile },
    {
      scopeName: 'markdown.ampwright.codeblock',
      path: path.join(syntax, 'markdown-injection.tmLanguage.json'),
      injectTo: ['text.html.markdown'],
    },
    { scopeName: 'text.html.markdown', path: path.join(editor, 'extensions/markdown-basics/syntaxes/markdown.tmLanguage.json') },
  ]);

const notation = openRegistry().loadGrammar('source.ampwright');

/** The innermost scope at each offset of a calc block's code, without the language's suffix; empty where there is none. */
export async function innermostScopes(code: string): Promise<readonly string[]> {
  const grammar = await notation;
  const scopes: string[] = [];
  let state = null;
  for (const line of code.split('\n')) {
    const { tokens, ruleStack } = grammar!.tokenizeLine(line, state);
    state = ruleStack;
    for (const { startIndex, endIndex, scopes: all } of tokens) {
      // The innermost scope of its own: a separator within a text is part of the text.
      const own =
        all
          .slice(1)
          .at(-1)
          ?.replace(/\.ampwright$/, '') ?? '';
      for (let i = startIndex; i < Math.min(endIndex, line.length); i++) scopes.push(own);
    }
    scopes.push('');
  }
  return scopes;
}
