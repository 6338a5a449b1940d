// Results of curves and tabulations: traces sampled over their range, marks and limits (N8, F10).
import type * as ast from '../language/ast.ts';
import type { Checked, Plan } from '../language/checked.ts';
import { compilerOf } from '../language/compiler/compile.ts';
import type { Evaluate, Run } from '../language/compiler/frame.ts';
import { defineLets } from '../language/compiler/values.ts';
import { Fault, raise } from '../language/fault.ts';
import { print } from '../language/print.ts';
import { valueProblem } from '../language/problems/values.ts';
import type { Item } from '../language/program.ts';
import { best, type Uncertain } from '../language/uncertainty/dual.ts';
import { differenceFromSI, differenceUnit, fromSI } from '../units/quantity.ts';
import type { Unit } from '../units/unit.ts';
import { missingOf } from './entry-result.ts';
import { frameOf } from './evaluate-item.ts';
import type { CurveResult, Shown, TabulationResult } from './result.ts';
import type { Base } from './result-base.ts';
import { decidingRun, faultProblem } from './run-item.ts';
import { show, showQuantity, unitFor } from './shown.ts';
import { sameDisplay, writtenNumber } from './written.ts';

type Samples = Extract<Plan, { kind: 'samples' }>;

/** Points of a trace. */
export const CURVE_SAMPLES = 200;
/** Rows of a tabulation at most. */
export const TABULATION_ROWS = 1000;

interface Sampler {
  readonly from: number;
  readonly to: number;
  readonly xUnit: Unit | null;
  readonly shown: (x: number) => string;
  /** A trace's value at x; null where it has none. */
  readonly at: (code: Evaluate, x: number) => Uncertain | null;
  readonly compile: (node: Checked) => Evaluate;
}

function sampler(item: Item, plan: Samples, variable: string, run: Run): Sampler {
  const k = compilerOf();
  const lets = defineLets(k, plan.locals);
  const ends = [plan.from, plan.to].map((end) => best(k.compile(end)(frameOf(run)) as Uncertain));
  const [from, to] = ends as [number, number];
  const zero = plan.from.type.is === 'quantity' && plan.from.type.zero;
  const display = zero ? plan.to.display : plan.from.display;
  const type = zero ? plan.to.type : plan.from.type;
  const xUnit = unitFor(type, display, ends);
  const shown = (x: number) => show(x, type, xUnit, { digits: 4 }).text;
  if (!(from < to))
    raise(
      valueProblem('empty-range', (item.statement as ast.Curve | ast.Tabulation).over.at, { variable, from: shown(from), to: shown(to) }),
    );
  const frame = frameOf(run);
  const at = (code: Evaluate, x: number) => {
    frame.locals[plan.variable] = x;
    for (const index of lets) frame.locals[index] = undefined;
    try {
      return code(frame) as Uncertain;
    } catch (fault) {
      if (fault instanceof Fault) return null;
      throw fault;
    }
  };
  return { from, to, xUnit, shown, at, compile: k.compile };
}

export function curveResult(item: Item, statement: ast.Curve, base: () => Base): CurveResult {
  const variable = statement.over.variable.name;
  const empty = {
    x: { unit: null, from: 0, to: 0, log: statement.log },
    y: { unit: null, title: '' },
    traces: [],
    marks: [],
    limits: [],
  } as const;
  const made = attempt(item, (plan, run) => {
    const s = sampler(item, plan, variable, run);
    if (statement.log && !(s.from > 0)) raise(valueProblem('log-range', statement.over.at, { variable }));
    const xs = Array.from({ length: CURVE_SAMPLES }, (_, i) => pointAt(s, i / (CURVE_SAMPLES - 1), statement.log));
    const raw = plan.traces.map((trace) => ({ label: trace.label, code: s.compile(trace.value) }));
    const samples = raw.map(({ code }) => xs.map((x) => s.at(code, x)));
    if (samples.flat().every((y) => y === null)) raise(firstFault(raw[0]!.code, plan, s, run, item));
    const first = plan.traces[0]!;
    const yUnit = unitFor(first.value.type, first.unit, samples.flat());
    const number = (y: Uncertain | null) => (y === null ? null : fromSI(best(y), yUnit));
    const points = (ys: readonly (Uncertain | null)[]) => ys.map((y, i) => ({ x: fromSI(xs[i]!, s.xUnit), y: number(y) }));
    return {
      x: { unit: s.xUnit, from: fromSI(s.from, s.xUnit), to: fromSI(s.to, s.xUnit), log: statement.log },
      y: { unit: yUnit, title: quantitiesOf(statement) },
      traces: raw.map(({ label }, i) => ({ label, points: points(samples[i]!) })),
      marks: plan.marks.map((mark) => {
        const x = best(s.compile(mark.value)(frameOf(run)) as Uncertain);
        const ys = raw.map(({ code }) => (x >= s.from && x <= s.to ? number(s.at(code, x)) : null));
        const written = sameDisplay(mark.value.display, s.xUnit) ? writtenNumber(mark.value, x) : null;
        return { label: mark.label, x: fromSI(x, s.xUnit), y: ys, text: show(x, mark.value.type, s.xUnit, { digits: 4, written }).text };
      }),
      limits: plan.limits.map((limit) => {
        const code = s.compile(limit.value);
        return { label: limit.label, points: points(xs.map((x) => s.at(code, x))) };
      }),
    };
  });
  return {
    ...base(),
    kind: 'curve',
    statement,
    variable,
    ...(made.value ?? empty),
    missing: made.value === null ? missingOf(item, made.fault) : null,
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

export function tabulationResult(item: Item, statement: ast.Tabulation, base: () => Base, digits: number): TabulationResult {
  const variable = statement.over.variable.name;
  const made = attempt(item, (plan, run) => {
    const s = sampler(item, plan, variable, run);
    const step = best(s.compile(plan.step!)(frameOf(run)) as Uncertain);
    if (!(step > 0)) raise(valueProblem('step-range', statement.step.at, { variable }));
    const count = Math.floor((s.to - s.from) / step + 1e-9) + 1;
    if (count > TABULATION_ROWS) raise(valueProblem('too-many-samples', statement.step.at, { count: `${count}`, limit: TABULATION_ROWS }));
    const xs = Array.from({ length: count }, (_, i) => s.from + i * step);
    const columns = plan.traces.map((trace) => {
      const code = s.compile(trace.value);
      const ys = xs.map((x) => s.at(code, x));
      return { label: trace.label, unit: unitFor(trace.value.type, trace.unit, ys), ys };
    });
    const xShown = (x: number): Shown => show(x, plan.from.type, s.xUnit, { digits, written: cleanNumber(x, s, step) });
    return {
      heads: [{ title: variable, unit: s.xUnit }, ...columns.map((c) => ({ title: c.label, unit: c.unit }))],
      rows: xs.map((x, i) => [
        xShown(x),
        ...columns.map((c) => (c.ys[i] === null ? null : showQuantity(c.ys[i]!, c.unit, { digits }, null))),
      ]),
    };
  });
  return {
    ...base(),
    kind: 'tabulation',
    statement,
    ...(made.value ?? { heads: [], rows: [] }),
    missing: made.value === null ? missingOf(item, made.fault) : null,
  };
}

/** The abscissas with as many places as range and step need. */
function cleanNumber(x: number, s: Sampler, step: number): string {
  const difference = s.xUnit === null ? null : differenceUnit(s.xUnit);
  const places = Math.max(
    ...[differenceFromSI(step, difference), fromSI(s.from, s.xUnit)].map((v) => `${Number(v.toPrecision(10))}`.split('.')[1]?.length ?? 0),
  );
  return fromSI(x, s.xUnit).toFixed(Math.min(places, 12));
}

/** Runs the item; its fault becomes its problem. */
function attempt<T>(item: Item, make: (plan: Samples, run: Run) => T): { readonly value: T | null; readonly fault: unknown } {
  item.runProblems = [];
  const { checked } = item;
  if (checked === null || checked.failed || checked.plan.kind !== 'samples')
    return { value: null, fault: new Fault('not calculated', null) };
  const run = decidingRun(item);
  try {
    return { value: make(checked.plan, run), fault: null };
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    const problem = faultProblem(fault, item);
    if (problem !== null) item.runProblems.push(problem);
    return { value: null, fault };
  }
}
