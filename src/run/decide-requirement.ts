// Decides requirements: once, for each row of a table, and throughout ranges of operation (D1 to D7). Compiled once, for any number of decisions.
import type { Plan } from '../language/checked.ts';
import { compilerOf } from '../language/compiler/compile.ts';
import { freshFrame } from '../language/compiler/compiler.ts';
import { type DecidedSides, type Decision, type Outcome, relativeSlack } from '../language/compiler/decision.ts';
import { compileDecision } from '../language/compiler/decisions.ts';
import type { Evaluate, Frame, Run } from '../language/compiler/frame.ts';
import { defineLets, emptyCell } from '../language/compiler/values.ts';
import { AbsentCell, Fault } from '../language/fault.ts';
import { valueProblem } from '../language/problems/values.ts';
import type { Item } from '../language/program.ts';
import { frameOf } from './evaluate-item.ts';
import { faultProblem } from './run-item.ts';
import { compileThroughout, pointShown } from './throughout.ts';

type RequirementPlan = Extract<Plan, { kind: 'requirement' }>;

/** One decision, of a row where there are rows, at a point of the ranges where there are some. */
export interface Decided {
  /** -1 where the requirement is not for each row of a table. */
  readonly row: number;
  readonly outcome: Outcome | 'not calculated';
  readonly sides: DecidedSides | null;
  readonly point: readonly number[];
}

/** Decides on what the slots hold now: every row at its worst point, worst first. Throws a Fault where nothing can be decided. */
export type DecideRequirement = (run: Run) => readonly Decided[];

export function compileRequirement(item: Item, plan: RequirementPlan): DecideRequirement {
  const k = compilerOf();
  defineLets(k, plan.locals);
  const decide = compileDecision(k, plan.condition, (frame, shifted) => freshFrame(k, frame, shifted));
  if (plan.each === null && plan.throughout.length === 0) return (run) => [{ row: -1, ...decide(frameOf(run)), point: [] }];
  const where = plan.each?.where?.parts.map((p) => k.compile(p.condition) as Evaluate<boolean>) ?? [];
  const range = compileThroughout(item, plan);
  return (run) => {
    const worst = new Map<number, Decided>();
    for (const point of range.points(run)) {
      range.at(point, () => {
        for (const row of rowsOf(plan, where, run)) {
          const frame = frameOf(run);
          if (plan.each !== null) frame.locals[plan.each.row] = row;
          const decision = plan.each === null ? decideAt(decide, frame, plan, point) : decideRow(decide, frame, item, row);
          const decided: Decided = { row, ...decision, point };
          const known = worst.get(row);
          if (known === undefined || isWorse(decided, known)) worst.set(row, decided);
        }
      });
    }
    return [...worst.values()].sort((a, b) => (isWorse(a, b) ? -1 : isWorse(b, a) ? 1 : a.row - b.row));
  };
}

/** Where there is no value at a point of the ranges, the point is told. */
function decideAt(decide: (f: Frame) => Decision, frame: Frame, plan: RequirementPlan, point: readonly number[]): Decision {
  if (point.length === 0) return decide(frame);
  try {
    return decide(frame);
  } catch (fault) {
    if (!(fault instanceof Fault) || fault.problem === null) throw fault;
    const { at, message, places } = fault.problem;
    const where = plan.throughout.map((span, i) => `\`${span.item.label}\` = ${pointShown(span.item, point[i]!, 4).text}`).join(', ');
    throw new Fault('error', valueProblem('undefined-at', at, { where, message }, places));
  }
}

/** A row in error leaves the others; its error is the requirement's. */
function decideRow(decide: (f: Frame) => Decision, frame: Frame, item: Item, row: number): Pick<Decided, 'outcome' | 'sides'> {
  try {
    return decide(frame);
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    const problem = fault instanceof AbsentCell ? null : faultProblem(fault, item);
    if (fault instanceof AbsentCell) item.runProblems.push(emptyCell(fault));
    else if (problem !== null) {
      item.runProblems.push(valueProblem('row-fault', problem.at, { row: row + 1, message: problem.message }, problem.places));
    }
    return { outcome: 'not calculated', sides: null };
  }
}

function* rowsOf(plan: RequirementPlan, where: readonly Evaluate<boolean>[], run: Run): Iterable<number> {
  if (plan.each === null) {
    yield -1;
    return;
  }
  for (let row = 0; row < plan.each.table.rowCount; row++) {
    const frame = frameOf(run);
    if (plan.each.where !== null) frame.locals[plan.each.where.row] = row;
    if (where.every((holds) => holdsOrAbsent(holds, frame))) yield row;
  }
}

function holdsOrAbsent(holds: Evaluate<boolean>, frame: Frame): boolean {
  try {
    return holds(frame);
  } catch (fault) {
    if (fault instanceof Fault && fault.reason === 'absent') return false;
    throw fault;
  }
}

const RANK: Readonly<Record<Decided['outcome'], number>> = { fails: 0, 'not calculated': 1, undecided: 2, holds: 3 };

function isWorse(a: Decided, b: Decided): boolean {
  const byOutcome = RANK[a.outcome] - RANK[b.outcome];
  if (byOutcome !== 0) return byOutcome < 0;
  return a.sides !== null && b.sides !== null && margin(a.sides) < margin(b.sides);
}

/** The margin that the uncertainty leaves, against the limit. */
function margin(sides: DecidedSides): number {
  return relativeSlack(sides, sides.combined.expanded);
}
