// The smallest expressions: literals, names, calls, lists, parentheses, roots, and the columns taken from them.
import type { Argument, Expression, Identifier } from '../ast.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import type { NameToken } from '../token.ts';
import { type Cursor, isMark, isOperator, isWord, MAX_NESTING, peek, report, skipInBracket, spanFrom, takeMark, textOf } from './cursor.ts';
import { isNumeric, literal } from './literals.ts';
import { columnHere, missingValue, nameHere } from './missing.ts';
import { nested, tooDeep } from './nesting.ts';
import { beginsReadings, readings } from './readings.ts';
import { valueBehindValue } from './unexpected.ts';

/** The longest list (F10). */
const MAX_LIST = 100_000;

/** An atom and the columns read from it. */
export function primary(c: Cursor): Expression {
  const first = c.at;
  let made = atom(c);
  for (let depth = c.depth; isMark(c, '.'); depth++) {
    if (depth >= MAX_NESTING) return tooDeep(c);
    const dot = c.tokens[c.at++]!;
    const column = columnHere(c);
    if (made.kind === 'quantity') report(c, () => syntaxProblem('column-of-number', dot.at, {}));
    made = { kind: 'member', at: spanFrom(c, first), of: made, column };
    if (isMark(c, '(')) report(c, () => syntaxProblem('column-called', column.at, { column: column.name }));
  }
  return made;
}

function atom(c: Cursor): Expression {
  const token = peek(c);
  if (token === undefined) return missingValue(c);
  if (isNumeric(token)) return literal(c, null);
  if (beginsWholeExpression(c)) return wholeAsOperand(c);
  switch (token.kind) {
    case 'name':
      if (beginsReadings(c)) return readings(c);
      return isMark(c, '(', 1) ? call(c, token) : takeAs(c, { kind: 'name', at: token.at, name: token.name });
    case 'date':
      return takeAs(c, { kind: 'date', at: token.at, days: token.days ?? 0 });
    case 'text':
      return takeAs(c, { kind: 'text', at: token.at, value: token.value });
    case 'word':
      if (token.word === 'row') return takeAs(c, { kind: 'row', at: token.at });
      if (token.word === 'yes' || token.word === 'no') return takeAs(c, { kind: 'yesno', at: token.at, value: token.word === 'yes' });
      return missingValue(c);
    case 'operator':
      return token.operator === '√' ? squareRoot(c) : missingValue(c);
    case 'punctuation':
      if (token.mark === '(') return group(c);
      return token.mark === '[' ? list(c) : missingValue(c);
    default:
      return missingValue(c);
  }
}

function takeAs(c: Cursor, made: Expression): Expression {
  c.at++;
  return made;
}

/** `if`, a choice, a look-up or `root of`: expressions that reach as far as they can (P2). */
export function beginsWholeExpression(c: Cursor): boolean {
  const token = peek(c);
  if (token?.kind === 'name') return token.name === 'root' && isWord(c, 'of', 1);
  return token?.kind === 'word' && ['if', 'least', 'greatest', 'first', 'the'].includes(token.word);
}

function wholeAsOperand(c: Cursor): Expression {
  const token = peek(c)!;
  const form = token.kind === 'name' ? 'root of …' : `${textOf(c, token.at)} …`;
  const made = nested(c, c.grammar.expression);
  report(c, () => syntaxProblem('operand-needs-parentheses', token.at, { form, whole: made.at }));
  return made;
}

function squareRoot(c: Cursor): Expression {
  const first = c.at++;
  if (isOperator(c, '-')) report(c, () => syntaxProblem('sign-behind-root', peek(c)!.at, {}));
  const operand = nested(c, primary);
  return { kind: 'squareRoot', at: spanFrom(c, first), operand };
}

function group(c: Cursor): Expression {
  const first = c.at++;
  const inner = nested(c, c.grammar.expression);
  if (c.at < c.end && !isMark(c, ')')) {
    valueBehindValue(c);
    while (c.at < c.end && !isMark(c, ')')) {
      c.at++;
      skipInBracket(c);
    }
  }
  takeMark(c, ')');
  return { kind: 'group', at: spanFrom(c, first), inner };
}

function list(c: Cursor): Expression {
  const first = c.at++;
  const items: Expression[] = [];
  while (c.at < c.end && !isMark(c, ']')) {
    items.push(nested(c, c.grammar.expression));
    if (!endsItem(c, ']')) break;
  }
  takeMark(c, ']');
  const at = spanFrom(c, first);
  if (items.length === 0) report(c, () => syntaxProblem('list-empty', at, {}));
  if (items.length > MAX_LIST) report(c, () => syntaxProblem('list-too-long', at, { limit: MAX_LIST }));
  return { kind: 'list', at, items };
}

/** Takes the comma behind an item; says no where the bracket ends. What can't follow the item is reported and passed over. */
function endsItem(c: Cursor, closing: ')' | ']'): boolean {
  if (takeMark(c, ',')) return true;
  if (c.at >= c.end || isMark(c, closing)) return false;
  valueBehindValue(c);
  skipInBracket(c);
  return takeMark(c, ',');
}

function call(c: Cursor, callee: NameToken): Expression {
  const first = c.at;
  c.at += 2;
  const args: Argument[] = [];
  let named = false;
  let more = c.at < c.end && !isMark(c, ')');
  while (more) {
    const arg = argument(c);
    if (named && arg.name === null) report(c, () => syntaxProblem('positional-behind-named', arg.at, {}));
    named ||= arg.name !== null;
    args.push(arg);
    more = endsItem(c, ')');
  }
  takeMark(c, ')');
  return { kind: 'call', at: spanFrom(c, first), callee: { at: callee.at, name: callee.name }, args };
}

function argument(c: Cursor): Argument {
  const first = c.at;
  let name: Identifier | null = null;
  if ((peek(c)?.kind === 'name' || peek(c)?.kind === 'word') && isMark(c, '=', 1)) {
    name = nameHere(c, 'A parameter');
    c.at++;
  }
  const value = nested(c, c.grammar.expression);
  return { at: spanFrom(c, first), name, value };
}
