// Results of requirements: decided once, for each row of a table, and throughout ranges of operation (D1 to D7).
import type * as ast from '../language/ast.ts';
import type { Checked, Plan } from '../language/checked.ts';
import { rowLabel } from '../language/compiler/choices.ts';
import { compilerOf } from '../language/compiler/compile.ts';
import { compileDecision, type DecidedSides, type Decision, type Outcome, relativeSlack } from '../language/compiler/decisions.ts';
import type { Evaluate, Frame, Run } from '../language/compiler/frame.ts';
import { defineLets } from '../language/compiler/values.ts';
import { Fault } from '../language/fault.ts';
import { print } from '../language/print.ts';
import type { Item } from '../language/program.ts';
import { elementOf } from '../language/type.ts';
import { numberText, percentText, uncertainText } from '../units/number-text.ts';
import { differenceFromSI, differenceUnit } from '../units/quantity.ts';
import { missingOf, spreadAgain } from './entry-result.ts';
import { frameOf } from './evaluate-item.ts';
import type { RequirementResult, Sides, Status } from './result.ts';
import type { Base } from './result-base.ts';
import { decidingRun, faultProblem } from './run-item.ts';
import { show, unitFor } from './shown.ts';
import { throughoutPoints, withPoint } from './throughout.ts';
import { writtenNumber } from './written.ts';

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
    const worst = decided[0];
    if (worst === undefined) return { ...base(), ...head, ...none, status: 'holds', missing: null };
    const sides = (d: Decided) => (d.sides === null ? null : shownSides(d.sides, digits));
    const rows =
      plan.each === null
        ? []
        : decided.map((d) => ({ row: d.row, label: rowLabel(plan.each!.table, d.row), status: d.outcome as Status, sides: sides(d) }));
    const worstAt = plan.throughout.map((span, i) => ({
      name: span.item.label,
      value: show(worst.point[i]!, span.item.checked!.signature.type, span.item.checked!.signature.display, { digits }),
    }));
    const missing = worst.outcome === 'not calculated' ? ({ kind: 'error' } as const) : null;
    return { ...base(), ...head, status: worst.outcome, sides: sides(worst), rows, worstAt, missing };
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    const problem = faultProblem(fault, item);
    if (problem !== null) item.runProblems.push(problem);
    return { ...base(), ...head, ...none, status: 'not calculated', missing: missingOf(item, fault) };
  }
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
        const decision = plan.each === null ? decide(frame) : decideRow(decide, frame, item, row);
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

/** A row in error leaves the others; its error is the requirement's. */
function decideRow(decide: (f: Frame) => Decision, frame: Frame, item: Item, row: number): Pick<Decided, 'outcome' | 'sides'> {
  try {
    return decide(frame);
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    const problem = faultProblem(fault, item);
    if (problem !== null) item.runProblems.push({ ...problem, message: `row ${row + 1}: ${problem.message}` });
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

function shownSides(sides: DecidedSides, digits: number): Sides {
  const { left, right, leftNode, rightNode, relation, limitIsLeft } = sides;
  const type = elementOf(leftNode.type);
  if (sides.of !== 'quantity' || type.is !== 'quantity') {
    const text = (value: unknown, node: Checked) => show(value, elementOf(node.type), null, { digits });
    return {
      left: text(left, leftNode),
      right: text(right, rightNode),
      relation,
      limitIsLeft,
      slack: sides.slack,
      margin: dayMargin(sides),
      percent: null,
      uncertainty: null,
      expanded: 0,
    };
  }
  const explicit = [leftNode, rightNode].find((n) => n.display !== 'auto' && !isZero(n))?.display;
  const kind = isZero(leftNode) ? elementOf(rightNode.type) : type;
  const unit = unitFor(kind, explicit ?? 'auto', [left, right]);
  const side = (value: unknown, node: Checked) => {
    const spread = node.kind === 'entry' ? spreadAgain(node.item) : undefined;
    return show(value, kind, unit, { digits, written: sameUnit(node, unit) ? writtenNumber(node, value) : null, spread });
  };
  const difference = unit === null ? null : differenceUnit(unit);
  const inUnit = (si: number, text: (x: number) => string) =>
    text(differenceFromSI(si, difference)) + (difference === null ? '' : ` ${difference.text}`);
  const { expanded } = sides.combined;
  const point = kind.is === 'quantity' && kind.point;
  return {
    left: side(left, leftNode),
    right: side(right, rightNode),
    relation,
    limitIsLeft,
    slack: sides.slack,
    margin: inUnit(sides.slack, (x) => numberText(x, digits)),
    percent: point || sides.limit === 0 ? null : `${percentText(sides.slack / Math.abs(sides.limit))} %`,
    uncertainty: expanded > 0 ? inUnit(expanded, (x) => uncertainText(0, x).U) : null,
    expanded,
  };
}

function dayMargin(sides: DecidedSides): string {
  return sides.of === 'date' && !Number.isNaN(sides.slack) ? `${Math.round(sides.slack)} d` : '';
}

function isZero(node: Checked): boolean {
  const type = elementOf(node.type);
  return type.is === 'quantity' && type.zero;
}

function sameUnit(node: Checked, unit: ReturnType<typeof unitFor>): boolean {
  if (node.display === 'auto') return false;
  return (node.display?.text ?? '') === (unit?.text ?? '');
}
