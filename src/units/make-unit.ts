// Makes a unit of its parts: canonical spelling, dimension and size. Units are interned by spelling.
import { type Dimension, hasAllowedExponents, multiply, PLAIN, raise } from './dimension.ts';
import { type Rational, toNumber } from './rational.ts';
import { PLAIN_UNIT, type Unit, type UnitPart, type UnitSymbol } from './unit.ts';

const interned = new Map<string, Unit>([['', PLAIN_UNIT]]);

// Sizes beyond these powers of ten are no use to anybody, and would leave the range of numbers when multiplied.
const MAX_DECIMAL = 100;

/**
 * The unit with these parts, in their order but what is divided by last. Equal spellings give the same object.
 * `null` where an exponent of its dimension or its size is out of all bounds.
 */
export function makeUnit(parts: readonly UnitPart[]): Unit | null {
  const symbol = bareSymbol(parts);
  const bare = symbol && interned.get(symbol.symbol);
  if (bare) return bare;
  const ordered = [...parts.filter((p) => p.power.num > 0), ...parts.filter((p) => p.power.num < 0)];
  const text = unitText(ordered);
  const known = interned.get(text);
  if (known) return known;
  const dimension = dimensionOf(ordered);
  const size = sizeOf(ordered);
  if (!dimension || !size) return null;
  const unit: Unit = {
    text,
    parts: ordered,
    dimension,
    ...size,
    offset: symbol?.offset ?? 0,
    point: symbol?.point ?? false,
    power: symbol?.power ?? null,
  };
  interned.set(text, unit);
  return unit;
}

/** The symbol that stands alone, without a power; null where there is more. */
function bareSymbol(parts: readonly UnitPart[]): UnitSymbol | null {
  const [first] = parts;
  return parts.length === 1 && first!.power.num === 1 && first!.power.den === 1 ? first!.symbol : null;
}

/** Canonical spelling, such as `W/(m²·K)`: one solidus, `·` between symbols, superscripts for whole powers. */
function unitText(parts: readonly UnitPart[]): string {
  const above = parts.filter((p) => p.power.num > 0).map(partText);
  const below = parts.filter((p) => p.power.num < 0).map(partText);
  if (below.length === 0) return above.join('·');
  return `${above.join('·') || '1'}/${below.length === 1 ? below[0] : `(${below.join('·')})`}`;
}

function partText({ symbol, power }: UnitPart): string {
  const num = Math.abs(power.num);
  if (power.den > 1) return `${symbol.symbol}^(${num}/${power.den})`;
  return num === 1 ? symbol.symbol : symbol.symbol + [...String(num)].map((d) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(d)]).join('');
}

function dimensionOf(parts: readonly UnitPart[]): Dimension | null {
  let product = PLAIN;
  for (const { symbol, power } of parts) {
    product = multiply(product, raise(symbol.dimension, power));
    if (!hasAllowedExponents(product)) return null;
  }
  return product;
}

/** Whole factors are kept apart above and below the solidus, so that the quotient is rounded once. */
function sizeOf(parts: readonly UnitPart[]): { factor: number; decimal: number } | null {
  let above = 1;
  let below = 1;
  let decimal = 0;
  for (const { symbol, power } of parts) {
    const scaled = symbol.decimal * power.num;
    const whole = Math.floor(scaled / power.den);
    decimal += whole;
    above *= powerOf(10, { num: scaled - whole * power.den, den: power.den });
    const size = powerOf(symbol.factor, { num: Math.abs(power.num), den: power.den });
    if (power.num > 0) above *= size;
    else below *= size;
  }
  const factor = above / below;
  const magnitude = Math.abs(Math.log10(factor)) + Math.abs(decimal);
  return magnitude <= MAX_DECIMAL ? { factor, decimal } : null;
}

/** x^power for x > 0 and power ≥ 0, by multiplication and roots alone, so that every engine finds the same digits. */
function powerOf(x: number, power: Rational): number {
  if (x === 1 || power.num === 0) return 1;
  if (Number.isInteger(toNumber(power))) return repeated(x, toNumber(power));
  return repeated(root(x, power.den), power.num);
}

function repeated(x: number, times: number): number {
  let product = 1;
  for (let i = 0; i < times; i++) product *= x;
  return product;
}

/** The root of x by Newton's method from above, which falls until it has converged. */
function root(x: number, degree: number): number {
  if (degree === 2) return Math.sqrt(x);
  let y = Math.max(1, x);
  for (;;) {
    const next = ((degree - 1) * y + x / repeated(y, degree - 1)) / degree;
    if (!(next < y)) return y;
    y = next;
  }
}
