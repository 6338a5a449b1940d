// `root of g over x from a to b`, and the ranges of other statements (N2, N5, N8).
import type * as ast from '../ast.ts';
import type { Checked, Display } from '../checked.ts';
import { typeProblem } from '../problems/types.ts';
import { DATE, type QuantityType, type Type, UNKNOWN } from '../type.ts';
import { meet } from './agreement.ts';
import { type Binding, type Context, checkExpression, type Scope, takeLocal, unknown, within } from './context.ts';
import { describeChecked } from './describe.ts';
import { countRoot } from './effort.ts';
import { forgetLocals, letLocalsSee } from './locals.ts';

export interface CheckedRange {
  readonly index: number;
  readonly from: Checked;
  readonly to: Checked;
  readonly type: Type;
  readonly display: Display;
  readonly binding: Binding;
}

/** Both ends of a range, which see the scope outside, and the variable's place; null where they have errors (reported). */
export function checkRange(c: Context, range: ast.Range, dates: 'dates' | 'no dates' = 'no dates'): CheckedRange | null {
  const from = checkExpression(c, range.from);
  const to = checkExpression(c, range.to);
  if (from.type.is === 'unknown' || to.type.is === 'unknown') return null;
  if (dates === 'dates' && from.type.is === 'date' && to.type.is === 'date') return variableOf(c, from, to, DATE, null);
  for (const end of [from, to]) {
    if (end.type.is === 'quantity') continue;
    c.problems.push(typeProblem('wants-number', end.at, { doing: 'a range takes', found: describeChecked(end) }));
    return null;
  }
  const met = meet(c, from, to, { doing: 'the ends of a range are', at: range.at });
  if (met === null) return null;
  const type: QuantityType = { ...met, zero: false };
  const display = (from.type as QuantityType).zero ? to.display : from.display;
  return variableOf(c, from, to, type, display);
}

function variableOf(c: Context, from: Checked, to: Checked, type: Type, display: Display): CheckedRange {
  const index = takeLocal(c);
  return { index, from, to, type, display, binding: { index, type, display, uncertain: false } };
}

/** Runs `inside` with the range's variable in scope. */
export function withVariable<T>(c: Context, range: ast.Range, checked: CheckedRange, inside: () => T): T {
  return within(c, variableScope(range, checked, false), inside);
}

function variableScope(range: ast.Range, { binding }: CheckedRange, uncertain: boolean): Scope {
  return { kind: 'names', names: new Map([[range.variable.name, { ...binding, uncertain }]]) };
}

export function checkRoot(c: Context, node: ast.RootOf): Checked {
  const range = checkRange(c, node.over, 'dates');
  if (range === null) return withoutRange(c, node);
  const { calls } = c;
  let { equation, locals } = checkEquation(c, node, range, false);
  if (equation.type.is === 'unknown') return equation;
  if (equation.type.is !== 'quantity' || equation.type.point) {
    c.problems.push(
      typeProblem('wants-number', equation.at, {
        doing: 'a root takes an expression of',
        found: describeChecked(equation),
      }),
    );
    return unknown(node.at);
  }
  // The derivative by the unknown is wanted where the equation is uncertain: then the unknown itself is checked as uncertain.
  if (equation.uncertain) {
    forgetLocals(c, locals);
    ({ equation, locals } = checkEquation(c, node, range, true));
  }
  if (!countRoot(c, calls, node.at)) return unknown(node.at);
  return {
    kind: 'root',
    at: node.at,
    type: range.type,
    display: range.display,
    uncertain: equation.uncertain,
    equation,
    name: node.over.variable.name,
    variable: range.index,
    locals,
    from: range.from,
    to: range.to,
  };
}

/** Nothing can be said of the equation; what its `with` says of the variable is not reported. */
function withoutRange(c: Context, node: ast.RootOf): Checked {
  const variable: Binding = { index: takeLocal(c), type: UNKNOWN, display: null, uncertain: false };
  if (c.whole === node) letLocalsSee(c, { kind: 'names', names: new Map([[node.over.variable.name, variable]]) });
  return unknown(node.at);
}

function checkEquation(c: Context, node: ast.RootOf, range: CheckedRange, uncertain: boolean) {
  const scope = variableScope(node.over, range, uncertain);
  const asked = c.whole === node ? letLocalsSee(c, scope) : () => [];
  const equation = within(c, scope, () => checkExpression(c, node.equation));
  return { equation, locals: asked() };
}
