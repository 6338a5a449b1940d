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
  if (!Number.isFinite(slope))
    return new Dual(
      value,
      x.inputs,
      x.slopes.map(() => 0),
      true,
    );
  const slopes = new Array<number>(x.slopes.length);
  for (let i = 0; i < slopes.length; i++) slopes[i] = x.slopes[i]! * slope;
  return new Dual(value, x.inputs, slopes, x.kink || kink);
}

/** f(x, y) from its value and partial derivatives. */
export function join(value: number, x: Uncertain, dx: number, y: Uncertain, dy: number, kink = false): Uncertain {
  if (typeof x === 'number') return typeof y === 'number' ? value : chain(y, value, dy, kink);
  if (typeof y === 'number') return chain(x, value, dx, kink);
  if (!Number.isFinite(dx) || !Number.isFinite(dy)) return join(value, x, 0, y, 0, true);
  const marked = x.kink || y.kink || kink;
  if (x.inputs === y.inputs)
    return new Dual(
      value,
      x.inputs,
      x.slopes.map((s, i) => s * dx + y.slopes[i]! * dy),
      marked,
    );
  const inputs: Input[] = [];
  const slopes: number[] = [];
  let i = 0;
  let j = 0;
  while (i < x.inputs.length || j < y.inputs.length) {
    const a = x.inputs[i];
    const b = y.inputs[j];
    if (b === undefined || (a !== undefined && a.id < b.id)) {
      inputs.push(a!);
      slopes.push(x.slopes[i++]! * dx);
    } else if (a === undefined || b.id < a.id) {
      inputs.push(b);
      slopes.push(y.slopes[j++]! * dy);
    } else {
      inputs.push(a);
      slopes.push(x.slopes[i++]! * dx + y.slopes[j++]! * dy);
    }
  }
  return new Dual(value, inputs, slopes, marked);
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

/** Weighted sum Σ wᵢ·xᵢ of many, in one pass a term. */
export function combination(value: number, xs: readonly Uncertain[], weights: readonly number[], kink = false): Uncertain {
  const slopes = new Map<Input, number>();
  let marked = kink;
  for (let i = 0; i < xs.length; i++) {
    const x = xs[i]!;
    if (typeof x === 'number') continue;
    marked ||= x.kink;
    for (let j = 0; j < x.inputs.length; j++) slopes.set(x.inputs[j]!, (slopes.get(x.inputs[j]!) ?? 0) + x.slopes[j]! * weights[i]!);
  }
  if (slopes.size === 0) return value;
  const inputs = [...slopes.keys()].sort((a, b) => a.id - b.id);
  const sums = inputs.map((input) => slopes.get(input)!);
  if (sums.every(Number.isFinite)) return new Dual(value, inputs, sums, marked);
  return new Dual(
    value,
    inputs,
    sums.map(() => 0),
    true,
  );
}
