// Dimensions under multiplication: an abelian group with rational powers, whose equal members are one object.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { base, divide, hasAllowedExponents, isRate, multiply, PLAIN, raise } from '../../src/units/dimension.ts';
import { rational, rationalFrom } from '../../src/units/rational.ts';
import { unitOf } from '../../src/units/read-unit.ts';
import { anyDimension, power } from './support.ts';

describe('dimensions form a group', () => {
  it('product is associative and commutative', () =>
    fc.assert(
      fc.property(anyDimension, anyDimension, anyDimension, (a, b, c) => {
        assert.equal(multiply(multiply(a, b), c), multiply(a, multiply(b, c)));
        assert.equal(multiply(a, b), multiply(b, a));
      }),
    ));
  it('the plain number changes nothing, and a quotient of equals is plain', () =>
    fc.assert(
      fc.property(anyDimension, (a) => {
        assert.equal(multiply(a, PLAIN), a);
        assert.equal(multiply(PLAIN, a), a);
        assert.equal(divide(a, a), PLAIN);
      }),
    ));
  it('powers distribute and multiply', () =>
    fc.assert(
      fc.property(anyDimension, anyDimension, power, power, (a, b, p, q) => {
        assert.equal(raise(multiply(a, b), p), multiply(raise(a, p), raise(b, p)));
        assert.equal(raise(raise(a, p), q), raise(a, rational(p.num * q.num, p.den * q.den)!));
      }),
    ));
  it('the SI part of a product is the product of the SI parts', () =>
    fc.assert(fc.property(anyDimension, anyDimension, (a, b) => assert.equal(multiply(a, b).si, multiply(a.si, b.si)))));
});

describe('named units in base units', () => {
  const check = (unit: string, product: string) =>
    it(`${unit} is ${product}`, () => assert.equal(unitOf(unit).dimension, unitOf(product).dimension));
  check('V', 'kg·m²/(s³·A)');
  check('V', 'W/A');
  check('ohm', 'V/A');
  check('S', 'A/V');
  check('F', 'A·s/V');
  check('H', 'V·s/A');
  check('Wb', 'V·s');
  check('T', 'Wb/m²');
  check('J', 'N·m');
  check('W', 'J/s');
  check('Pa', 'N/m²');
  check('C', 'A·s');
  check('psi', 'lbf/in²');
  check('cmil', 'mm²');
  check('cfm', 'ft³/min');
  check('gpm', 'gal/min');
  check('hp', 'lbf·ft/s');
  check('oersted', 'A/m');
  check('Btu', 'kWh');
  check('VA', 'var');
  check('rpm', 'rev/s');
});

describe('rates, where rotation counts matter', () => {
  const check = (unit: string, expected: boolean) =>
    it(`${unit}: ${expected}`, () => assert.equal(isRate(unitOf(unit).dimension), expected));
  check('1', true);
  check('rpm', true);
  check('rad/s²', true);
  check('%', true);
  check('s', true);
  check('m/s', false);
  check('V·s', false);
});

describe('exponents within bounds (T6)', () => {
  const check = (num: number, den: number, expected: boolean) =>
    it(`${num}/${den}: ${expected}`, () => assert.equal(hasAllowedExponents(raise(base('m'), rational(num, den)!)), expected));
  check(1, 60, true);
  check(1, 61, false);
  check(-60, 1, true);
  check(61, 1, false);
  it('stays exact while each step is checked', () => {
    let root = base('m');
    let steps = 0;
    for (; hasAllowedExponents(root); steps++) root = raise(root, { num: 1, den: 2 });
    assert.equal(steps, 6);
    assert.deepEqual(root.exponents[0], { num: 1, den: 64 });
  });
});

describe('fractions from decimals', () => {
  const check = (x: number, num: number | null, den = 1) =>
    it(`${x} is ${num === null ? 'none' : `${num}/${den}`}`, () => assert.deepEqual(rationalFrom(x), num === null ? null : { num, den }));
  check(1.6, 8, 5);
  check(-0.5, -1, 2);
  check(0, 0);
  check(1 / 3, 1, 3);
  check(0.333, null);
  check(Number.NaN, null);
  check(1e9, null);
});
