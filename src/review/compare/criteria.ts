// Which requirement is which: they have no names, so what they state tells, then ever weaker likenesses.
import type { Expression } from '../../language/ast.ts';
import { print } from '../../language/print.ts';
import { children } from '../../language/walk.ts';
import type { RequirementResult } from '../../run/result.ts';
import { type Renames, statementMeaning } from './meaning.ts';
import type { Likeness } from './pairing.ts';

/** From the surest likeness to the weakest; what two have in common must not be nothing. */
export const CRITERIA: readonly Likeness<RequirementResult>[] = [
  ({ statement, force }, renames) => `${force} ${statementMeaning(statement, renames)}`,
  ({ statement }, renames) => statementMeaning(statement, renames),
  // The same but for its numbers: a limit that was moved.
  ({ statement, force }, renames) => `${force} ${withoutNumbers(statementMeaning(statement, renames))}`,
  ({ statement }) => statement.clauses.because?.value ?? statement.clauses.description?.value ?? null,
  ({ statement }, renames) => subject(statement.condition, renames),
];

function withoutNumbers(meaning: string): string {
  return meaning.replace(/"value":-?[\d.e+-]+,"unit":("[^"]*"|null)/g, '"value":0');
}

/** What a criterion is about: the first side that has a name in it. */
function subject(condition: Expression, renames: Renames): string | null {
  if (condition.kind === 'group') return subject(condition.inner, renames);
  if (condition.kind !== 'comparison') return null;
  const side = condition.operands.find(hasName);
  return side ? print(side).replace(/[\p{L}_][\p{L}\p{N}_]*/gu, (name) => renames.get(name) ?? name) : null;
}

function hasName(node: Expression): boolean {
  return node.kind === 'name' || children(node).some(hasName);
}
