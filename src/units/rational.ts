// Exact rational numbers with small denominators, as exponents of dimensions need them.

/** num/den in lowest terms, den > 0. */
export interface Rational {
  readonly num: number;
  readonly den: number;
}

/** The greatest denominator that an exponent may have (grammar rule T6). */
export const MAX_DENOMINATOR = 60;

export const ZERO: Rational = { num: 0, den: 1 };
export const ONE: Rational = { num: 1, den: 1 };

/** num/den in lowest terms; `null` where den is 0 or a part is no safe whole number. */
export function rational(num: number, den = 1): Rational | null {
  if (den === 0 || !Number.isSafeInteger(num) || !Number.isSafeInteger(den)) return null;
  const g = gcd(Math.abs(num), Math.abs(den)) * Math.sign(den);
  return num === 0 ? ZERO : { num: num / g, den: den / g };
}

/** The fraction with denominator up to 60 that is `x` to within 1e-12, or `null`. */
export function rationalFrom(x: number): Rational | null {
  if (!Number.isFinite(x) || Math.abs(x) > 1e6) return null;
  for (let den = 1; den <= MAX_DENOMINATOR; den++) {
    const num = Math.round(x * den);
    if (Math.abs(num / den - x) < 1e-12) return rational(num, den);
  }
  return null;
}

export function add(a: Rational, b: Rational): Rational {
  if (a.num === 0) return b;
  if (b.num === 0) return a;
  return rational(a.num * b.den + b.num * a.den, a.den * b.den) ?? ZERO;
}

export function times(a: Rational, b: Rational): Rational {
  return rational(a.num * b.num, a.den * b.den) ?? ZERO;
}

export function equal(a: Rational, b: Rational): boolean {
  return a.num === b.num && a.den === b.den;
}

export function toNumber(a: Rational): number {
  return a.num / a.den;
}

function gcd(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b];
  return a;
}
