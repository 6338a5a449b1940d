// What the catalogue holds: sources, spellings, prefixes, and words that must be no unit.
import assert from 'node:assert/strict';
import { RESERVED } from '../../src/language/token.ts';
import { CATALOGUE, DEFINITIONS, findSymbol, longestSymbol, spellings } from '../../src/units/catalogue.ts';
import { PLAIN } from '../../src/units/dimension.ts';
import { spellingsOf } from '../../src/units/symbols/definition.ts';

const symbols = [...new Set(CATALOGUE.values())];

describe('unit catalogue', () => {
  it('gives every unit a name in words and a source', () => {
    for (const { symbol, name, source } of symbols) {
      assert.match(name, /\p{L}{2}/u, symbol);
      assert.match(source, /SI Brochure|NIST SP 811|IEC 80000|IAU|^common practice$/, symbol);
    }
  });

  it('spells no two units alike', () => {
    const seen = new Map<string, string>();
    for (const [spelling, { symbol }] of DEFINITIONS.flatMap(spellingsOf)) {
      assert.equal(seen.get(spelling), undefined, `${spelling} is ${symbol} and ${seen.get(spelling)}`);
      seen.set(spelling, symbol);
    }
  });

  it('shares no word with the reserved words of the notation', () => {
    assert.deepEqual(
      RESERVED.filter((word) => CATALOGUE.has(word)),
      [],
    );
  });

  it('offers each canonical spelling once, and each finds its own symbol', () => {
    assert.equal(new Set(spellings()).size, spellings().length);
    for (const spelling of spellings()) assert.equal(findSymbol(spelling)?.symbol, spelling);
    assert.deepEqual(new Set(spellings()), new Set(symbols.map((s) => s.symbol)));
  });

  it('reads every spelling as one whole symbol', () => {
    for (const [spelling, symbol] of CATALOGUE) {
      assert.deepEqual(longestSymbol(`5 ${spelling} `, 2), { symbol, end: 2 + spelling.length }, spelling);
    }
  });

  it('keeps powers of ten apart from factors, so that scaling is exact', () => {
    for (const { symbol, factor } of symbols) {
      assert.ok(factor > 0 && Number.isFinite(factor), symbol);
      assert.ok(factor === 1 || !Number.isInteger(Math.log10(factor)), symbol);
    }
  });

  it('takes degC and degF alone as points on a scale', () => {
    assert.deepEqual(
      symbols.filter((s) => s.point).map((s) => s.symbol),
      ['degC', 'degF'],
    );
    assert.deepEqual(
      symbols.filter((s) => s.offset !== 0).map((s) => s.symbol),
      ['degC', 'degF'],
    );
  });

  it('gives a kind to units of power and to nothing else', () => {
    const power = findSymbol('W')!.dimension;
    for (const s of symbols) assert.equal(s.power !== null, s.dimension === power, s.symbol);
  });

  it('counts rotation in radians, cycles and turns', () => {
    const counted = (count: 'rad' | 'cycle' | 'turn') => DEFINITIONS.filter((d) => d.dimension[count].num !== 0).map((d) => d.symbol);
    assert.deepEqual(counted('rad'), ['rad', 'deg']);
    assert.deepEqual(counted('cycle'), ['cycle', 'Hz']);
    assert.deepEqual(counted('turn'), ['rev', 'rpm']);
    assert.equal(findSymbol('%')!.dimension, PLAIN);
  });
});

describe('spellings that mean the same unit', () => {
  const check = (canonical: string, ...others: string[]) =>
    it(`${others.join(', ')} as ${canonical}`, () => {
      for (const other of others) assert.equal(findSymbol(other), findSymbol(canonical), other);
      assert.equal(findSymbol(canonical)?.symbol, canonical);
    });
  check('ohm', '\u03A9', '\u2126');
  check('kohm', 'k\u03A9', 'k\u2126');
  check('µohm', 'u\u03A9', '\u00B5\u2126', '\u03BC\u03A9', 'uohm');
  check('µF', 'uF', '\u03BCF');
  check('degC', '°C', '℃');
  check('degF', '°F', '℉');
  check('degR', '°R');
  check('deg', '°');
  check('K', '\u212A');
  check('Btu', 'BTU');
  check('kcmil', 'MCM');
});

describe('words that are no unit, though a general catalogue may have them', () => {
  const words = 'VAR dT Tm PF as at m2 ch pt li ton t l r ks min_ kHp Kohm kvA Nm pi e constructor __proto__ toString';
  for (const word of words.split(' ')) {
    it(word, () => {
      assert.equal(findSymbol(word), undefined);
      assert.equal(longestSymbol(word, 0), null);
    });
  }
});
