// The effort of one evaluation, known before it is made: no few lines may ask for more than anyone waits for.
import type { Span } from '../../text/span.ts';
import { nameProblem } from '../problems/names.ts';
import type { Context } from './context.ts';

/** Most calls that one evaluation may make, of functions and of equations whose roots are sought. */
const MOST_CALLS = 1_000_000;

/** Times that a root evaluates its equation: at 200 places, and on to adjacent numbers between two of them. */
const ROOT_CALLS = 250;

/** Counts calls; false (reported) past the limit. Functions that call each other twice, and twice again, are soon there. */
export function countCalls(c: Context, calls: number, at: Span): boolean {
  c.calls += calls;
  if (c.calls <= MOST_CALLS) return true;
  c.problems.push(nameProblem('too-many-calls', at, { limit: MOST_CALLS }));
  return false;
}

/** Counts what a root asks of its equation, of which `before` were counted when its check began. */
export function countRoot(c: Context, before: number, at: Span): boolean {
  const inside = c.calls - before;
  c.calls = before;
  return countCalls(c, ROOT_CALLS * (inside + 1), at);
}
