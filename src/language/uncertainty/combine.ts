// From derivatives to an expanded uncertainty: u_c, effective degrees of freedom, k, and the bound from limits (U5, U9).
import { coverageFactor } from './coverage.ts';
import { Dual, type Uncertain } from './dual.ts';
import { type Input, inTextOrder } from './input.ts';

/** One input's part in a result: its slope c = ∂y/∂x, or where it was shifted the change of the result for ±u. */
export interface Contribution {
  readonly input: Input;
  readonly slope: number;
}

/** A combined uncertainty in coherent SI. */
export interface Combined {
  /** u_c. */
  readonly standard: number;
  /** U = k·u_c, or Σ|c|a where all contributions are limits and that is no more. */
  readonly expanded: number;
  /** Null where `expanded` is the bound from limits. */
  readonly k: number | null;
  /** Whole number, null where infinite. */
  readonly nu: number | null;
}

const NONE: Combined = { standard: 0, expanded: 0, k: null, nu: null };

/** The contributions of a result in text order, those of slope 0 left out. */
export function contributions(x: Uncertain): Contribution[] {
  if (typeof x === 'number') return [];
  const found: Contribution[] = [];
  for (let i = 0; i < x.inputs.length; i++) if (x.slopes[i] !== 0) found.push({ input: x.inputs[i]!, slope: x.slopes[i]! });
  return found.sort((a, b) => inTextOrder(a.input, b.input));
}

/** Combines contributions: JCGM 100, 5.1.2 (independent inputs), G.4.1 (Welch-Satterthwaite), U9. */
export function combine(parts: readonly Contribution[]): Combined {
  let variance = 0;
  let low = 0;
  let high = 0;
  let bounded = true;
  let infinite = true;
  for (const { input, slope } of parts) {
    for (const { u, nu } of input.spread.components) {
      const part = slope * u * (slope * u);
      variance += part;
      infinite &&= nu === null;
    }
    const limits = input.spread.limits;
    if (limits === null) bounded = false;
    else {
      low += Math.min(slope * limits.low, slope * limits.high);
      high += Math.max(slope * limits.low, slope * limits.high);
    }
  }
  if (variance === 0) return NONE;
  const standard = Math.sqrt(variance);
  const nu = infinite ? null : effectiveFreedom(parts, variance);
  const k = coverageFactor(nu);
  const bound = Math.max(-low, high);
  if (bounded && bound <= k * standard) return { standard, expanded: bound, k: null, nu: null };
  return { standard, expanded: k * standard, k, nu };
}

/** Welch-Satterthwaite, by shares of the variance: a fourth power of a small or large uncertainty is no number. */
function effectiveFreedom(parts: readonly Contribution[], variance: number): number | null {
  let sum = 0;
  for (const { input, slope } of parts) {
    for (const { u, nu } of input.spread.components) {
      const share = (slope * u * (slope * u)) / variance;
      if (nu !== null) sum += (share * share) / nu;
    }
  }
  return sum === 0 ? null : Math.max(1, Math.floor(1 / sum + 1e-9));
}

/** The combined uncertainty of a value whose derivatives serve. */
export function combined(x: Uncertain): Combined {
  return x instanceof Dual ? combine(contributions(x)) : NONE;
}
