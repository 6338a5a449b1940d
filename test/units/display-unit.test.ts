// The unit that a calculated value is shown in when nothing declares one.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { multiply } from '../../src/units/dimension.ts';
import { displayUnit } from '../../src/units/display-unit.ts';
import { makeUnit } from '../../src/units/make-unit.ts';
import { fromSI } from '../../src/units/quantity.ts';
import { parseUnit, unitOf } from '../../src/units/read-unit.ts';
import { anyDimension, parts } from './support.ts';

/** A value of `unit`'s dimension and kind, of this coherent magnitude. */
function check(unit: string, magnitude: number, expected: string): void {
  it(`${magnitude} of ${unit === '' ? 'a plain number' : unit} in ${expected || 'no unit'}`, () => {
    const { dimension, power, point } = unitOf(unit === '' ? '1' : unit);
    assert.equal(displayUnit(dimension, power, point, magnitude).text, expected);
  });
}

describe('a named unit with a prefix so that 1 ≤ |v| < 1000', () => {
  check('W/A', 400, 'V');
  check('V', 12_000, 'kV');
  check('V', 0.0124, 'mV');
  check('V', -0.0124, 'mV');
  check('V', 0, 'V');
  check('V', 1, 'V');
  check('V', 0.999, 'mV');
  check('V', 1 - 1e-16, 'V');
  check('V', 1000, 'kV');
  check('V', 1000 - 1e-13, 'kV');
  check('V/A', 0.000408, 'µohm');
  check('V/A', 5.086, 'ohm');
  check('V/A', 2e9, 'Gohm');
  check('V·A', 11_000, 'kW');
  check('A·s/V', 4.7e-11, 'pF');
  check('V·s/A', 0.25, 'mH');
  check('A/V', 0.02, 'mS');
  check('N/m²', 1.2e5, 'kPa');
  check('Wb/m²', 0.9, 'mT');
  check('A·s', 20, 'C');
  check('in', 0.03, 'mm');
  check('in', 250, 'm');
  check('in', 1200, 'km');
  check('lb', 0.02, 'g');
  check('lb', 5000, 'kg');
});

describe('what lies far outside all prefixes keeps the plain unit', () => {
  check('V', 1e-17, 'V');
  check('W', 1e16, 'W');
  check('V', Number.POSITIVE_INFINITY, 'V');
  check('V', Number.NaN, 'V');
});

describe('kinds of power keep their symbol', () => {
  check('VA', 6000, 'kVA');
  check('var', 3000, 'kvar');
  check('hp', 5000, 'kW');
  check('var', 0, 'var');
});

describe('time, area, volume and temperature as engineers read them', () => {
  check('s', 0.05, 'ms');
  check('s', 12, 's');
  check('s', 999, 's');
  check('s', 5000, 'min');
  check('s', 36_000, 'h');
  check('s', 2e6, 'd');
  check('s', 3e8, 'year');
  check('s', 0, 's');
  check('m²', 2.5e-6, 'mm²');
  check('m²', 2e-10, 'µm²');
  check('m²', 3, 'm²');
  check('m³', 0.004, 'L');
  check('m³/s', 0.02, 'L/s');
  check('K', 0.5, 'K');
  check('K', 80, 'K');
  check('degC', 313.15, 'degC');
  check('degF', 313.15, 'degC');
});

describe('short products instead of base units', () => {
  check('A²·s', 1e6, 'A²·s');
  check('V/m', 0.02, 'mV/m');
  check('V/m', 20, 'V/m');
  check('ohm/m', 0.0181, 'mohm/m');
  check('ohm·m', 1.7241e-8, 'nohm·m');
  check('kg·m²', 0.01, 'kg·m²');
  check('W/(m²·K)', 10, 'W/(m²·K)');
  check('W/m²', 500, 'W/m²');
  check('K/W', 0.5, 'K/W');
  check('J/K', 400, 'J/K');
  check('J/(kg·K)', 385, 'J/(kg·K)');
  check('N/m', 5, 'N/m');
  check('N·s', 5, 'N·s');
  check('kg/m³', 8960, 'kg/m³');
  check('V²/K²', 2.44e-8, 'V²/K²');
  check('1/K', 0.00393, '1/K');
  check('m/s', 3, 'm/s');
  check('m/s', 1200, 'm/s');
  check('m²/s²', 9, 'm²/s²');
  check('A/m²', 4e6, 'A/mm²');
  check('A·s^(1/2)/m²', 1.15e8, 'A·s^(1/2)/mm²');
  check('V²', 9, 'V²');
  check('V^(1/2)', 9, 'V^(1/2)');
  check('1', 0.5, '');
  check('%', 0.5, '');
});

describe('rotation counts', () => {
  check('Hz', 50, '1/s');
  check('rpm', 24, '1/s');
  check('1/s', 2000, '1/s');
  check('Hz²', 2500, '1/s²');
  check('rad/s', 314, 'rad/s');
  check('rad·Hz', 314, 'rad/s');
  check('rad/s²', 3, 'rad/s²');
  check('rad', 0.5, 'rad');
  check('deg', 0.5, 'rad');
  check('rad/rev', 6.28, 'rad/rev');
  check('cycle', 3, 'cycle');
  check('rev', 3, 'rev');
  check('cycle/rev', 2, '');
  check('s/cycle', 0.02, 'ms');
  check('J', 12, 'J');
  check('N·m', 12, 'J');
  check('J/rad', 120, 'N·m');
  check('kJ·s/(rad·s)', 1200, 'kN·m');
  check('W/rpm', 120, 'J/rev');
  check('kg·m²·rpm²', 12, 'J·rev²');
  check('kg·m²·rev²·rad²/s²', 12, 'J');
  check('V/Hz', 8, 'V/Hz');
  check('V·s', 8, 'Wb');
});

describe('laws of the display unit', () => {
  const magnitude = fc.double({ noNaN: true });

  it('has the dimension of the value, counts aside, and is one that reads back', () => {
    fc.assert(
      fc.property(anyDimension, magnitude, (dimension, size) => {
        const unit = displayUnit(dimension, null, false, size);
        assert.equal(unit.dimension.si, dimension.si);
        assert.equal(unit.text === '' ? unit : parseUnit(unit.text), unit);
      }),
    );
  });

  it('is the same whatever was asked before', () => {
    fc.assert(
      fc.property(parts, magnitude, magnitude, (given, size, other) => {
        const dimension = makeUnit(given)?.dimension;
        fc.pre(dimension !== undefined);
        const first = displayUnit(dimension!, null, false, size);
        displayUnit(dimension!, 'apparent', false, other);
        assert.equal(displayUnit(dimension!, null, false, size), first);
      }),
    );
  });

  it('shows every named unit between 1 and 1000 within its prefixes', () => {
    const named = ['V', 'A', 'ohm', 'W', 'VA', 'var', 'J', 'N', 'H', 'T'];
    fc.assert(
      fc.property(fc.constantFrom(...named), fc.double({ min: 1.01e-6, max: 0.99e6, noNaN: true }), (name, size) => {
        const { dimension, power } = unitOf(name);
        const shown = fromSI(size, displayUnit(dimension, power, false, size));
        const beyond = name === 'T' && size > 1000;
        assert.ok(beyond || (shown >= 1 - 1e-8 && shown < 1000 + 1e-5), `${shown}`);
      }),
    );
  });

  it('of a product depends on the dimension alone, not on how it came about', () => {
    assert.equal(
      displayUnit(multiply(unitOf('V').dimension, unitOf('A').dimension), null, false, 5),
      displayUnit(unitOf('J/s').dimension, null, false, 5),
    );
  });
});
