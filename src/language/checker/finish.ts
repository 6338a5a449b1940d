// Closing a statement's check: its signature for others, its plan for the compiler, its problems each once.
import { eachOnce } from '../../text/problem.ts';
import type { CheckedStatement, Plan, Signature } from '../checked.ts';
import { UNKNOWN } from '../type.ts';
import type { Context } from './context.ts';

const NOTHING: Signature = { type: UNKNOWN, display: null, uncertain: false };

/** An error that leaves the value as it is. */
const HARMLESS = 'source-required';

/** The checked statement; `failed` where a value of unknown type stands in its plan, or where it has an error. */
export function finish(c: Context, signature: Signature | null, plan: Plan): CheckedStatement {
  return {
    signature: signature ?? NOTHING,
    plan,
    frameSize: c.frameSize,
    reads: [...c.reads],
    grounds: [...c.grounds],
    lost: c.lost.length < 2 ? c.lost : [...new Set(c.lost)],
    problems: eachOnce(c.problems),
    inputs: c.inputs,
    failed:
      (signature !== null && signature.type.is === 'unknown') || c.problems.some((p) => p.severity === 'error' && p.code !== HARMLESS),
  };
}

/** A statement of which nothing can be calculated. */
export function hopeless(c: Context): CheckedStatement {
  return { ...finish(c, NOTHING, { kind: 'nothing' }), failed: true };
}
