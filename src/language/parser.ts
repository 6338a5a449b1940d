// The text of one calc block to statements: boundaries first, then each statement alone. Recursive descent, total, linear.
import type { Problem } from '../text/problem.ts';
import type { Statement } from './ast.ts';
import { lex } from './lexer.ts';
import type { Cursor } from './parser/cursor.ts';
import { GRAMMAR } from './parser/expressions.ts';
import { findStatements } from './parser/layout.ts';
import { statement } from './parser/statements.ts';
import type { Token, Trivia } from './token.ts';

/** All places are offsets in the block's text. */
export interface Parsed {
  readonly statements: readonly Statement[];
  readonly tokens: readonly Token[];
  readonly trivia: readonly Trivia[];
  /** Which tokens begin a clause, by their index; those of broken statements are not to be relied on. */
  readonly clauseStarts: readonly number[];
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
  const clauseStarts: number[] = [];
  let next = 0;
  for (const { start, end, fault } of extents) {
    const [from, to] = [tokens[start]!.at.start, tokens[end - 1]!.at.end];
    while (next < errors.length && errors[next]!.at.end <= from) next++;
    const misread = next < errors.length && errors[next]!.at.start < to;
    const cursor: Cursor = {
      text, tokens, start, end, grammar: GRAMMAR, uncertain: [], clauseStarts, at: start, depth: 0,
      problem: misread ? null : fault,
      failed: misread || fault !== null,
    }; // biome-ignore format: what is simply passed on stands on one line
    statements.push(statement(cursor));
    if (cursor.problem !== null) problems.push(cursor.problem);
  }
  return { statements, tokens, trivia, clauseStarts, problems: problems.sort((a, b) => a.at.start - b.at.start) };
}
