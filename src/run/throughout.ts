// Ranges of operation: the points at which a requirement is decided, and evaluating what depends on the replaced entries (D7).
import type * as ast from '../language/ast.ts';
import type { Plan } from '../language/checked.ts';
import { compilerOf } from '../language/compiler/compile.ts';
import type { Run } from '../language/compiler/frame.ts';
import { Fault, raise } from '../language/fault.ts';
import { valueProblem } from '../language/problems/values.ts';
import type { Item } from '../language/program.ts';
import { best, type Uncertain } from '../language/uncertainty/dual.ts';
import { between } from './dependents.ts';
import { evaluateRaw, frameOf } from './evaluate-item.ts';
import type { Shown } from './result.ts';
import { decidingRun } from './run-item.ts';
import { show } from './shown.ts';

type RequirementPlan = Extract<Plan, { kind: 'requirement' }>;

/** Inner points a range. */
const INNER = 5;

/** The ranges of a requirement. */
export interface Throughout {
  /** Every corner, and a grid of five inner points a name; one empty point where there is no range. */
  readonly points: (run: Run) => readonly (readonly number[])[];
  /** Runs `decide` with the entries at a point and all that depends on them evaluated there; everything is as before afterwards. */
  readonly at: (point: readonly number[], decide: () => void) => void;
}

export function compileThroughout(item: Item, plan: RequirementPlan): Throughout {
  if (plan.throughout.length === 0) return { points: () => [[]], at: (_, decide) => decide() };
  const statement = item.statement as ast.Requirement;
  const k = compilerOf();
  const ends = plan.throughout.map((span) => [span.from, span.to].map(k.compile));
  const replaced = plan.throughout.map((span) => span.item);
  const cone = between(item, new Set(replaced));
  return {
    points: (run) => {
      const ranges = plan.throughout.map((span, i) => {
        const [from, to] = ends[i]!.map((end) => best(end(frameOf(run)) as Uncertain)) as [number, number];
        if (!(from < to)) {
          const shown = (x: number) => pointShown(span.item, x, 4).text;
          raise(valueProblem('empty-range', statement.throughout[i]!.at, { variable: span.item.label, from: shown(from), to: shown(to) }));
        }
        return { corners: [from, to], inner: Array.from({ length: INNER }, (_, n) => from + ((to - from) * (n + 1)) / (INNER + 1)) };
      });
      return [...product(ranges.map((r) => r.corners)), ...product(ranges.map((r) => r.inner))];
    },
    at: (point, decide) => withPoint(replaced, cone, point, decide),
  };
}

/** A value of a replaced entry in the unit that the entry has. */
export function pointShown(item: Item, si: number, digits: number): Shown {
  const { type, display } = item.checked!.signature;
  return show(si, type, display, { digits });
}

function product(axes: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return axes.reduce<readonly (readonly number[])[]>((points, axis) => points.flatMap((p) => axis.map((x) => [...p, x])), [[]]);
}

function withPoint(replaced: readonly Item[], cone: readonly Item[], point: readonly number[], decide: () => void): void {
  const touched = [...replaced, ...cone];
  const before = touched.map((i) => ({ value: i.slot.value, evaluate: i.evaluate, made: [...i.made] }));
  try {
    replaced.forEach((i, n) => {
      i.slot.value = point[n];
      // Where inputs are shifted at the point, it stays the point.
      i.evaluate = () => point[n];
    });
    for (const i of cone) i.slot.value = valueOrFault(i);
    decide();
  } finally {
    touched.forEach((i, n) => {
      i.slot.value = before[n]!.value;
      i.evaluate = before[n]!.evaluate;
      i.made.splice(0, i.made.length, ...before[n]!.made);
    });
  }
}

function valueOrFault(item: Item): unknown {
  try {
    return evaluateRaw(item, decidingRun(item));
  } catch (fault) {
    if (fault instanceof Fault) return fault;
    throw fault;
  }
}
