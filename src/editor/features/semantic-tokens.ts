// Colours by meaning: inputs, computed values, functions, columns and the rest of the names.
import * as vscode from 'vscode';
import { semanticTokens, TOKEN_KINDS, TOKEN_MODIFIERS, type TokenKind, type TokenModifier } from '../../assist/semantic-tokens.ts';
import { PAGES, type Pages } from '../pages.ts';

/** The editor's own kinds of token, which every colour theme knows; package.json says which colours ours get where it knows none. */
const KINDS: Readonly<Record<TokenKind, string>> = {
  input: 'variable',
  computed: 'variable',
  function: 'function',
  parameter: 'parameter',
  local: 'variable',
  column: 'property',
  table: 'struct',
  instrument: 'class',
};
const MODIFIERS: Readonly<Record<TokenModifier, string>> = { definition: 'declaration', library: 'defaultLibrary' };

const types = [...new Set(TOKEN_KINDS.map((kind) => KINDS[kind]))];
const modifiers = [...TOKEN_MODIFIERS.map((modifier) => MODIFIERS[modifier]), 'readonly'];

export function colours(pages: Pages): vscode.Disposable {
  const legend = new vscode.SemanticTokensLegend(types, modifiers);
  const provider: vscode.DocumentSemanticTokensProvider = {
    async provideDocumentSemanticTokens(document) {
      const page = await pages.of(document);
      if (!page) return null;
      const tokens = page.texts.flatMap((text) =>
        semanticTokens(page.open, text).flatMap((token) => {
          const range = page.range({ text, at: token.at });
          return range?.isSingleLine ? [{ ...token, range }] : [];
        }),
      );
      const builder = new vscode.SemanticTokensBuilder(legend);
      for (const { range, kind, modifiers: own } of tokens.sort((a, b) => a.range.start.compareTo(b.range.start))) {
        // What is given is read-only to the editor's themes: it has the colour of a constant, what is computed that of a variable.
        builder.push(range, KINDS[kind], [...own.map((modifier) => MODIFIERS[modifier]), ...(kind === 'input' ? ['readonly'] : [])]);
      }
      return builder.build();
    },
  };
  return vscode.languages.registerDocumentSemanticTokensProvider(PAGES, provider, legend);
}
