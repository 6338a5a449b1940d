// Highlighting and lexer agree: what the one colours as a number, a unit, a text or a word of the notation, the other takes for it.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { lex } from '../../src/language/lexer.ts';
import type { Token } from '../../src/language/token.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { calcCells } from '../../src/sheet/sheet.ts';
import { innermostScopes } from './support.ts';

/** What each kind of token may be coloured as. A name may also be a word that means something in one place only (K2). */
const scopesOf: Readonly<Record<Exclude<Token['kind'], 'error'>, RegExp>> = {
  number: /^constant\.numeric(\.pi)?$/,
  quantity: /^constant\.numeric\.quantity$/,
  unit: /^keyword\.other\.unit$/,
  date: /^constant\.other\.date$/,
  text: /^(string\.quoted\.double|constant\.character\.escape)$/,
  name: /^(variable|entity\.name\.function|support|keyword\.other|storage\.type)\b/,
  word: /^(keyword|constant\.language|variable\.language|variable\.other\.property|variable\.other\.definition\.column)\b/,
  superscript: /^keyword\.operator\.power$/,
  operator: /^keyword\.operator\b/,
  punctuation: /^(punctuation|keyword\.operator\.assignment)\b/,
  plusminus: /^keyword\.operator\.uncertainty$/,
};

/** Where the two disagree, in words. */
async function disagreements(code: string): Promise<readonly string[]> {
  const scopes = await innermostScopes(code);
  const { tokens, trivia } = lex(code);
  const wrong: string[] = [];
  const compare = (what: string, { start, end }: { start: number; end: number }, allowed: RegExp) => {
    for (let i = start; i < end; i++) {
      if (allowed.test(scopes[i]!)) continue;
      wrong.push(`${what} “${code.slice(start, end)}” is coloured ${scopes[i] || 'as nothing'} at “${code.slice(i, i + 5)}” in: ${code}`);
      return;
    }
  };
  for (const token of tokens) if (token.kind !== 'error') compare(token.kind, token.at, scopesOf[token.kind]);
  for (const { kind, at } of trivia) if (kind === 'comment') compare(kind, at, /^comment\.line/);
  return wrong;
}

const folder = (path: string) => new URL(`../../${path}/`, import.meta.url);

describe('the highlighting agrees with the lexer', () => {
  for (const path of ['src/library', 'samples']) {
    for (const name of readdirSync(folder(path)).filter((name) => name.endsWith('.ampwright.md'))) {
      it(`in ${path}/${name}`, async () => {
        const cells = calcCells(readSheet(readFileSync(new URL(name, folder(path)), 'utf8')));
        assert.notEqual(cells.length, 0);
        const found = await Promise.all(cells.map((cell) => disagreements(cell.text)));
        assert.deepEqual(found.flat(), []);
      });
    }
  }

  it('on numbers, units and what may follow them', async () => {
    const pieces = fc.constantFrom('2', '1.5', '1e3', '0', ' ', ' ', '*', '·', '/', '^2', '²', '(', ')', '.col', '1/', 'V', 'A', 'kW', 'm', 'K', '%', '°C', 'ohm', 'rad', 'pi', 'x', 'I_n', ',', ' + ', 's', 'min', '['); // biome-ignore format: one list
    const line = fc.array(pieces, { minLength: 1, maxLength: 8 }).map((all) => `x = 1 V ${all.join('')}`);
    await fc.assert(
      fc.asyncProperty(line, async (code) => {
        // What the lexer reports as wrong need not be coloured as if it were right.
        fc.pre(lex(code).problems.length === 0);
        assert.deepEqual(await disagreements(code), []);
      }),
      { numRuns: 1000 },
    );
  });
});
