// Numbers between a unit and coherent SI: exact where the unit is a power of ten (grammar L16).
import { unitOf } from './read-unit.ts';
import type { Unit } from './unit.ts';

/** With no more digits than a double holds for certain, and no exponent. */
const SHORT = /^\d(?:[\d.]{0,13}\d)?$/;
const PLAIN = { factor: 1, decimal: 0 };
const NUMBER = /^([-−]?)(\d+)(?:\.(\d+))?(?:[eE]([-+]?\d+))?$/;

/**
 * The coherent SI value of a number as written (sign included, `pi` and `π` too) in a unit; no unit is the plain number.
 * The decimal exponent is moved in the text before the conversion, so `0.1 kV` is 100 V to the bit. A point gets its offset.
 * The result may be infinite where the text is beyond the range of numbers; a text that is no number gives NaN.
 */
export function toSI(number: string, unit: Unit | null): number {
  const value = differenceToSI(number, unit);
  return unit ? value + unit.offset : value;
}

/** As `toSI`, but without a point's offset: for half-widths and differences. */
export function differenceToSI(number: string, unit: Unit | null): number {
  const { factor, decimal } = unit ?? PLAIN;
  if (factor === 1 && SHORT.test(number)) return withPointMoved(Number(number), -decimal);
  const written = NUMBER.exec(number);
  if (!written) return number === 'pi' || number === 'π' ? scaled(Math.PI * Number(`1e${decimal}`), factor) : Number.NaN;
  const [, sign, whole, fraction = '', power = '0'] = written;
  const digits = whole! + fraction;
  const exponent = clamp(Number(power)) - fraction.length + decimal;
  const exact = Number(digits) * factor;
  const value =
    Number.isInteger(factor) && Number.isSafeInteger(exact)
      ? Number(`${exact}e${exponent}`)
      : scaled(Number(`${digits}e${exponent}`), factor);
  return sign && value !== 0 ? -value : value;
}

/** The number that a coherent SI value is in a unit. */
export function fromSI(value: number, unit: Unit | null): number {
  return unit ? differenceFromSI(value - unit.offset, unit) : value;
}

/** As `fromSI`, but without a point's offset. Moving the decimal point keeps the digits: 0.07 is 7 % and no bit more. */
export function differenceFromSI(value: number, unit: Unit | null): number {
  if (!unit) return value;
  const { factor, decimal } = unit;
  const moved = withPointMoved(value, decimal);
  return factor === 1 ? moved : moved / factor;
}

/** The powers of ten that are exact. */
const POWERS = Array.from({ length: 23 }, (_, i) => Number(`1e${i}`));

/**
 * value · 10^−by. A value that is a number of up to 15 digits keeps these to the bit: it is its digits over a power of ten, and so is the
 * result, each rounded once. Any other is off by a rounding at most.
 */
function withPointMoved(value: number, by: number): number {
  if (by === 0) return value;
  const power = POWERS[Math.abs(by)];
  const product = power === undefined ? 0 : by > 0 ? value / power : value * power;
  const size = Math.abs(product);
  if (!(size > 1e-8 && size < 1e15)) return withTextMoved(value, by);
  let places = 0;
  while (size * POWERS[places]! < 1e14) places++;
  const before = POWERS[Math.abs(places - by)];
  if (before === undefined) return withTextMoved(value, by);
  const digits = Math.round(product * POWERS[places]!);
  const isValue = value === (places < by ? digits * before : digits / before);
  return isValue ? digits / POWERS[places]! : product;
}

function withTextMoved(value: number, by: number): number {
  if (!Number.isFinite(value)) return value;
  const [digits, exponent = '0'] = String(value).split('e') as [string, string?];
  return Number(`${digits}e${Number(exponent) - by}`);
}

const KELVIN = unitOf('K');
const RANKINE = unitOf('degR');

/** The unit of differences between values in a unit: `K` for `degC`, `degR` for `degF`, the unit itself for all others. */
export function differenceUnit(unit: Unit): Unit {
  if (!unit.point) return unit;
  return unit.factor === 1 ? KELVIN : RANKINE;
}

/** Dividing by a whole number is exact where multiplying by its rounded inverse is not (`36 km/h`). */
function scaled(value: number, factor: number): number {
  const inverse = Math.round(1 / factor);
  return inverse > 1 && 1 / inverse === factor ? value / inverse : value * factor;
}

function clamp(exponent: number): number {
  return Math.max(-1e9, Math.min(exponent, 1e9));
}
