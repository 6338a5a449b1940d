// The limit on nesting: no text makes the parser, or whoever walks its tree, run out of stack (P7).
import type { Expression, Hole } from '../ast.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import { type Cursor, hole, MAX_NESTING, peek, previous, report } from './cursor.ts';

/** Runs a production one level deeper. Beyond the limit that is an error, and the rest of the statement is left unread. */
export function nested(c: Cursor, production: (c: Cursor) => Expression): Expression {
  if (c.depth >= MAX_NESTING) return tooDeep(c);
  c.depth++;
  const made = production(c);
  c.depth--;
  return made;
}

export function tooDeep(c: Cursor): Hole {
  const token = peek(c) ?? previous(c);
  report(c, () => syntaxProblem('nested-too-deep', token.at, { limit: MAX_NESTING }));
  c.at = c.end;
  return hole(c);
}
