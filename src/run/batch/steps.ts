// What is done anew for each row: values evaluated, requirements decided, with no text made but for what goes wrong.
import { Fault } from '../../language/fault.ts';
import type { Item } from '../../language/program.ts';
import { insideSentence } from '../../text/problem.ts';
import { compileRequirement } from '../decide-requirement.ts';
import { evaluateRaw, frameOf } from '../evaluate-item.ts';
import type { Status } from '../result.ts';
import { cellProblems, decidingRun, faultProblem } from '../run-item.ts';

/** Does its work on what the slots hold now; adds what goes wrong to `errors`. */
export type Step = (errors: string[]) => void;

/** Evaluates an entry or a computed column into its slot. */
export function valueStep(item: Item): Step {
  const { slot, label } = item;
  const run = decidingRun(item);
  const frame = frameOf(run);
  slot.value = valueOrFault(() => evaluateRaw(item, run));
  const evaluate = item.evaluate!;
  const isColumn = item.statement.kind === 'column';
  return (errors) => {
    run.met = 0;
    run.notes.length = 0;
    try {
      slot.value = evaluate(frame);
      if (isColumn)
        for (const { message } of cellProblems(slot.value as readonly unknown[], item)) errors.push(`${label}: ${insideSentence(message)}`);
    } catch (fault) {
      if (!(fault instanceof Fault)) throw fault;
      slot.value = fault;
      if (fault.problem !== null) errors.push(`${label}: ${insideSentence(fault.problem.message)}`);
    }
  };
}

/** A requirement as rows decide it. */
export interface RequirementStep {
  readonly item: Item;
  readonly decide: Step;
  /** Of the last decision; of the worst row where it is for each row of a table. */
  readonly status: () => Status;
}

export function requirementStep(item: Item): RequirementStep {
  const { plan } = item.checked!;
  let status: Status = 'not calculated';
  if (plan.kind !== 'requirement') return { item, decide: () => {}, status: () => status };
  const decideAll = compileRequirement(item, plan);
  const run = decidingRun(item);
  const decide: Step = (errors) => {
    run.met = 0;
    run.notes.length = 0;
    item.runProblems.length = 0;
    try {
      status = decideAll(run)[0]?.outcome ?? 'holds';
    } catch (fault) {
      if (!(fault instanceof Fault)) throw fault;
      status = 'not calculated';
      const problem = faultProblem(fault, item);
      if (problem !== null) item.runProblems.push(problem);
    }
    for (const { severity, message } of item.runProblems)
      if (severity === 'error') errors.push(`${item.label}: ${insideSentence(message)}`);
  };
  return { item, decide, status: () => status };
}

function valueOrFault(evaluate: () => unknown): unknown {
  try {
    return evaluate();
  } catch (fault) {
    if (fault instanceof Fault) return fault;
    throw fault;
  }
}
