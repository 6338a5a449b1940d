// Numbers into coherent SI and back.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { CATALOGUE, DEFINITIONS } from '../../src/units/catalogue.ts';
import { differenceFromSI, differenceToSI, differenceUnit, fromSI, toSI } from '../../src/units/quantity.ts';
import { parseUnit, unitOf } from '../../src/units/read-unit.ts';
import { PREFIXES } from '../../src/units/symbols/prefixes.ts';
import { numberText, spelling } from './support.ts';

const unit = (text: string) => (text === '' ? null : unitOf(text));

describe('exact scaling (L16): equal to the bit', () => {
  const check = (number: string, text: string, expected: number) =>
    it(`${number} ${text} is ${expected}`, () => assert.equal(toSI(number, unit(text)), expected));
  check('0.1', 'kV', 100);
  check('7', '%', 0.07);
  check('92.4', '%', 0.924);
  check('0.3', 'µF', 3e-7);
  check('4.7', 'nF', 4.7e-9);
  check('1.1', 'mohm', 0.0011);
  check('2.5', 'mm²', 2.5e-6);
  check('17.241', 'nohm·m', 17.241e-9);
  check('18.1', 'ohm/km', 0.0181);
  check('115', 'A·s^(1/2)/mm²', 115e6);
  check('1', 'in', 0.0254);
  check('12.7', 'mm', 0.0127);
  check('0.5', 'in', 0.0127);
  check('36', 'km/h', 10);
  check('1450', 'rpm', 1450 / 60);
  check('1', 'lb', 0.45359237);
  check('1', 'kWh', 3.6e6);
  check('3', '', 3);
  check('1.2e-3', 'ohm', 0.0012);
  check('1E3', 'V', 1000);
  check('1e+3', 'V', 1000);
  check('-5', 'V', -5);
  check('−5', 'V', -5);
  check('-0', 'V', 0);
  check('pi', 'rad', Math.PI);
  check('π', '', Math.PI);
  check('1', 'hp', 745.6998715822702);
  check('0', 'degC', 273.15);
  check('-5', 'degC', 268.15);
  check('1e400', 'V', Number.POSITIVE_INFINITY);
  check('1e-400', 'V', 0);
  check('1e308', 'kV', Number.POSITIVE_INFINITY);
  check('1e9999999999999999999', '', Number.POSITIVE_INFINITY);
  for (const text of ['', 'x', '1,5', '1 000', '.5', '5.', '0x10', 'Infinity', 'pie'])
    it(`"${text}" is no number`, () => assert.ok(Number.isNaN(toSI(text, null))));
});

describe('from coherent SI', () => {
  const check = (value: number, text: string, expected: number) =>
    it(`${value} is ${expected} ${text}`, () => assert.equal(fromSI(value, unit(text)), expected));
  check(100, 'kV', 0.1);
  check(0.07, '%', 7);
  check(0.0254, 'in', 1);
  check(0.000408, 'µohm', 408);
  check(268.15, 'degC', -5);
  check(1450 / 60, 'rpm', 1450);
  check(3, '', 3);
  check(746, 'hp_electric', 1);
});

describe('points and differences (A1, A3)', () => {
  const near = (found: number, expected: number) => assert.ok(Math.abs(found - expected) < 1e-9, `${found}`);
  it('77 degF is 25 degC', () => near(fromSI(toSI('77', unitOf('degF')), unitOf('degC')), 25));
  it('-40 degF is -40 degC', () => near(fromSI(toSI('-40', unitOf('degF')), unitOf('degC')), -40));
  it('a difference has no offset', () => {
    assert.equal(differenceToSI('2', unitOf('degC')), 2);
    near(differenceFromSI(2, unitOf('degF')), 3.6);
    assert.equal(differenceToSI('2', null), 2);
  });
  const check = (of: string, expected: string) =>
    it(`differences of ${of} are in ${expected}`, () => assert.equal(differenceUnit(unitOf(of)), unitOf(expected)));
  check('degC', 'K');
  check('degF', 'degR');
  check('K', 'K');
  check('degR', 'degR');
  check('kV', 'kV');
  check('%/degC', '%/degC');
});

describe('laws of scaling', () => {
  it('a prefix moves the decimal exponent and does nothing else', () => {
    const cases = DEFINITIONS.flatMap((d) => (d.prefixes?.split(' ') ?? []).map((prefix) => ({ base: d.symbol, prefix })));
    assert.ok(cases.length > 100);
    fc.assert(
      fc.property(fc.constantFrom(...cases), fc.nat(1e9), ({ base, prefix }, number) => {
        const shifted = `${number}e${PREFIXES.get(prefix)!.decimal}`;
        assert.equal(toSI(String(number), unitOf(prefix + base)), toSI(shifted, unitOf(base)));
      }),
    );
  });

  it('whole factors are applied exactly and rounded once', () => {
    const whole = [...CATALOGUE.values()].filter((s) => Number.isInteger(s.factor) && s.factor < 1e6 && !s.point);
    fc.assert(
      fc.property(fc.constantFrom(...whole), fc.nat(1e9), fc.integer({ min: -9, max: 9 }), (symbol, digits, exponent) => {
        const exact = `${BigInt(digits) * BigInt(symbol.factor)}e${exponent + symbol.decimal}`;
        assert.equal(toSI(`${digits}e${exponent}`, parseUnit(symbol.symbol)), Number(exact));
      }),
    );
  });

  it('moving the decimal point keeps numbers of up to 15 digits to the bit, both ways', () => {
    const moved = [...CATALOGUE.values()].filter((s) => s.factor === 1 && !s.point);
    const digits = fc.maxSafeNat().map((n) => Number(String(n).slice(0, 15)));
    fc.assert(
      fc.property(fc.constantFrom(...moved), digits, fc.integer({ min: -20, max: 6 }), ({ symbol, decimal }, n, exponent) => {
        const number = Number(`${n}e${exponent}`);
        assert.equal(toSI(`${n}e${exponent}`, unitOf(symbol)), Number(`${n}e${exponent + decimal}`));
        assert.equal(toSI(String(number), unitOf(symbol)), Number(`${n}e${exponent + decimal}`));
        assert.equal(fromSI(Number(`${n}e${exponent + decimal}`), unitOf(symbol)), number);
      }),
      { numRuns: 2000 },
    );
  });

  it('there and back is the same number to the last bits', () => {
    fc.assert(
      fc.property(numberText, spelling, (number, text) => {
        const u = unitOf(text);
        const found = fromSI(toSI(number, u), u);
        const size = Math.max(Math.abs(Number(number)), Math.abs(u.offset / u.factor));
        assert.ok(Math.abs(found - Number(number)) <= 4 * Number.EPSILON * size, `${found}`);
      }),
    );
  });

  it('a difference of two points is the difference of their numbers', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('degC', 'degF'),
        fc.integer({ min: -100, max: 1000 }),
        fc.integer({ min: -100, max: 1000 }),
        (text, a, b) => {
          const u = unitOf(text);
          const difference = differenceFromSI(toSI(String(a), u) - toSI(String(b), u), differenceUnit(u));
          assert.ok(Math.abs(difference - (a - b)) < 1e-9);
        },
      ),
    );
  });
});
