// A value with its exact first derivatives by the uncertain inputs, and the arithmetic on it.
import type { Input } from './input.ts';

/**
 * Value and sparse gradient; `inputs` ascend by id. `kink`: a derivative does not serve here (U6), so the result is to be
 * evaluated by shifting. Slopes are always finite.
 */
export class Dual {
  constructor(
    readonly value: number,
    readonly inputs: readonly Input[],
    readonly slopes: readonly number[],
    readonly kink: boolean,
  ) {}
}

/** An exact number, or one with derivatives. */
export type Uncertain = number | Dual;

/** The value of either. */
export function best(x: Uncertain): number {
  return typeof x === 'number' ? x : x.value;
}

/** Standard uncertainty to first order. */
export function standard(x: Uncertain): number {
  if (typeof x === 'number') return 0;
  let sum = 0;
  for (let i = 0; i < x.inputs.length; i++) {
    const part = x.slopes[i]! * x.inputs[i]!.u;
    sum += part * part;
  }
  return Math.sqrt(sum);
}

/** f(x) from its value and derivative; `kink` where the derivative does not serve. */
export function chain(x: Dual, value: number, slope: number, kink = false): Dual {
  const sound = slope - slope === 0;
  const s = x.slopes;
  if (!sound) return new Dual(value, x.inputs, new Array<number>(s.length).fill(0), true);
  const marked = x.kink || kink;
  // One and two inputs are by far the commonest, and an array literal costs a third of an array that is filled.
  if (s.length === 1) return new Dual(value, x.inputs, [s[0]! * slope], marked);
  if (s.length === 2) return new Dual(value, x.inputs, [s[0]! * slope, s[1]! * slope], marked);
  const slopes = new Array<number>(s.length);
  for (let i = 0; i < slopes.length; i++) slopes[i] = s[i]! * slope;
  return new Dual(value, x.inputs, slopes, marked);
}

/** f(x, y) from its value and partial derivatives. */
export function join(value: number, x: Uncertain, dx: number, y: Uncertain, dy: number, kink = false): Uncertain {
  if (typeof x === 'number') return typeof y === 'number' ? value : chain(y, value, dy, kink);
  if (typeof y === 'number') return chain(x, value, dx, kink);
  if (!Number.isFinite(dx) || !Number.isFinite(dy)) return join(value, x, 0, y, 0, true);
  return merge(value, x, dx, y, dy, x.kink || y.kink || kink);
}

/** Of two slopes that cancel but for rounding nothing is left: `x * (1 / x)` is exact as `x - x` is. */
function sumOf(a: number, b: number): number {
  const sum = a + b;
  return Math.abs(sum) < NOISE * Math.abs(a) ? 0 : sum;
}

const NOISE = 4 * Number.EPSILON;

/** dx·x + dy·y with a value of its own. */
function merge(value: number, x: Dual, dx: number, y: Dual, dy: number, kink: boolean): Dual {
  const a = x.inputs;
  const b = y.inputs;
  const s = x.slopes;
  const t = y.slopes;
  if (a === b) {
    const slopes = new Array<number>(s.length);
    for (let i = 0; i < slopes.length; i++) slopes[i] = sumOf(s[i]! * dx, t[i]! * dy);
    return new Dual(value, a, slopes, kink);
  }
  if (a.length === 1 && b.length === 1 && a[0] !== b[0]) {
    const p = s[0]! * dx;
    const q = t[0]! * dy;
    return a[0]!.id < b[0]!.id ? new Dual(value, [a[0]!, b[0]!], [p, q], kink) : new Dual(value, [b[0]!, a[0]!], [q, p], kink);
  }
  const inputs = new Array<Input>(a.length + b.length);
  const slopes = new Array<number>(a.length + b.length);
  let n = 0;
  let i = 0;
  let j = 0;
  while (i < a.length && j < b.length) {
    const order = a[i]!.id - b[j]!.id;
    inputs[n] = order <= 0 ? a[i]! : b[j]!;
    slopes[n++] = order < 0 ? s[i]! * dx : order > 0 ? t[j]! * dy : sumOf(s[i]! * dx, t[j]! * dy);
    if (order <= 0) i++;
    if (order >= 0) j++;
  }
  for (; i < a.length; i++) {
    inputs[n] = a[i]!;
    slopes[n++] = s[i]! * dx;
  }
  for (; j < b.length; j++) {
    inputs[n] = b[j]!;
    slopes[n++] = t[j]! * dy;
  }
  if (n < inputs.length) inputs.length = slopes.length = n;
  return new Dual(value, inputs, slopes, kink);
}

export const add = (x: Uncertain, y: Uncertain): Uncertain => join(best(x) + best(y), x, 1, y, 1);
export const subtract = (x: Uncertain, y: Uncertain): Uncertain => join(best(x) - best(y), x, 1, y, -1);
export const negate = (x: Uncertain): Uncertain => (typeof x === 'number' ? -x : chain(x, -x.value, -1));
export const scale = (x: Uncertain, by: number): Uncertain => (typeof x === 'number' ? x * by : chain(x, x.value * by, by));

export function multiply(x: Uncertain, y: Uncertain): Uncertain {
  const a = best(x);
  const b = best(y);
  return join(a * b, x, b, y, a);
}

/** x / y; the caller has made sure that y is not 0. */
export function divide(x: Uncertain, y: Uncertain): Uncertain {
  const a = best(x);
  const b = best(y);
  return join(a / b, x, 1 / b, y, -a / (b * b));
}

/** The same value, of which no derivative serves. */
export function kinked(x: Uncertain): Uncertain {
  return typeof x === 'number' ? x : new Dual(x.value, x.inputs, x.slopes, true);
}

/** Operands from which on a weighted sum is gathered in a map instead of merged pair by pair. */
const MANY = 8;

/** Weighted sum Σ wᵢ·xᵢ of many, with a value of its own. */
export function combination(value: number, xs: readonly Uncertain[], weights: readonly number[], kink = false): Uncertain {
  let first: Dual | null = null;
  let firstWeight = 0;
  let merged = 0;
  for (let i = 0; i < xs.length; i++) {
    const x = xs[i]!;
    if (typeof x === 'number') continue;
    const weight = weights[i]!;
    if (weight - weight !== 0)
      return combination(
        value,
        xs,
        weights.map(() => 0),
        true,
      );
    if (++merged > MANY) return gathered(value, xs, weights, kink);
    if (first === null) {
      first = x;
      firstWeight = weight;
    } else {
      first = merge(value, first, firstWeight, x, weight, first.kink || x.kink || kink);
      firstWeight = 1;
    }
  }
  if (first === null) return value;
  return merged === 1 ? chain(first, value, firstWeight, kink) : first;
}

function gathered(value: number, xs: readonly Uncertain[], weights: readonly number[], kink: boolean): Dual {
  const slopes = new Map<Input, { sum: number; size: number }>();
  let marked = kink;
  for (let i = 0; i < xs.length; i++) {
    const x = xs[i]!;
    if (typeof x === 'number') continue;
    marked ||= x.kink;
    for (let j = 0; j < x.inputs.length; j++) {
      const part = x.slopes[j]! * weights[i]!;
      const known = slopes.get(x.inputs[j]!);
      if (known === undefined) slopes.set(x.inputs[j]!, { sum: part, size: Math.abs(part) });
      else {
        known.sum += part;
        known.size += Math.abs(part);
      }
    }
  }
  const inputs = [...slopes.keys()].sort((a, b) => a.id - b.id);
  const sums = inputs.map((input) => {
    const { sum, size } = slopes.get(input)!;
    return Math.abs(sum) < NOISE * size ? 0 : sum;
  });
  const sound = sums.every(Number.isFinite);
  return new Dual(value, inputs, sound ? sums : sums.map(() => 0), marked || !sound);
}
