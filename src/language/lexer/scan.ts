// What the lexer's parts share: the text, where reading stands, and what has been found so far.
import type { Problem } from '../../text/problem.ts';
import { type Span, span } from '../../text/span.ts';
import type { Token, Trivia } from '../token.ts';

/** The state of one pass over a text. `first` and `indent` are what the next token will carry (Y1). */
export interface Scan {
  readonly text: string;
  readonly tokens: Token[];
  readonly trivia: Trivia[];
  readonly problems: Problem[];
  at: number;
  first: boolean;
  indent: number;
}

/** Reads one kind of thing at `scan.at` and moves behind it, or leaves everything as it is and says no. */
export type Reader = (scan: Scan) => boolean;

type Unplaced<T> = T extends Token ? Omit<T, 'at' | 'first' | 'indent'> : never;

/** A token while it gets its place. */
type Placing = { -readonly [K in keyof Token]: Token[K] };

export function startScan(text: string): Scan {
  return { text, tokens: [], trivia: [], problems: [], at: 0, first: true, indent: 0 };
}

/** Takes the characters up to `end` as one token. */
export function take(scan: Scan, end: number, token: Unplaced<Token>): Span {
  const at = span(scan.at, end);
  const placed = token as Placing;
  placed.at = at;
  placed.first = scan.first;
  placed.indent = scan.indent;
  scan.tokens.push(placed as Token);
  scan.first = false;
  scan.at = end;
  return at;
}

/** Takes the characters up to `end` as trivia. */
export function skip(scan: Scan, end: number, kind: Trivia['kind']): void {
  scan.trivia.push({ kind, at: span(scan.at, end) });
  scan.at = end;
}

/** The match of a sticky expression at `at`, or null. */
export function matchAt(expression: RegExp, text: string, at: number): string | null {
  expression.lastIndex = at;
  return expression.test(text) ? text.slice(at, expression.lastIndex) : null;
}
