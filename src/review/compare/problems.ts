// Errors and warnings that only one of the two sheets has.
import type { LocatedProblem } from '../../run/evaluate.ts';
import type { ProblemChange } from '../comparison.ts';
import { pairByLikeness } from './pairing.ts';
import { changeOf, type Pair, type Side } from './side.ts';

/** What was there before is told by its words, not by its place. A warning of a missing source is left to the change of the source itself. */
export function compareProblems(pair: Pair): readonly ProblemChange[] {
  const likenesses = [({ problem, path }: LocatedProblem) => [path, problem.code, problem.message].join('\0')];
  return pairByLikeness(serious(pair.old), serious(pair.new), likenesses, new Map()).flatMap(([old, now]): readonly ProblemChange[] => {
    if (old !== null && now !== null) return [];
    const { problem, path } = (now ?? old)!;
    const line = { old: old && lineOf(pair.old, old), new: now && lineOf(pair.new, now) };
    const severity = problem.severity === 'error' ? 'error' : 'warning';
    return [{ change: changeOf(old, now), line, severity, code: problem.code, message: problem.message, path }];
  });
}

function serious({ evaluation }: Side): readonly LocatedProblem[] {
  return evaluation.problems.filter(
    ({ problem: { severity, code } }) => severity === 'error' || (severity === 'warning' && code !== 'no-source'),
  );
}

function lineOf(side: Side, { at, path }: LocatedProblem): number | null {
  return path === null ? side.lineAt(at.start) : null;
}
