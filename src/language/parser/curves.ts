// Curves with their marks and limit lines, and tabulations.
import type { Curve, CurveItem, Tabulation, TextNode, Trace } from '../ast.ts';
import { sum } from './arithmetic.ts';
import { clauses } from './clauses.ts';
import { type Cursor, peek, spanFrom, takeContextual, takeMark, whole } from './cursor.ts';
import { contextualHere, wordHere } from './missing.ts';
import { range } from './ranges.ts';
import { typeHere } from './types.ts';

const CURVE = 'curve … over x from … to …';
const TABULATE = 'tabulate … over x from … to … step …';

export function curve(c: Cursor): Curve {
  c.at++;
  const traces = tracesHere(c);
  wordHere(c, 'over', CURVE);
  const over = range(c, CURVE);
  const log = takeContextual(c, 'log');
  const marks: CurveItem[] = [];
  const limits: CurveItem[] = [];
  const found = clauses(c, {
    statement: 'a curve',
    own: { mark: () => itemsHere(c, marks), limit: () => itemsHere(c, limits) },
  });
  return { kind: 'curve', at: whole(c), traces, over, log, marks, limits, clauses: found, broken: c.failed };
}

export function tabulation(c: Cursor): Tabulation {
  c.at++;
  const traces = tracesHere(c);
  wordHere(c, 'over', TABULATE);
  const over = range(c, TABULATE);
  contextualHere(c, 'step', TABULATE);
  const step = sum(c);
  const found = clauses(c, { statement: 'a tabulation' });
  return { kind: 'tabulation', at: whole(c), traces, over, step, clauses: found, broken: c.failed };
}

function tracesHere(c: Cursor): Trace[] {
  const traces: Trace[] = [];
  do {
    const first = c.at;
    const value = sum(c);
    const type = typeHere(c);
    const label = labelHere(c);
    traces.push({ at: spanFrom(c, first), value, type, label });
  } while (takeMark(c, ','));
  return traces;
}

function itemsHere(c: Cursor, items: CurveItem[]): void {
  c.at++;
  do {
    const first = c.at;
    const value = sum(c);
    const label = labelHere(c);
    items.push({ at: spanFrom(c, first), value, label });
  } while (takeMark(c, ','));
}

/** A text on the line of the expression before it; one that begins a line is the description (Y4). */
function labelHere(c: Cursor): TextNode | null {
  const token = peek(c);
  if (token?.kind !== 'text' || token.first) return null;
  c.at++;
  return { at: token.at, value: token.value };
}
