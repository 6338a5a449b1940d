// Dimensions: exponents of the seven SI base quantities, and beside them the three counts of rotation (grammar R1 to R3).
import { add, equal, MAX_DENOMINATOR, type Rational, times, ZERO } from './rational.ts';

/** Order of the exponents: length, mass, time, current, temperature, amount, light; then the counts rad, cycle, turn. */
export const BASES = ['m', 'kg', 's', 'A', 'K', 'mol', 'cd', 'rad', 'cycle', 'turn'] as const;
export type Base = (typeof BASES)[number];
const COUNTS_FROM = 7;

/**
 * One dimension with its rotation counts. Dimensions are interned: two that are equal are the same object,
 * so `===` compares them whole and `a.si === b.si` compares the SI part.
 */
export interface Dimension {
  readonly id: number;
  readonly exponents: readonly Rational[];
  /** The same dimension with all rotation counts 0. */
  readonly si: Dimension;
  readonly rad: Rational;
  readonly cycle: Rational;
  readonly turn: Rational;
}

const interned = new Map<string, Dimension>();

/** The dimension with these exponents (ten, in the order of BASES). */
export function dimension(exponents: readonly Rational[]): Dimension {
  const key = exponents.map((e) => (e.den === 1 ? `${e.num}` : `${e.num}/${e.den}`)).join(' ');
  const known = interned.get(key);
  if (known) return known;
  const [rad, cycle, turn] = exponents.slice(COUNTS_FROM) as [Rational, Rational, Rational];
  const made = { id: interned.size, exponents, rad, cycle, turn } as { -readonly [K in keyof Dimension]: Dimension[K] };
  interned.set(key, made);
  const bare = exponents.map((e, i) => (i < COUNTS_FROM ? e : ZERO));
  made.si = bare.every((e, i) => equal(e, exponents[i]!)) ? made : dimension(bare);
  return made;
}

/** A base quantity or count to the power one. */
export function base(name: Base): Dimension {
  return dimension(BASES.map((b) => (b === name ? { num: 1, den: 1 } : ZERO)));
}

/** The dimension of plain numbers, without counts. */
export const PLAIN: Dimension = dimension(BASES.map(() => ZERO));

// Keyed by both ids in one number: exact up to 2^26 dimensions, more than fit in memory.
const ID_RANGE = 2 ** 26;
const products = new Map<number, Dimension>();

/** The dimension of a product. */
export function multiply(a: Dimension, b: Dimension): Dimension {
  if (b === PLAIN) return a;
  if (a === PLAIN) return b;
  const key = a.id * ID_RANGE + b.id;
  const known = products.get(key);
  if (known) return known;
  const made = dimension(a.exponents.map((e, i) => add(e, b.exponents[i]!)));
  products.set(key, made);
  return made;
}

/** The dimension of a quotient. */
export function divide(a: Dimension, b: Dimension): Dimension {
  return multiply(a, raise(b, { num: -1, den: 1 }));
}

/** The dimension of a power. */
export function raise(a: Dimension, power: Rational): Dimension {
  if (a === PLAIN || (power.num === 1 && power.den === 1)) return a;
  return dimension(a.exponents.map((e) => times(e, power)));
}

/** Whether the SI part is nothing but a power of time, the plain number included: there rotation counts matter (R1). */
export function isRate(a: Dimension): boolean {
  return a.si.exponents.every((e, i) => i === 2 || e.num === 0);
}

/** The greatest whole exponent that a dimension may have: no quantity of the trade comes near it. */
export const MAX_EXPONENT = 60;

/**
 * Whether all exponents have denominators up to 60 (T6) and stay within reach. Whoever multiplies, divides or raises checks
 * this after each step and reports it: then no sum of exponents ever leaves the range of exact fractions.
 */
export function hasAllowedExponents(a: Dimension): boolean {
  return a.exponents.every((e) => e.den <= MAX_DENOMINATOR && Math.abs(e.num) <= MAX_EXPONENT * e.den);
}
