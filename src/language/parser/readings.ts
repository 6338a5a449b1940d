// Repeated readings: `readings [12.1 mV, 12.4 mV] ± 0.1 mV`, `readings (U / I)` (U2, U11).
import type { Expression, QuantityLiteral, Readings } from '../ast.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import { type Cursor, isContextual, isMark, isWord, peek, report, spanFrom } from './cursor.ts';
import { boundsHere } from './literals.ts';
import { nested } from './nesting.ts';

/** Words that may stand behind a value named `readings`; before anything else that begins a value it is no name. */
const CLAUSES: ReadonlySet<string> = new Set(['within', 'by', 'on', 'accepted', 'until', 'due', 'mark', 'limit', 'step', 'log']);

export function beginsReadings(c: Cursor): boolean {
  if (!isContextual(c, 'readings')) return false;
  const next = peek(c, 1);
  if (isMark(c, '[', 1) || isMark(c, '(', 1) || isWord(c, 'row', 1)) return true;
  return next?.kind === 'name' && !CLAUSES.has(next.name);
}

export function readings(c: Cursor): Readings {
  const first = c.at++;
  const kept = c.uncertain.length;
  const of = nested(c, c.grammar.primary);
  const items = literalsOf(of);
  for (const node of items === null ? [] : c.uncertain.slice(kept))
    report(c, () => syntaxProblem('reading-uncertain', node.bounds?.at ?? node.at, {}));
  const bounds = boundsHere(c);
  const made: Readings = { kind: 'readings', at: spanFrom(c, first), items, of: items === null ? of : null, bounds };
  c.uncertain.push(made);
  return made;
}

function literalsOf(of: Expression): readonly QuantityLiteral[] | null {
  if (of.kind !== 'list' || !of.items.every((item) => item.kind === 'quantity')) return null;
  return of.items as readonly QuantityLiteral[];
}
