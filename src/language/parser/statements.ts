// Which statement begins here, told by its first words (Y2, Y6, K2).
import { nearSpellings } from '../../text/near.ts';
import type { Identifier, Statement, Unreadable } from '../ast.ts';
import { nameSpelling } from '../name.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import type { Token } from '../token.ts';
import { clauses, NO_CLAUSES } from './clauses.ts';
import { type Cursor, isMark, isOperator, peek, report, textOf } from './cursor.ts';
import { curve, tabulation } from './curves.ts';
import { column, entry, functionDefinition, noUncertain, whole } from './definitions.ts';
import { expression } from './expressions.ts';
import { behindBracket } from './layout.ts';
import { action, instrument, use } from './registers.ts';
import { requirement } from './requirements.ts';

export function statement(c: Cursor): Statement {
  const made = read(c);
  if (c.uncertain.length === 0) return made;
  noUncertain(c);
  return { ...made, broken: c.failed };
}

function read(c: Cursor): Statement {
  const token = c.tokens[c.start]!;
  if (defines(c, 1)) return entry(c);
  if (token.kind === 'word') return worded(c, token.word) ?? unreadable(c);
  if (token.kind !== 'name') return unreadable(c);
  if (token.name === 'instrument' && peek(c, 1)?.kind === 'name') return instrument(c);
  if (token.name === 'action' && peek(c, 1)?.kind === 'text') return action(c);
  if (isMark(c, '.', 1) && peek(c, 2)?.kind === 'name' && defines(c, 3)) return column(c);
  if (isMark(c, '(', 1) && definesFunction(c)) return functionDefinition(c);
  return unreadable(c);
}

function worded(c: Cursor, word: string): Statement | null {
  switch (word) {
    case 'shall':
    case 'should':
      return requirement(c);
    case 'curve':
      return curve(c);
    case 'tabulate':
      return tabulation(c);
    case 'use':
      return use(c);
    default:
      return null;
  }
}

function defines(c: Cursor, ahead: number): boolean {
  const first = peek(c);
  const named = first?.kind === 'name' || first?.kind === 'word' || (first?.kind === 'number' && first.text === 'pi');
  return named && definesAt(c, ahead);
}

function definesAt(c: Cursor, ahead: number): boolean {
  return isMark(c, '=', ahead) || isMark(c, ':', ahead);
}

/** `NAME (…) =`, or a head whose bracket is not closed and whose first parameter has a unit. */
function definesFunction(c: Cursor): boolean {
  const behind = behindBracket(c.tokens, c.start + 1, false, c.end) - c.start;
  if (defines(c, behind)) return true;
  return c.start + behind >= c.end && peek(c, 2)?.kind === 'name' && isMark(c, ':', 3);
}

/** A line that is no statement: what it was likely meant for is said, and the name that it would have defined is kept (Y5, Y6). */
function unreadable(c: Cursor): Unreadable {
  const token = c.tokens[c.start]!;
  const name = brokenName(c) ?? comparedName(c) ?? namedValue(c);
  if (name === null && !isClause(c, token) && !beginsNothing(token)) misspeltWord(c, token);
  if (name === null && isClause(c, token)) {
    report(c, () =>
      syntaxProblem('clause-at-margin', token.at, { clause: token.kind === 'text' ? 'A description' : `\`${textOf(c, token.at)}\`` }),
    );
  } else if (name === null && beginsNothing(token)) {
    report(c, () => syntaxProblem('not-a-statement', token.at, { found: textOf(c, token.at) }));
  } else {
    const value = expression(c);
    clauses(c, { statement: 'a value' });
    report(c, () => syntaxProblem('bare-expression', value.at, {}));
  }
  c.at = c.end;
  c.uncertain.length = 0;
  return { kind: 'unreadable', at: whole(c), name, clauses: NO_CLAUSES, broken: true };
}

/** What stands before the sign that defines, where it is no name: `motor current = 3 A`, `motor-current = 3 A`, `2nd = 3 A`. */
function brokenName(c: Cursor): Identifier | null {
  let count = 0;
  for (let part = peek(c); part !== undefined && isPartOfName(part); part = peek(c, count)) count++;
  const last = peek(c, count - 1);
  if (count < 2 || last?.kind === 'operator' || !definesAt(c, count)) return null;
  const at = { start: peek(c)!.at.start, end: last!.at.end };
  const words = textOf(c, at)
    .split(/[^\p{L}\p{M}\d_]+/u)
    .filter((word) => word !== '');
  const joined = nameSpelling(words.join('_'));
  const name = /^\d/.test(joined) ? null : joined;
  report(c, () => syntaxProblem('broken-name', at, { name }));
  return name === null ? null : { at, name };
}

function isPartOfName(token: Token): boolean {
  return ['name', 'word', 'number', 'quantity', 'error'].includes(token.kind) || (token.kind === 'operator' && token.operator === '-');
}

/** A word that begins no statement but nearly does, with a value behind it: `Shall x < y`. */
function misspeltWord(c: Cursor, token: Token): void {
  const next = peek(c, 1);
  if (token.kind !== 'name' || (next?.kind !== 'name' && next?.kind !== 'text')) return;
  const near = nearSpellings(token.name, STATEMENT_WORDS);
  if (near.length > 0) report(c, () => syntaxProblem('misspelt-statement', token.at, { word: textOf(c, token.at), near }));
}

const STATEMENT_WORDS = ['shall', 'should', 'curve', 'tabulate', 'use', 'instrument', 'action'];

/** `x == 5` for `x = 5`. */
function comparedName(c: Cursor): Identifier | null {
  const token = peek(c)!;
  if (token.kind !== 'name' || !isOperator(c, '==', 1)) return null;
  report(c, () => syntaxProblem('comparison-as-definition', peek(c, 1)!.at, { name: textOf(c, token.at), equals: peek(c, 1)!.at }));
  return { at: token.at, name: token.name };
}

/** `x 5 V` for `x = 5 V`. */
function namedValue(c: Cursor): Identifier | null {
  const [token, next] = [peek(c)!, peek(c, 1)];
  if (token.kind !== 'name' || (next?.kind !== 'number' && next?.kind !== 'quantity') || isClause(c, token)) return null;
  report(c, () =>
    syntaxProblem(
      'definition-without-equals',
      { start: token.at.start, end: next.at.end },
      { name: textOf(c, token.at), behind: token.at.end },
    ),
  );
  return { at: token.at, name: token.name };
}

const CLAUSE_WORDS: ReadonlySet<string> = new Set([
  'from',
  'because',
  'with',
  'needs',
  'for',
  'throughout',
  'over',
  'where',
  'then',
  'else',
  'to',
]);
const CLAUSE_NAMES: ReadonlySet<string> = new Set(['mark', 'limit', 'by', 'accepted', 'serial', 'calibrated', 'due', 'step', 'within']);

/** A clause that is not indented. */
function isClause(c: Cursor, token: Token): boolean {
  if (token.kind === 'text') return c.end - c.start === 1;
  if (token.kind === 'word') return CLAUSE_WORDS.has(token.word);
  const next = peek(c, 1);
  return (
    token.kind === 'name' && CLAUSE_NAMES.has(token.name) && next !== undefined && next.kind !== 'operator' && next.kind !== 'punctuation'
  );
}

function beginsNothing(token: Token): boolean {
  if (token.kind === 'punctuation') return token.mark !== '(' && token.mark !== '[';
  if (token.kind === 'operator') return token.operator !== '-' && token.operator !== '√';
  if (token.kind === 'word') return !['if', 'the', 'least', 'greatest', 'first', 'not', 'yes', 'no', 'row'].includes(token.word);
  return token.kind === 'error' || token.kind === 'plusminus' || token.kind === 'superscript' || token.kind === 'unit';
}
