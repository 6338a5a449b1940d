// Results of requirements: decided once, for each row of a table, and throughout ranges of operation (D1 to D7).
import type * as ast from '../language/ast.ts';
import type { Plan } from '../language/checked.ts';
import { rowLabel } from '../language/compiler/choices.ts';
import { compilerOf } from '../language/compiler/compile.ts';
import { compileDecision, type DecidedSides, type Decision, type Outcome, relativeSlack } from '../language/compiler/decisions.ts';
import type { Evaluate, Frame, Run } from '../language/compiler/frame.ts';
import { defineLets, emptyCell } from '../language/compiler/values.ts';
import { AbsentCell, Fault } from '../language/fault.ts';
import { print } from '../language/print.ts';
import { typeProblem } from '../language/problems/types.ts';
import { valueProblem } from '../language/problems/values.ts';
import type { Item } from '../language/program.ts';
import { best, type Uncertain } from '../language/uncertainty/dual.ts';
import type { Problem } from '../text/problem.ts';
import { missingOf } from './entry-result.ts';
import { frameOf } from './evaluate-item.ts';
import type { RequirementResult, Status } from './result.ts';
import type { Base } from './result-base.ts';
import { decidingRun, faultProblem } from './run-item.ts';
import { shownSides } from './shown-sides.ts';
import { pointShown, throughoutPoints, withPoint } from './throughout.ts';

type RequirementPlan = Extract<Plan, { kind: 'requirement' }>;

/** One decision, of a row where there are rows, at a point of the ranges where there are some. */
interface Decided {
  readonly row: number;
  readonly outcome: Outcome | 'not calculated';
  readonly sides: DecidedSides | null;
  readonly point: readonly number[];
}

export function requirementResult(item: Item, statement: ast.Requirement, base: () => Base, digits: number): RequirementResult {
  const head = { kind: 'requirement', statement, force: statement.force, condition: print(statement.condition) } as const;
  const none = { sides: null, rows: [], worstAt: [] } as const;
  const { checked } = item;
  const plan = checked?.plan;
  if (checked === null || checked.failed || plan?.kind !== 'requirement') {
    return { ...base(), ...head, ...none, status: 'not calculated', missing: missingOf(item, new Fault('not calculated', null)) };
  }
  const run = decidingRun(item);
  item.runProblems = [];
  try {
    const decided = decideAll(item, plan, run);
    item.runProblems.push(...run.notes.filter((note) => note.code !== 'undecided'));
    item.runProblems.push(...remarksOn(item, plan, decided));
    const worst = decided[0];
    if (worst === undefined) return { ...base(), ...head, ...none, status: 'holds', missing: null };
    const sides = (d: Decided) => (d.sides === null ? null : shownSides(d.sides, digits));
    const rows =
      plan.each === null
        ? []
        : decided.map((d) => ({ row: d.row, label: rowLabel(plan.each!.table, d.row), status: d.outcome as Status, sides: sides(d) }));
    const worstAt = plan.throughout.map((span, i) => ({ name: span.item.label, value: pointShown(span.item, worst.point[i]!, digits) }));
    const missing = worst.outcome === 'not calculated' ? ({ kind: 'error' } as const) : null;
    return { ...base(), ...head, status: worst.outcome, sides: sides(worst), rows, worstAt, missing };
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    const problem = faultProblem(fault, item);
    if (problem !== null) item.runProblems.push(problem);
    return { ...base(), ...head, ...none, status: 'not calculated', missing: missingOf(item, fault) };
  }
}

/** What is wrong with the requirement itself: it can't fail (D8), or equality is asked of uncertain values (D3). */
function remarksOn(item: Item, plan: RequirementPlan, decided: readonly Decided[]): Problem[] {
  const remarks: Problem[] = [];
  const worst = decided[0];
  if (worst === undefined) remarks.push(valueProblem('no-row-checked', item.statement.at, { table: plan.each!.table.name }));
  if (plan.follows !== null && worst?.outcome === 'holds' && notNegative(worst.sides)) {
    remarks.push(valueProblem('follows-from-choice', plan.condition.at, { entry: plan.follows }));
  }
  const equality = decided.find(({ sides }) => sides !== null && ['==', 'is'].includes(sides.relation) && sides.combined.expanded > 0);
  if (equality !== undefined) remarks.push(typeProblem('equality-uncertain', equality.sides!.at, {}));
  return remarks;
}

/** A condition with a factor says more than one with a smaller one only of what is not negative. */
function notNegative(sides: DecidedSides | null): boolean {
  return sides === null || sides.of !== 'quantity' || [sides.left, sides.right].every((side) => best(side as Uncertain) >= 0);
}

/** All rows at their worst points, worst first. */
function decideAll(item: Item, plan: RequirementPlan, run: Run): readonly Decided[] {
  const k = compilerOf();
  const lets = defineLets(k, plan.locals);
  const decide = compileDecision(k, plan.condition, (frame, shifted) => freshFrame(frame, shifted, lets));
  const where = plan.each?.where?.parts.map((p) => k.compile(p.condition) as Evaluate<boolean>) ?? [];
  const points = throughoutPoints(item, plan, run);
  const worst = new Map<number, Decided>();
  for (const point of points) {
    withPoint(item, plan, point, () => {
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
}

function freshFrame(frame: Frame, run: Run, lets: readonly number[]): Frame {
  const locals = [...frame.locals];
  for (const index of lets) locals[index] = undefined;
  return { locals, run };
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
  return relativeSlack({ ...sides, slack: sides.slack - sides.combined.expanded });
}
