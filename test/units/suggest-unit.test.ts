// What is offered for a word that is no unit.
import assert from 'node:assert/strict';
import { findSymbol } from '../../src/units/catalogue.ts';
import { parseUnit } from '../../src/units/read-unit.ts';
import { suggestUnits, TRADE_SPELLINGS } from '../../src/units/suggest-unit.ts';

describe('what to write instead of a word that is no unit', () => {
  const check = (word: string, ...expected: string[]) =>
    it(`${word}: ${expected.join(', ') || 'nothing'}`, () => assert.deepEqual(suggestUnits(word), expected));
  check('kw', 'kW');
  check('KW', 'kW');
  check('kva', 'kVA');
  check('kVAR', 'kvar');
  check('VAR', 'var');
  check('HP', 'hp');
  check('Nm', 'N·m');
  check('kNm', 'kN·m');
  check('Vs', 'V·s');
  check('lbft', 'lbf·ft');
  check('mm2', 'mm²');
  check('sqmm', 'mm²');
  check('m3', 'm³');
  check('sec', 's');
  check('amps', 'A');
  check('t', 'tonne');
  check('l', 'L');
  // Milli and mega are a factor of 1e9 apart: the letter as typed comes first.
  check('mOhm', 'mohm', 'Mohm');
  check('MOhm', 'Mohm', 'mohm');
  check('degc', 'degC');
  check('kohms', 'kohm');
  check('foo');
  check('x_1');

  it('offers units only, and for no word that is one', () => {
    for (const [word, unit] of TRADE_SPELLINGS) {
      assert.equal(parseUnit(unit)?.text, unit);
      assert.equal(findSymbol(word), undefined, word);
    }
  });
});
