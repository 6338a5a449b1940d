// The sheet's own problems: errors, inputs without source, overdue instruments.
import type { Check } from '../check.ts';
import type { Level } from '../finding.ts';

/** Warnings that a person has to settle: an input without source, a reading taken when the calibration was overdue. */
const SETTLED_BY_A_PERSON: ReadonlySet<string> = new Set(['no-source', 'overdue-instrument']);

/** Problems that are errors stop the sheet; of the others most are worth knowing and no more. */
export const problems: Check = ({ evaluation }) =>
  evaluation.problems.map(({ problem, at, path }) => {
    const level: Level = problem.severity === 'error' ? 'error' : SETTLED_BY_A_PERSON.has(problem.code) ? 'finding' : 'note';
    return { code: problem.code, level, message: problem.message, at, path };
  });
