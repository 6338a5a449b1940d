// Element by element: a function of single values over operands of which some are lists (T1).
import type { Span } from '../../text/span.ts';
import { Fault, raise } from '../fault.ts';
import { valueProblem } from '../problems/values.ts';
import type { Evaluate, Frame } from './frame.ts';

/** Calls `scalar` for each element; lists have one length, single values are repeated. The array handed over is reused. */
export function broadcast(
  operands: readonly Evaluate[],
  isList: readonly boolean[],
  at: Span,
  scalar: (values: unknown[], frame: Frame) => unknown,
): Evaluate<unknown[]> {
  return (frame) => {
    const values = operands.map((o) => o(frame));
    const count = commonLength(values, isList, at);
    const each = [...values];
    const result = new Array<unknown>(count);
    for (let i = 0; i < count; i++) {
      for (let j = 0; j < values.length; j++) if (isList[j]) each[j] = (values[j] as unknown[])[i];
      result[i] = atElement(i, at, () => scalar(each, frame));
    }
    return result;
  };
}

function commonLength(values: readonly unknown[], isList: readonly boolean[], at: Span): number {
  let length = -1;
  for (let j = 0; j < values.length; j++) {
    if (!isList[j]) continue;
    const found = (values[j] as unknown[]).length;
    if (length !== -1 && found !== length) raise(valueProblem('different-lengths', at, { left: length, right: found }));
    length = found;
  }
  return length;
}

/** Says in which element something went wrong. */
function atElement(i: number, at: Span, compute: () => unknown): unknown {
  try {
    return compute();
  } catch (fault) {
    if (!(fault instanceof Fault) || fault.problem === null) throw fault;
    throw new Fault(
      fault.reason,
      valueProblem('element-fault', at, { element: i + 1, message: fault.problem.message }, fault.problem.places),
    );
  }
}
