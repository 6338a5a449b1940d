// The statement that a cursor stands in or behind, and its tokens up to there.

import type { Statement } from '../language/ast.ts';
import { parse } from '../language/parser.ts';
import type { Token } from '../language/token.ts';

export interface StatementAt {
  /** Null before the first statement of the block. */
  readonly statement: Statement | null;
  /** The statement's tokens that end at or before the offset, or begin before it. */
  readonly before: readonly Token[];
}

/** The last statement that begins before `offset`, whether the cursor is still on its lines or not. */
export function statementAt(code: string, offset: number): StatementAt {
  const { statements, tokens } = parse(code);
  const statement = statements.findLast(({ at }) => at.start < offset) ?? null;
  const start = statement?.at.start ?? 0;
  return { statement, before: tokens.filter(({ at }) => start <= at.start && at.start < offset) };
}
