// The notation's reference is true and complete: each example gives what stands beside it, and every word has its place.
import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { BUILTINS } from '../../src/language/functions/index.ts';
import { RESERVED, SOURCE_KINDS } from '../../src/language/token.ts';
import { DEFINITIONS } from '../../src/units/catalogue.ts';
import { recordedSection, sectionsOf } from '../support/reference-document.ts';

const PATH = 'syntax/reference.md';
const text = readFileSync(PATH, 'utf8');
const sections = sectionsOf(text);
// What is set as code, in blocks too.
const code = [...text.matchAll(/`+([^`]+)`+/g)].map((m) => m[1]!).join('\n');

describe('the reference of the notation', () => {
  if (process.env['UPDATE']) writeFileSync(PATH, sections.map(recordedSection).join(''));

  for (const section of sections.filter((s) => s.includes('```ampwright'))) {
    const title = /^#+ (.*)/.exec(section)![1];
    it(`gives the results that stand beside its examples: ${title}`, () => assert.equal(recordedSection(section), section));
  }

  const words: readonly (readonly [what: string, words: readonly string[]])[] = [
    ['reserved word', RESERVED],
    ['kind of source', SOURCE_KINDS],
    ['function of the mathematics', BUILTINS.map((b) => b.name)],
    ['unit', DEFINITIONS.map((d) => (d.symbol === 'cmil' ? 'kcmil' : d.symbol))],
    [
      'word that has its meaning in one place only',
      'each root step log within by on accepted until due serial calibrated instrument action mark limit readings k nu text date any'.split(
        ' ',
      ),
    ],
  ];
  for (const [what, all] of words) {
    it(`has every ${what}`, () => {
      const has = (word: string) => new RegExp(`(?<![\\p{L}\\d_])${word}(?![\\p{L}\\d_])`, 'u').test(code);
      assert.deepEqual(
        all.filter((word) => !has(word)),
        [],
      );
    });
  }
});
