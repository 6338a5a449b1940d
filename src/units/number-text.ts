// Numbers as results show them (grammar F1 to F3): always a valid number of the notation, never dependent on a locale.
// Rounding follows the exact binary value, halves away from zero, as ECMAScript defines toFixed and toExponential.

const LARGE = 1e7;
const SMALL = 1e-4;
// What toFixed and toExponential can give.
const MOST_DIGITS = 100;
// Digits of a value that mean anything, however small its uncertainty.
const EXACT_DIGITS = 17;

/** A value and its expanded uncertainty as text. */
export interface UncertainText {
  readonly value: string;
  readonly U: string;
}

/** `digits` significant digits with zeros kept, the whole part never cut (F1); 0 is `0`. */
export function numberText(value: number, digits: number): string {
  if (value === 0 || !Number.isFinite(value)) return exceptional(value);
  const kept = Math.max(1, Math.min(digits, MOST_DIGITS));
  const place = exponentIn(value.toExponential(kept - 1)) - kept + 1;
  const whole = Number(Math.abs(value).toFixed(0)) < LARGE;
  return atPlace(value, whole ? Math.min(0, place) : place);
}

/**
 * A value with its expanded uncertainty U > 0: U to two significant digits, nearest, and the value to U's last place (F1).
 * Where U is 0 or no number, the value has all its digits.
 */
export function uncertainText(value: number, U: number): UncertainText {
  if (!(U > 0) || !Number.isFinite(U) || !Number.isFinite(value)) return { value: shortest(value), U: '0' };
  const place = exponentIn(U.toExponential(1)) - 1;
  const finest = value === 0 ? place : exponentIn(value.toExponential()) - EXACT_DIGITS + 1;
  return { value: atPlace(value, Math.max(place, finest)), U: atPlace(U, place) };
}

/** A margin to the last place of its expanded uncertainty, with one digit at least; where there is no U, to so many digits. */
export function marginText(margin: number, U: number, digits: number): string {
  if (!(U > 0) || !Number.isFinite(U)) return numberText(margin, digits);
  const { value } = uncertainText(margin, U);
  return Number(value) === 0 ? numberText(margin, 1) : value;
}

/** A margin as a fraction of its limit, in percent to two significant digits: 0.1399 is `14`. */
export function percentText(fraction: number): string {
  return numberText(fraction * 100, 2);
}

/** A whole number, such as a count of rows. */
export function countText(value: number): string {
  return textWithPlaces(value, 0);
}

/** This many decimal places, zeros kept; for counts and for values that were rounded to a step. */
export function textWithPlaces(value: number, places: number): string {
  if (!Number.isFinite(value)) return exceptional(value);
  return cleaned(value.toFixed(Math.max(0, Math.min(places, MOST_DIGITS))));
}

/** A coverage factor: three digits, trailing zeros dropped (F2). */
export function coverageText(k: number): string {
  const text = numberText(k, 3);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** The shortest text that reads back as the same number. */
export function shortest(value: number): string {
  if (value === 0 || !Number.isFinite(value)) return exceptional(value);
  const size = Math.abs(value);
  return cleaned(size >= LARGE || size < SMALL ? value.toExponential() : String(value));
}

/** Rounded to a multiple of 10^place: in plain digits from 1e-4 up to 1e7, with an exponent beyond. */
function atPlace(value: number, place: number): string {
  const rounded = roundedAt(Math.abs(value), place);
  const size = Number(rounded);
  const sign = value < 0 && size > 0 ? '-' : '';
  if (size >= LARGE || (size < SMALL && size > 0)) return sign + rounded.replace('e+', 'e');
  return sign + (place < 0 ? Math.abs(value).toFixed(Math.min(-place, MOST_DIGITS)) : size.toFixed(0));
}

/** In scientific form, with the digits down to that place; `0` where nothing is left. */
function roundedAt(size: number, place: number): string {
  const exponent = exponentIn(size.toExponential());
  const digits = exponent - place;
  if (digits < 0) return digits === -1 && size >= Number(`5e${place - 1}`) ? `1e${place}` : '0';
  const text = size.toExponential(Math.min(digits, MOST_DIGITS));
  // Where rounding carried into a new place, the last digit stands one place too high.
  return exponentIn(text) > exponent ? text.replace('e', digits === 0 ? '.0e' : '0e') : text;
}

function exponentIn(scientific: string): number {
  return Number(scientific.slice(scientific.indexOf('e') + 1));
}

/** No plus sign in an exponent, and no negative zero. */
function cleaned(text: string): string {
  return (/^-[0.]+$/.test(text) ? text.slice(1) : text).replace('e+', 'e');
}

function exceptional(value: number): string {
  return value === 0 ? '0' : Number.isNaN(value) ? 'not a number' : value > 0 ? 'infinity' : '-infinity';
}
