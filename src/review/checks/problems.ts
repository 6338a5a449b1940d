// The sheet's own problems: errors, and inputs without source.
import type { Check } from '../check.ts';
import type { Level } from '../finding.ts';

/** Problems that are errors stop the sheet; an input without source needs a person; the rest is worth knowing. */
export const problems: Check = ({ evaluation }) =>
  evaluation.problems.map(({ problem, at, path }) => {
    const level: Level = problem.severity === 'error' ? 'error' : problem.code === 'no-source' ? 'finding' : 'note';
    return { code: problem.code, level, message: problem.message, at, path };
  });
