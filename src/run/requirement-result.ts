// Results of requirements as a reader sees them: status, both sides, rows, the worst point, and what is wrong with the requirement itself.
import type * as ast from '../language/ast.ts';
import type { Plan } from '../language/checked.ts';
import type { DecidedSides } from '../language/compiler/decision.ts';
import { rowLabel } from '../language/compiler/row-conditions.ts';
import { Fault } from '../language/fault.ts';
import { print } from '../language/print.ts';
import { typeProblem } from '../language/problems/types.ts';
import { valueProblem } from '../language/problems/values.ts';
import type { Item } from '../language/program.ts';
import { best, type Uncertain } from '../language/uncertainty/dual.ts';
import type { Problem } from '../text/problem.ts';
import { compileRequirement, type Decided } from './decide-requirement.ts';
import { missingOf } from './entry-result.ts';
import type { RequirementResult, Status } from './result.ts';
import type { Base } from './result-base.ts';
import { decidingRun, faultProblem } from './run-item.ts';
import { shownSides } from './shown-sides.ts';
import { pointShown } from './throughout.ts';

type RequirementPlan = Extract<Plan, { kind: 'requirement' }>;

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
    const decided = compileRequirement(item, plan)(run);
    item.runProblems.push(...run.notes.filter((note) => note.code !== 'undecided'));
    item.runProblems.push(...remarksOn(item, plan, decided));
    const worst = decided[0];
    if (worst === undefined) return { ...base(), ...head, ...none, status: 'holds', missing: null };
    const sides = (d: Decided) =>
      d.sides === null ? null : shownSides(d.sides, digits, { row: plan.each === null ? null : d.row, atPoint: d.point.length > 0 });
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
