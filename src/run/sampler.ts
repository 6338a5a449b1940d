// Expressions over a range of one variable, as curves and tabulations read them.
import type * as ast from '../language/ast.ts';
import type { Checked, Plan } from '../language/checked.ts';
import { compilerOf } from '../language/compiler/compile.ts';
import type { Evaluate, Run } from '../language/compiler/frame.ts';
import { defineLets } from '../language/compiler/values.ts';
import { Fault, raise } from '../language/fault.ts';
import { valueProblem } from '../language/problems/values.ts';
import type { Item } from '../language/program.ts';
import { best, type Uncertain } from '../language/uncertainty/dual.ts';
import type { Unit } from '../units/unit.ts';
import { frameOf } from './evaluate-item.ts';
import { decidingRun, faultProblem } from './run-item.ts';
import { show, unitFor } from './shown.ts';

export type Samples = Extract<Plan, { kind: 'samples' }>;

export interface Sampler {
  readonly from: number;
  readonly to: number;
  readonly xUnit: Unit | null;
  readonly shown: (x: number) => string;
  /** A trace's value at x; null where it has none. */
  readonly at: (code: Evaluate, x: number) => Uncertain | null;
  readonly compile: (node: Checked) => Evaluate;
}

/** The range of an item, its ends evaluated. Throws a Fault where there is none. */
export function sampler(item: Item, plan: Samples, variable: string, run: Run): Sampler {
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

/** Runs the item; its fault becomes its problem. */
export function attempt<T>(item: Item, make: (plan: Samples, run: Run) => T): { readonly value: T | null; readonly fault: unknown } {
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
