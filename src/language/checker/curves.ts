// Curves and tabulations: traces over a range (N5, N8).
import type * as ast from '../ast.ts';
import type { Checked, CheckedStatement, Plan } from '../checked.ts';
import { print } from '../print.ts';
import { typeProblem } from '../problems/types.ts';
import type { QuantityType } from '../type.ts';
import { meet } from './agreement.ts';
import { type Context, checkExpression } from './context.ts';
import { declare } from './declared.ts';
import { describeChecked } from './describe.ts';
import { finish, hopeless } from './finish.ts';
import { withLocals } from './locals.ts';
import { type CheckedRange, checkRange, withVariable } from './roots.ts';

type Samples = Extract<Plan, { kind: 'samples' }>;

export function checkCurve(c: Context, node: ast.Curve): CheckedStatement {
  const range = checkRange(c, node.over);
  const marks = node.marks.map((m) => ({ value: checkExpression(c, m.value), label: m.label?.value ?? print(m.value) }));
  if (range === null) return hopeless(c);
  const { result, locals } = withVariable(c, node.over, range, () =>
    withLocals(c, node.clauses.locals, null, true, () => ({
      traces: checkTraces(c, node.traces),
      limits: node.limits.map((l) => ({ value: checkExpression(c, l.value), label: l.label?.value ?? print(l.value) })),
    })),
  );
  const first = result.traces[0]!.value;
  const others = [...result.traces.slice(1).map((t) => t.value), ...result.limits.map((l) => l.value)];
  const sound = [first, ...others, ...marks.map((m) => m.value)].every((v) => isQuantity(c, v));
  if (!sound) return hopeless(c);
  const onAxis = marks.every(
    (m) =>
      meet(c, { ...range.from, type: range.type, display: range.display }, m.value, {
        doing: 'the axis and its mark are',
        at: m.value.at,
      }) !== null,
  );
  const together = others.every((o) => meet(c, first, o, { doing: 'one drawing has an axis for', at: o.at }) !== null);
  if (!onAxis || !together) return hopeless(c);
  return finish(c, null, samples(range, { locals, ...result, marks, step: null }));
}

export function checkTabulation(c: Context, node: ast.Tabulation): CheckedStatement {
  const range = checkRange(c, node.over);
  const step = checkExpression(c, node.step);
  if (range === null || step.type.is === 'unknown') return hopeless(c);
  const { result: traces, locals } = withVariable(c, node.over, range, () =>
    withLocals(c, node.clauses.locals, null, true, () => checkTraces(c, node.traces)),
  );
  const ends: Checked = { ...range.from, type: { ...range.type, point: false } as QuantityType, display: range.display };
  const stepFits = isQuantity(c, step) && meet(c, ends, step, { doing: 'a range and its step are', at: step.at }) !== null;
  if (!stepFits || traces.some((t) => t.value.type.is === 'unknown')) return hopeless(c);
  return finish(c, null, samples(range, { locals, traces, marks: [], limits: [], step }));
}

function samples(range: CheckedRange, parts: Pick<Samples, 'locals' | 'traces' | 'marks' | 'limits' | 'step'>): Samples {
  return { kind: 'samples', variable: range.index, from: range.from, to: range.to, ...parts };
}

function checkTraces(c: Context, traces: readonly ast.Trace[]): Samples['traces'] {
  return traces.map((trace) => {
    const value = declare(c, checkExpression(c, trace.value), trace.type);
    return { value, unit: value.display, label: trace.label?.value ?? print(trace.value) };
  });
}

function isQuantity(c: Context, value: Checked): boolean {
  if (value.type.is === 'quantity') return true;
  if (value.type.is !== 'unknown')
    c.problems.push(typeProblem('wants-number', value.at, { doing: 'a drawing takes single', found: describeChecked(value) }));
  return false;
}
