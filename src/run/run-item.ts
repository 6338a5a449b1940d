// Runs one item: its value or fault goes into its slot, what a reader should know into its problems.
import type { Run } from '../language/compiler/frame.ts';
import { Fault } from '../language/fault.ts';
import { valueProblem } from '../language/problems/values.ts';
import type { Item } from '../language/program.ts';
import { eachOnce, type Problem } from '../text/problem.ts';
import { evaluateRaw, newRun } from './evaluate-item.ts';
import { spreadOf } from './shifting.ts';

/** At most so many notes are told of one statement. */
const NOTES = 20;
/** At most so many cells of a column report their own error. */
const CELL_PROBLEMS = 20;

/** A run that takes notes and decides with uncertainty. */
export function decidingRun(item: Item): Run {
  return newRun(item, false, (x, again) => spreadOf(item, x, again));
}

/** Evaluates the item and keeps the outcome. Gives the run, for the choice that it may have made. */
export function runItem(item: Item): Run {
  const run = decidingRun(item);
  item.runProblems = [];
  const { checked } = item;
  if (checked === null || checked.failed) {
    item.slot.value = new Fault('not calculated', null, item.label);
    return run;
  }
  if (checked.plan.kind !== 'value' && checked.plan.kind !== 'column') {
    item.slot.value = undefined;
    return run;
  }
  try {
    item.slot.value = evaluateRaw(item, run);
    if (checked.plan.kind === 'column') item.runProblems.push(...cellProblems(item.slot.value as readonly unknown[], item));
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    item.slot.value = fault;
    const problem = faultProblem(fault, item);
    if (problem !== null) item.runProblems.push(problem);
  }
  item.runProblems.push(...eachOnce(run.notes).slice(0, NOTES));
  return run;
}

/** The problem of a fault; null where another statement has reported it. Cell problems have no place of their own. */
export function faultProblem(fault: Fault, item: Item): Problem | null {
  if (fault.problem === null) return null;
  const { at } = fault.problem;
  return at.end > at.start ? fault.problem : { ...fault.problem, at: item.statement.at };
}

/** The problems of a column's cells, each with its row. */
export function cellProblems(cells: readonly unknown[], item: Item): Problem[] {
  const problems: Problem[] = [];
  cells.forEach((cell, row) => {
    if (!(cell instanceof Fault) || problems.length >= CELL_PROBLEMS) return;
    const problem = faultProblem(cell, item);
    if (problem !== null) problems.push(valueProblem('row-fault', problem.at, { row: row + 1, message: problem.message }, problem.places));
  });
  return problems;
}
