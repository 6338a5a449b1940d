// The text of one calc block to statements: boundaries first, then each statement alone. Recursive descent, total, linear.
import type { Problem } from '../text/problem.ts';
import type { Statement } from './ast.ts';
import { lex } from './lexer.ts';
import type { Cursor } from './parser/cursor.ts';
import { GRAMMAR } from './parser/expressions.ts';
import { type Extent, findStatements } from './parser/layout.ts';
import { statement } from './parser/statements.ts';
import type { Token, Trivia } from './token.ts';

/** All places are offsets in the block's text. */
export interface Parsed {
  readonly statements: readonly Statement[];
  readonly tokens: readonly Token[];
  readonly trivia: readonly Trivia[];
  /** Of the lexer and the parser, in the order of their places. */
  readonly problems: readonly Problem[];
}

/**
 * Reads a calc block. At most one error of form is reported for a statement, and none where the lexer found one in it: what
 * follows from a mistake is not reported again (Y5).
 */
export function parse(text: string): Parsed {
  const { tokens, trivia, problems: lexing } = lex(text);
  const { extents, problems: layout } = findStatements(text, tokens);
  const errors = lexing.filter((p) => p.severity === 'error');
  const problems: Problem[] = [...lexing, ...layout];
  const statements: Statement[] = [];
  let next = 0;
  for (const extent of extents) {
    const end = tokens[extent.end - 1]!.at.end;
    const start = tokens[extent.start]!.at.start;
    while (next < errors.length && errors[next]!.at.end <= start) next++;
    const misread = next < errors.length && errors[next]!.at.start < end;
    const { made, problem } = parseStatement(text, tokens, extent, misread);
    statements.push(made);
    if (problem !== null) problems.push(problem);
  }
  return { statements, tokens, trivia, problems: problems.sort((a, b) => a.at.start - b.at.start) };
}

function parseStatement(
  text: string,
  tokens: readonly Token[],
  extent: Extent,
  misread: boolean,
): { made: Statement; problem: Problem | null } {
  const { start, end, fault } = extent;
  const failed = misread || fault !== null;
  const problem = misread ? null : fault;
  const cursor: Cursor = { text, tokens, start, end, grammar: GRAMMAR, uncertain: [], at: start, depth: 0, problem, failed };
  const made = statement(cursor);
  return { made, problem: cursor.problem };
}
