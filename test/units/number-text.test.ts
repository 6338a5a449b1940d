// Numbers as results show them, against exact arithmetic on whole numbers.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import {
  countText,
  coverageText,
  marginText,
  numberText,
  percentText,
  shortest,
  textWithPlaces,
  uncertainText,
} from '../../src/units/number-text.ts';

const NOTATION = /^-?(0|[1-9]\d*)(\.\d+)?(e-?\d+)?$/;

describe('a value to significant digits (F1)', () => {
  const check = (value: number, digits: number, expected: string) =>
    it(`${value} to ${digits} is ${expected}`, () => assert.equal(numberText(value, digits), expected));
  check(34.4, 4, '34.40');
  check(0.4, 4, '0.4000');
  check(34_600, 4, '34600');
  check(34_567.8, 4, '34568');
  check(9_999_999, 4, '9999999');
  check(9_999_999.5, 4, '1.000e7');
  check(10_000_000, 4, '1.000e7');
  check(1.234e8, 4, '1.234e8');
  check(-1.2345e8, 3, '-1.23e8');
  check(1e21, 4, '1.000e21');
  check(0.0001, 4, '0.0001000');
  check(0.000099996, 4, '0.0001000');
  check(0.00009999, 4, '9.999e-5');
  check(1.234e-5, 4, '1.234e-5');
  check(9.9996, 4, '10.00');
  check(999.96, 4, '1000');
  check(0, 4, '0');
  check(-0, 4, '0');
  check(-0.00001, 2, '-1.0e-5');
  check(0.001953125, 4, '0.001953');
  check(5e-324, 4, '4.941e-324');
  check(1.7976931348623157e308, 3, '1.80e308');
  check(12.5, 1, '13');
});

describe('halves go away from zero by the exact binary value (F3)', () => {
  const check = (value: number, digits: number, expected: string) =>
    it(`${value} to ${digits} is ${expected}`, () => assert.equal(numberText(value, digits), expected));
  check(2.5, 1, '3');
  check(-2.5, 1, '-3');
  check(0.125, 2, '0.13');
  check(-0.125, 2, '-0.13');
  // 1.005 lies just below, 1.015 just below, 8.345 just above the half.
  check(1.005, 3, '1.00');
  check(1.015, 3, '1.01');
  check(8.345, 3, '8.35');
});

describe('a value with its expanded uncertainty (F1)', () => {
  const check = (value: number, U: number, ...expected: [string, string]) =>
    it(`${value} ± ${U} is ${expected.join(' ± ')}`, () =>
      assert.deepEqual(uncertainText(value, U), { value: expected[0], U: expected[1] }));
  check(34.4, 0.69, '34.40', '0.69');
  check(34_612, 1234, '34600', '1200');
  check(408.2, 11.2, '408', '11');
  check(0.4, 0.0131, '0.400', '0.013');
  check(12.2333, 0.297, '12.23', '0.30');
  check(0, 0.67, '0.00', '0.67');
  check(-0.001, 0.67, '0.00', '0.67');
  check(-34.4, 0.69, '-34.40', '0.69');
  check(0.84, 0.0168, '0.840', '0.017');
  check(0.95, 0.0996, '0.95', '0.10');
  check(9.996, 0.02, '9.996', '0.020');
  check(9.9996, 0.02, '10.000', '0.020');
  check(95, 99.6, '100', '100');
  check(40, 3000, '0', '3000');
  check(50, 3000, '100', '3000');
  check(3.4612345e7, 1200, '3.46123e7', '1200');
  check(9.9999996e7, 1200, '1.000000e8', '1200');
  check(1.23e-5, 5.6e-7, '1.230e-5', '5.6e-7');
  check(1.000_012_3, 5.6e-6, '1.0000123', '5.6e-6');
  check(5e8, 3e8, '5.0e8', '3.0e8');
  check(5e6, 3e8, '1e7', '3.0e8');
  check(1, 1e-120, '1.0000000000000000', '1.0e-120');
  check(34.4, 0, '34.4', '0');
  check(34.4, Number.NaN, '34.4', '0');
});

describe('coverage factors, margins, counts, steps', () => {
  const check = (found: string, expected: string) => it(expected, () => assert.equal(found, expected));
  check(coverageText(2), '2');
  check(coverageText(2.87), '2.87');
  check(coverageText(13.97), '14');
  check(coverageText(2.1), '2.1');
  check(coverageText(2.003), '2');
  check(coverageText(2.449), '2.45');
  check(percentText(0.1399), '14');
  check(percentText(0.0946), '9.5');
  check(percentText(1.5), '150');
  check(percentText(-0.0312), '-3.1');
  check(percentText(0), '0');
  check(countText(11), '11');
  check(countText(12_345_678), '12345678');
  check(countText(-0), '0');
  check(textWithPlaces(2.25, 2), '2.25');
  check(textWithPlaces(2.2, 2), '2.20');
  check(textWithPlaces(-0.2, 0), '0');
  check(textWithPlaces(-0.004, 2), '0.00');
  check(textWithPlaces(1e22, 0), '1e22');
  check(textWithPlaces(3, -2), '3');
  check(shortest(31.5), '31.5');
  check(shortest(1e7), '1e7');
  check(shortest(0.00005), '5e-5');
});

/** value = count · 10^-scale exactly. */
function exactly(value: number): { count: bigint; scale: number } {
  let size = Math.abs(value);
  let scale = 0;
  for (; !Number.isInteger(size); scale++) size *= 2;
  return { count: BigInt(size) * 5n ** BigInt(scale), scale };
}

/** |value| in units of 10^place, halves up, in whole numbers throughout. */
function roundedTo(value: number, place: number): bigint {
  const { count, scale } = exactly(value);
  const shift = scale + place;
  if (shift <= 0) return count * 10n ** BigInt(-shift);
  const unit = 10n ** BigInt(shift);
  return (2n * count + unit) / (2n * unit);
}

/** The size and the last place of a text in plain digits or with an exponent. */
function read(text: string): { count: bigint; place: number } {
  const [digits, exponent = '0'] = text.split('e') as [string, string?];
  const [whole, fraction = ''] = digits.split('.') as [string, string?];
  return { count: BigInt(whole + fraction), place: Number(exponent) - fraction.length };
}

const sizes = fc.oneof(
  fc.double({ min: 1e-12, max: 1e12, noNaN: true }),
  fc.double({ min: 1e-4, max: 1e7, noNaN: true }),
  fc.integer({ min: 1, max: 1e6 }).map((n) => n / 64),
);

describe('laws of number text', () => {
  it('agrees with exact arithmetic at the place that it shows', () => {
    fc.assert(
      fc.property(sizes, fc.integer({ min: 1, max: 12 }), (value, digits) => {
        const { count, place } = read(numberText(value, digits));
        assert.equal(count, roundedTo(value, place));
        assert.ok(place <= 0 || value > 0.99e7);
        const shown = String(count).length;
        assert.ok(shown === digits || (shown > digits && place === 0 && value < 1e7), `${shown} digits`);
      }),
      { numRuns: 2000 },
    );
  });

  it('shows a value to the last place of its uncertainty, and that to two digits', () => {
    fc.assert(
      fc.property(sizes, sizes, (value, U) => {
        fc.pre(U > value * 1e-14);
        const text = uncertainText(value, U);
        const least = String(read(text.U).count).replace(/0+$/, '').length;
        assert.ok(least <= 2 && Number(text.U) > 0);
        assert.ok(Math.abs(Number(text.U) - U) <= 0.05 * U * (1 + 1e-9));
        const step = 10 ** (Number(Number(text.U).toExponential().split('e')[1]) - 1);
        assert.ok(Math.abs(Number(text.value) - value) <= 0.5000001 * step + 1e-15 * value, `${text.value}`);
      }),
      { numRuns: 2000 },
    );
  });

  it('is always a number of the notation', () => {
    const finite = fc.double({ noNaN: true, noDefaultInfinity: true });
    fc.assert(
      fc.property(finite, finite, fc.integer({ min: -5, max: 120 }), (value, U, digits) => {
        const { value: best, U: around } = uncertainText(value, Math.abs(U));
        for (const text of [
          numberText(value, digits),
          textWithPlaces(value, digits),
          coverageText(Math.abs(value)),
          shortest(value),
          best,
          around,
        ]) {
          assert.match(text, NOTATION);
          assert.ok(!/^-[0.]+(e|$)/.test(text), text);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('shortest text reads back as the same number', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => assert.equal(Number(shortest(value)), value + 0)),
    );
  });
});

describe('a margin', () => {
  const rows: readonly (readonly [margin: number, U: number, text: string])[] = [
    [159658, 79000, '160000'],
    [5.597, 0.69, '5.60'],
    [-1.5, 0, '-1.500'],
    [0.0004, 0.5, '0.0004'],
  ];
  for (const [margin, U, text] of rows) it(`of ${margin} with U ${U} is ${text}`, () => assert.equal(marginText(margin, U, 4), text));
});
