// Where statements begin: found from the lines alone, before anything is parsed, so that no error crosses a boundary (Y1 to Y3, Y5).
import type { Problem } from '../../text/problem.ts';
import { type Span, span } from '../../text/span.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import type { Token } from '../token.ts';
import { type Brackets, bracketFault, noBrackets, noteBracket } from './brackets.ts';

/** The tokens of one statement, from `start` up to `end`; `fault` is what is wrong with its brackets. */
export interface Extent {
  readonly start: number;
  readonly end: number;
  readonly fault: Problem | null;
}

export interface Layout {
  readonly extents: readonly Extent[];
  /** Lines that stand in the wrong column: reported, and read all the same. */
  readonly problems: readonly Problem[];
}

export function findStatements(text: string, tokens: readonly Token[]): Layout {
  const extents: Extent[] = [];
  const problems: Problem[] = [];
  const margin = tokens[0]?.indent ?? 0;
  if (margin > 0) problems.push(indentedBlock(text, tokens[0]!, margin));
  let start = 0;
  let brackets = noBrackets();
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    if (token.first && i > 0) {
      const role = roleOf(tokens, i, margin, brackets);
      if (role === 'indented statement') {
        const indent = span(token.at.start - token.indent, token.at.start);
        problems.push(syntaxProblem('indented-statement', token.at, { indent }));
      }
      if (role !== 'continuation') {
        extents.push({ start, end: i, fault: bracketFault(brackets) });
        start = i;
        brackets = noBrackets();
      }
    }
    noteBracket(brackets, token);
  }
  if (tokens.length > 0) extents.push({ start, end: tokens.length, fault: bracketFault(brackets) });
  return { extents, problems };
}

function roleOf(
  tokens: readonly Token[],
  at: number,
  margin: number,
  brackets: Brackets,
): 'statement' | 'indented statement' | 'continuation' {
  const token = tokens[at]!;
  const indented = token.indent > margin;
  if (looksLikeStatement(tokens, at)) {
    if (!indented) return 'statement';
    return expectsDefinition(tokens[at - 1]!) ? 'continuation' : 'indented statement';
  }
  const closes = isMark(token, ')') || isMark(token, ']');
  return indented || closes || brackets.open.length > 0 ? 'continuation' : 'statement';
}

/** Behind a comma, `with` or an opening bracket, `a = …` is a local or a named argument. */
function expectsDefinition(token: Token): boolean {
  return isMark(token, ',') || isMark(token, '(') || isMark(token, '[') || (token.kind === 'word' && token.word === 'with');
}

const OPENING_WORDS: ReadonlySet<string> = new Set(['shall', 'should', 'use', 'curve', 'tabulate']);

/** Y2. The rest of the line is looked at only where it begins with `NAME (`. */
function looksLikeStatement(tokens: readonly Token[], at: number): boolean {
  const [first, second, third, fourth] = [tokens[at]!, onLine(tokens, at + 1), onLine(tokens, at + 2), onLine(tokens, at + 3)];
  if (first.kind === 'word') return OPENING_WORDS.has(first.word) || definesBehind(second);
  if (first.kind === 'number') return first.text === 'pi' && isMark(second, '=');
  if (first.kind !== 'name') return false;
  if (first.name === 'instrument' && second?.kind === 'name') return true;
  if (first.name === 'action' && second?.kind === 'text') return true;
  if (definesBehind(second)) return true;
  if (isMark(second, '.') && third?.kind === 'name') return definesBehind(fourth);
  return isMark(second, '(') && definesBehind(onLine(tokens, behindBracket(tokens, at + 1, true)));
}

/** The token at an index, if it stands on the same line as the one before it. */
function onLine(tokens: readonly Token[], at: number): Token | undefined {
  const token = tokens[at];
  return token === undefined || token.first ? undefined : token;
}

function definesBehind(token: Token | undefined): boolean {
  return isMark(token, '=') || isMark(token, ':');
}

function isMark(token: Token | undefined, mark: string): boolean {
  return token?.kind === 'punctuation' && token.mark === mark;
}

/** The index behind the bracket that closes the one at `open`; `tokens.length` where it is not closed (on its line). */
export function behindBracket(tokens: readonly Token[], open: number, oneLine: boolean, end = tokens.length): number {
  let depth = 0;
  for (let i = open; i < end; i++) {
    const token = tokens[i]!;
    if (oneLine && i > open && token.first) break;
    if (isMark(token, '(') || isMark(token, '[')) depth++;
    else if ((isMark(token, ')') || isMark(token, ']')) && --depth === 0) return i + 1;
  }
  return tokens.length;
}

function indentedBlock(text: string, token: Token, margin: number): Problem {
  const lines: Span[] = [];
  for (const line of text.matchAll(/^[ \t\u00A0\u2009\u202F]+/gm)) {
    lines.push(span(line.index, line.index + Math.min(line[0].length, margin)));
  }
  return syntaxProblem('indented-block', token.at, { lines });
}
