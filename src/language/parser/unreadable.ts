// Lines that are no statement: what they were likely meant for, and the name that they would have defined (Y5, Y6).

import { cover } from '../../text/span.ts';
import type { Identifier, Unreadable } from '../ast.ts';
import { nameSpelling } from '../name.ts';
import { likelyWords, OTHER_STATEMENTS } from '../other-words.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import type { Token } from '../token.ts';
import { clauses, NO_CLAUSES } from './clauses.ts';
import { type Cursor, definesAt, isMark, isOperator, peek, report, textOf, whole } from './cursor.ts';
import { expression } from './expressions.ts';
import { behindBracket } from './layout.ts';
import { missingColon } from './types.ts';
import { isUnit } from './unexpected.ts';

export function unreadable(c: Cursor): Unreadable {
  const name = clauseAtMargin(c) ? null : definedName(c);
  noStatement(c);
  c.at = c.end;
  c.uncertain.length = 0;
  return { kind: 'unreadable', at: whole(c), name, clauses: NO_CLAUSES, broken: true };
}

/** The name that the line would have defined; that it doesn't is reported. */
function definedName(c: Cursor): Identifier | null {
  return declaredName(c) ?? unitInBrackets(c) ?? brokenName(c) ?? comparedName(c) ?? namedValue(c);
}

/** Words that declare a name in other languages. */
const DECLARING: ReadonlySet<string> = new Set([
  'let',
  'var',
  'const',
  'set',
  'def',
  'define',
  'val',
  'input',
  'param',
  'function',
  'func',
  'fn',
]);

/** `let y = 4`, `def f(x) = 2 * x`: a name needs no word before it. */
function declaredName(c: Cursor): Identifier | null {
  const [word, name] = [peek(c)!, peek(c, 1)];
  if (word.kind !== 'name' || !DECLARING.has(word.name.toLowerCase()) || name?.kind !== 'name') return null;
  const behind = isMark(c, '(', 2) ? behindBracket(c.tokens, c.start + 2, false, c.end) - c.start : 2;
  if (!definesAt(c, behind)) return null;
  const form = textOf(c, cover(name.at, peek(c, behind - 1)!.at));
  report(c, () => syntaxProblem('word-before-name', cover(word.at, name.at), { word: textOf(c, word.at), name: textOf(c, name.at), form }));
  return { at: name.at, name: name.name };
}

/** `I_n [A] = 34`: a unit in brackets behind the name. */
function unitInBrackets(c: Cursor): Identifier | null {
  const name = peek(c)!;
  if (name.kind !== 'name' || !isMark(c, '[', 1)) return null;
  const behind = behindBracket(c.tokens, c.start + 1, false, c.end) - c.start;
  if (!definesAt(c, behind)) return null;
  const at = cover(name.at, peek(c, behind - 1)!.at);
  const unit = textOf(c, { start: peek(c, 1)!.at.end, end: at.end - 1 }).trim();
  if (!isUnit(unit)) return null;
  report(c, () => syntaxProblem('missing-colon', at, { name: textOf(c, name.at), unit }));
  return { at: name.at, name: name.name };
}

/** What is said of a line of which nothing better could be said. */
function noStatement(c: Cursor): void {
  if (c.failed) return;
  const token = c.tokens[c.start]!;
  misspeltWord(c, token);
  if (beginsNothing(token)) report(c, () => syntaxProblem('not-a-statement', token.at, { found: textOf(c, token.at) }));
  const value = expression(c);
  clauses(c, { statement: 'a value' });
  report(c, () => syntaxProblem('bare-expression', value.at, {}));
}

/** A clause that is not indented. */
function clauseAtMargin(c: Cursor): boolean {
  const token = c.tokens[c.start]!;
  if (!isClause(c, token)) return false;
  const clause = token.kind === 'text' ? 'A description' : `\`${textOf(c, token.at)}\``;
  report(c, () => syntaxProblem('clause-at-margin', token.at, { clause }));
  return true;
}

/** What stands before the sign that defines, where it is no name: `motor current = 3 A`, `motor-current = 3 A`, `2nd = 3 A`. */
function brokenName(c: Cursor): Identifier | null {
  let count = 0;
  for (let part = peek(c); part !== undefined && isPartOfName(part); part = peek(c, count)) count++;
  const last = peek(c, count - 1);
  if (count < 2 || last?.kind === 'operator' || !definesAt(c, count)) return null;
  const name = count === 2 ? peek(c)! : null;
  if (name?.kind === 'name' && missingColon(c, name.at, last)) return { at: name.at, name: name.name };
  const at = cover(peek(c)!.at, last!.at);
  const words = textOf(c, at)
    .split(/[^\p{L}\p{M}\d_]+/u)
    .filter((word) => word !== '');
  const joined = nameSpelling(words.join('_'));
  const meant = /^\d/.test(joined) ? null : joined;
  report(c, () => syntaxProblem('broken-name', at, { name: meant }));
  return meant === null ? null : { at, name: meant };
}

function isPartOfName(token: Token): boolean {
  return ['name', 'word', 'number', 'quantity', 'error'].includes(token.kind) || (token.kind === 'operator' && token.operator === '-');
}

/** A word that begins no statement but nearly does, with a value behind it: `Shall x < y`. */
function misspeltWord(c: Cursor, token: Token): void {
  const next = peek(c, 1);
  if (token.kind === 'name' && token.name === 'action' && next?.kind === 'name')
    report(c, () => syntaxProblem('missing-text', next.at, { behind: 'action', form: 'action "…"' }));
  if (token.kind !== 'name' || (next?.kind !== 'name' && next?.kind !== 'text')) return;
  const near = likelyWords(token.name, OTHER_STATEMENTS, STATEMENT_WORDS);
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
  if (token.kind !== 'name' || (next?.kind !== 'number' && next?.kind !== 'quantity')) return null;
  report(c, () =>
    syntaxProblem('definition-without-equals', cover(token.at, next.at), { name: textOf(c, token.at), behind: token.at.end }),
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
