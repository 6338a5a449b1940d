// One line of tokens with one space where one belongs and none elsewhere.
import type { Token } from '../token.ts';
import type { Roles } from './roles.ts';

/** Whether a space stands between two tokens that follow each other on a line. `coverage`: inside `(k=2)`. */
export function spaceBetween(left: Token, right: Token, roles: Roles, coverage: boolean): boolean {
  if (right.kind === 'superscript' || isTight(left) || isTight(right)) return false;
  if (isMark(left, '([') || isMark(right, ')],:')) return false;
  if (isMark(right, '(')) return !roles.calls.has(left.at.start) && !isOperator(left, '√');
  if (isOperator(left, '√')) return false;
  if (roles.signs.has(left.at.start) && isOperator(left, '-')) return right.kind === 'date';
  return !(coverage && (isMark(left, '=') || isMark(right, '=')));
}

/** The text of a token; a unit stands one space behind its number. */
export function tokenText(text: string, token: Token): string {
  const { start, end } = token.at;
  if (token.kind !== 'quantity') return text.slice(start, end);
  const number = text.slice(start, token.unitAt.start).trimEnd();
  return `${number} ${text.slice(token.unitAt.start, end)}`;
}

function isTight(token: Token): boolean {
  return isMark(token, '.') || isOperator(token, '^');
}

function isMark(token: Token, marks: string): boolean {
  return token.kind === 'punctuation' && marks.includes(token.mark);
}

function isOperator(token: Token, operator: string): boolean {
  return token.kind === 'operator' && token.operator === operator;
}
