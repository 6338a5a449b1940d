// The highlighting: each *.syntax.txt file marks scopes under its lines; and the grammar file is the one its source makes.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseGrammarTestCase, runGrammarTestCase } from 'vscode-tmgrammar-test/dist/unit/index.js';
import { grammar } from '../../syntax/grammar.ts';
import { grammarFile, openRegistry } from './support.ts';

const here = fileURLToPath(new URL('.', import.meta.url));

describe('the highlighting', () => {
  // The Markdown grammar embeds fifty languages that are not loaded here, and the registry warns of each.
  const { warn } = console;
  before(() => {
    console.warn = (...values: unknown[]) => String(values[0]).startsWith('grammar not found') || warn(...values);
  });
  after(() => {
    console.warn = warn;
  });

  it('is made from the grammar source (UPDATE=1 writes it)', () => {
    const text = `${JSON.stringify(grammar, null, 2)}\n`;
    if (process.env['UPDATE']) writeFileSync(grammarFile, text);
    assert.ok(
      readFileSync(grammarFile, 'utf8') === text,
      'syntax/ampwright.tmLanguage.json is not what syntax/grammar.ts makes; run this test with UPDATE=1',
    );
  });

  for (const name of readdirSync(here).filter((name) => name.endsWith('.syntax.txt'))) {
    const test = parseGrammarTestCase(readFileSync(path.join(here, name), 'utf8'));
    it(test.metadata.description || name, async () => {
      assert.notEqual(test.assertions.length, 0);
      const failures = await runGrammarTestCase(openRegistry(), test);
      const words = failures.map((f) => {
        const text = test.source[f.srcLine]!.slice(f.start, f.end);
        return `line ${f.line + 1}, “${text}”: missing ${f.missing.join(' ') || '-'}, unexpected ${f.unexpected.join(' ') || '-'}, is ${f.actual.join(' ')}`;
      });
      assert.equal(words.join('\n'), '');
    });
  }
});
