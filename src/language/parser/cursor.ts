// Where parsing stands in the tokens of one statement, and what all productions share.
import type { Problem } from '../../text/problem.ts';
import { type Span, span } from '../../text/span.ts';
import type { Expression, Hole, QuantityLiteral, Readings } from '../ast.ts';
import type { Operator, Punctuation, ReservedWord, Token } from '../token.ts';

/** How deep brackets, signs, powers and `if` may be nested (P7, F10). */
export const MAX_NESTING = 200;

/** The productions that others come back to; bound late, so that their files need not import each other. */
export interface Grammar {
  readonly expression: (c: Cursor) => Expression;
  readonly primary: (c: Cursor) => Expression;
}

/** The tokens from `at` up to `end` are still to be read; `problem` is the statement's one syntax error (Y5). */
export interface Cursor {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly start: number;
  readonly end: number;
  readonly grammar: Grammar;
  /** Nodes with limits of their own, in the order of reading (L10). */
  readonly uncertain: (QuantityLiteral | Readings)[];
  /** The tokens that begin a clause, by their index; shared by all statements of a block. */
  readonly clauseStarts: number[];
  at: number;
  depth: number;
  problem: Problem | null;
  /** Whether something is wrong, reported here or by the lexer: what follows from it is not reported. */
  failed: boolean;
}

/** Keeps the first problem of a statement. */
export function report(c: Cursor, make: () => Problem): void {
  if (!c.failed) c.problem = make();
  c.failed = true;
}

export function peek(c: Cursor, ahead = 0): Token | undefined {
  const at = c.at + ahead;
  return at < c.end ? c.tokens[at] : undefined;
}

/** The token just read. */
export function previous(c: Cursor): Token {
  return c.tokens[Math.max(c.at - 1, c.start)]!;
}

export function isMark(c: Cursor, mark: Punctuation, ahead = 0): boolean {
  const token = peek(c, ahead);
  return token?.kind === 'punctuation' && token.mark === mark;
}

/** Whether `=` or `:` stands there: what is before it is defined. */
export function definesAt(c: Cursor, ahead: number): boolean {
  return isMark(c, '=', ahead) || isMark(c, ':', ahead);
}

export function isOperator(c: Cursor, operator: Operator, ahead = 0): boolean {
  const token = peek(c, ahead);
  return token?.kind === 'operator' && token.operator === operator;
}

export function isWord(c: Cursor, word: ReservedWord, ahead = 0): boolean {
  const token = peek(c, ahead);
  return token?.kind === 'word' && token.word === word;
}

/** Whether a word with a meaning in this place only stands here (K2). */
export function isContextual(c: Cursor, word: string, ahead = 0): boolean {
  const token = peek(c, ahead);
  return token?.kind === 'name' && token.name === word;
}

export function takeMark(c: Cursor, mark: Punctuation): boolean {
  return isMark(c, mark) && advance(c);
}

export function takeOperator(c: Cursor, operator: Operator): boolean {
  return isOperator(c, operator) && advance(c);
}

export function takeWord(c: Cursor, word: ReservedWord): boolean {
  return isWord(c, word) && advance(c);
}

export function takeContextual(c: Cursor, word: string): boolean {
  return isContextual(c, word) && advance(c);
}

function advance(c: Cursor): true {
  c.at++;
  return true;
}

/** From the token `first` to the one just read. */
export function spanFrom(c: Cursor, first: number): Span {
  const start = c.tokens[Math.min(first, c.tokens.length - 1)]!.at.start;
  return span(start, Math.max(start, previous(c).at.end));
}

/** From the first to the last token of the statement. */
export function whole(c: Cursor): Span {
  return span(c.tokens[c.start]!.at.start, c.tokens[c.end - 1]!.at.end);
}

export function textOf(c: Cursor, at: Span): string {
  return c.text.slice(at.start, at.end);
}

/** The empty place behind the token just read. */
export function gap(c: Cursor): Span {
  const end = c.at > c.start ? previous(c).at.end : c.tokens[c.start]!.at.start;
  return span(end, end);
}

export function hole(c: Cursor): Hole {
  return { kind: 'hole', at: gap(c) };
}

/** Reads on to the next comma or closing bracket of the bracket that parsing stands in, past brackets inside it. */
export function skipInBracket(c: Cursor): void {
  for (let open = 0; c.at < c.end; c.at++) {
    const token = c.tokens[c.at]!;
    if (token.kind !== 'punctuation') continue;
    if (token.mark === '(' || token.mark === '[') open++;
    else if (open === 0 && (token.mark === ',' || token.mark === ')' || token.mark === ']')) return;
    else if (token.mark === ')' || token.mark === ']') open--;
  }
}
