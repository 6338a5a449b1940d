// Results of curves: traces sampled over their range, marks and limits (N8, F10).
import type * as ast from '../language/ast.ts';
import type { Evaluate, Run } from '../language/compiler/frame.ts';
import { Fault, raise } from '../language/fault.ts';
import { print } from '../language/print.ts';
import { valueProblem } from '../language/problems/values.ts';
import type { Item } from '../language/program.ts';
import { best, type Uncertain } from '../language/uncertainty/dual.ts';
import { fromSI } from '../units/quantity.ts';
import { missingOf } from './entry-result.ts';
import { frameOf } from './evaluate-item.ts';
import type { CurveResult } from './result.ts';
import type { Base } from './result-base.ts';
import { faultProblem } from './run-item.ts';
import { attempt, type Sampler, type Samples, sampler } from './sampler.ts';
import { show, unitFor } from './shown.ts';
import { sameDisplay, writtenNumber } from './written.ts';

/** Points of a trace. */
const CURVE_SAMPLES = 200;

type Drawing = Pick<CurveResult, 'x' | 'y' | 'traces' | 'marks' | 'limits'>;

/** A curve that has a value somewhere. It is drawn when it is first looked at: whoever only verifies or records a sheet draws nothing. */
export function curveResult(item: Item, statement: ast.Curve, base: () => Base): CurveResult {
  const variable = statement.over.variable.name;
  const made = attempt(item, (plan, run) => {
    const s = sampler(item, plan, variable, run);
    if (statement.log && !(s.from > 0)) raise(valueProblem('log-range', statement.over.at, { variable }));
    const xs = Array.from({ length: CURVE_SAMPLES }, (_, i) => pointAt(s, i / (CURVE_SAMPLES - 1), statement.log));
    const traces = plan.traces.map((trace) => s.compile(trace.value));
    if (!traces.some((code) => xs.some((x) => s.at(code, x) !== null))) raise(firstFault(traces[0]!, plan, s, run, item));
    const marks = plan.marks.map((mark) => best(s.compile(mark.value)(frameOf(run)) as Uncertain));
    return () => draw(statement, plan, s, xs, traces, marks);
  });
  let drawing: Drawing | null = null;
  const drawn = () => {
    drawing ??= made.value?.() ?? { ...NOTHING, x: { ...NOTHING.x, log: statement.log } };
    return drawing;
  };
  return {
    ...base(),
    kind: 'curve',
    statement,
    variable,
    get x() {
      return drawn().x;
    },
    get y() {
      return drawn().y;
    },
    get traces() {
      return drawn().traces;
    },
    get marks() {
      return drawn().marks;
    },
    get limits() {
      return drawn().limits;
    },
    missing: made.value === null ? missingOf(item, made.fault) : null,
  };
}

const NOTHING: Drawing = { x: { unit: null, from: 0, to: 0, log: false }, y: { unit: null, title: '' }, traces: [], marks: [], limits: [] };

function draw(
  statement: ast.Curve,
  plan: Samples,
  s: Sampler,
  xs: readonly number[],
  codes: readonly Evaluate[],
  marks: readonly number[],
): Drawing {
  const samples = codes.map((code) => xs.map((x) => s.at(code, x)));
  const first = plan.traces[0]!;
  const yUnit = unitFor(first.value.type, first.unit, samples.flat());
  const number = (y: Uncertain | null) => (y === null ? null : fromSI(best(y), yUnit));
  const points = (ys: readonly (Uncertain | null)[]) => ys.map((y, i) => ({ x: fromSI(xs[i]!, s.xUnit), y: number(y) }));
  return {
    x: { unit: s.xUnit, from: fromSI(s.from, s.xUnit), to: fromSI(s.to, s.xUnit), log: statement.log },
    y: { unit: yUnit, title: quantitiesOf(statement) },
    traces: plan.traces.map(({ label }, i) => ({ label, points: points(samples[i]!) })),
    marks: plan.marks.map((mark, i) => {
      const x = marks[i]!;
      const ys = codes.map((code) => (x >= s.from && x <= s.to ? number(s.at(code, x)) : null));
      const written = sameDisplay(mark.value.display, s.xUnit) ? writtenNumber(mark.value, x) : null;
      return { label: mark.label, x: fromSI(x, s.xUnit), y: ys, text: show(x, mark.value.type, s.xUnit, { digits: 4, written }).text };
    }),
    limits: plan.limits.map((limit) => {
      const code = s.compile(limit.value);
      return { label: limit.label, points: points(xs.map((x) => s.at(code, x))) };
    }),
  };
}

/** What the other axis shows: the expressions of the traces, each once. A trace's label names the trace, not the quantity. */
function quantitiesOf({ traces }: ast.Curve): string {
  return [...new Set(traces.map((trace) => print(trace.value)))].join(', ');
}

function pointAt(s: Sampler, t: number, log: boolean): number {
  if (t === 1) return s.to;
  return log ? s.from * (s.to / s.from) ** t : s.from + (s.to - s.from) * t;
}

/** Why a trace has no value anywhere: its error at the range's beginning. */
function firstFault(code: Evaluate, plan: Samples, s: Sampler, run: Run, item: Item) {
  const frame = frameOf(run);
  frame.locals[plan.variable] = s.from;
  try {
    code(frame);
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    if (fault.problem === null) throw fault;
    return faultProblem(fault, item)!;
  }
  return valueProblem('overflow', item.statement.at, {});
}
