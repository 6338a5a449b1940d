// Whole expressions: `if`, choices, look-ups and roots, which reach as far as they can (P2), and everything below them.
import type { Expression, Identifier } from '../ast.ts';
import { sum } from './arithmetic.ts';
import { beginsWholeExpression, primary } from './atoms.ts';
import { type Cursor, type Grammar, peek, spanFrom, takeWord } from './cursor.ts';
import { or } from './logic.ts';
import { columnHere, nameHere, wordHere } from './missing.ts';
import { nested } from './nesting.ts';
import { range } from './ranges.ts';

const IF = 'if … then … else …';
const ROOT = 'root of … over x from … to …';

export function expression(c: Cursor): Expression {
  const token = peek(c);
  if (token === undefined || !beginsWholeExpression(c)) return or(c);
  if (token.kind !== 'word') return rootOf(c);
  if (token.word === 'if') return ifExpression(c);
  if (token.word === 'the') return lookUp(c);
  return choice(c, token.word as 'least' | 'greatest' | 'first');
}

export const GRAMMAR: Grammar = { expression, primary };

function ifExpression(c: Cursor): Expression {
  const first = c.at++;
  const condition = or(c);
  wordHere(c, 'then', IF);
  const then = nested(c, expression);
  wordHere(c, 'else', IF);
  const otherwise = nested(c, expression);
  return { kind: 'if', at: spanFrom(c, first), condition, then, otherwise };
}

function choice(c: Cursor, order: 'least' | 'greatest' | 'first'): Expression {
  const first = c.at++;
  const form = order === 'first' ? 'first of … where …' : `${order} … of … where …`;
  const column = order === 'first' ? null : columnHere(c);
  const table = tableBehindOf(c, form);
  const where = takeWord(c, 'where') ? or(c) : null;
  return { kind: 'choice', at: spanFrom(c, first), order, column, table, where };
}

function lookUp(c: Cursor): Expression {
  const first = c.at++;
  const form = 'the … of … where …';
  const column = columnHere(c);
  const table = tableBehindOf(c, form);
  wordHere(c, 'where', form);
  const where = or(c);
  return { kind: 'lookUp', at: spanFrom(c, first), column, table, where };
}

function tableBehindOf(c: Cursor, form: string): Identifier {
  wordHere(c, 'of', form);
  return nameHere(c, 'The name of a table');
}

function rootOf(c: Cursor): Expression {
  const first = c.at;
  c.at += 2;
  const equation = sum(c);
  wordHere(c, 'over', ROOT);
  const over = range(c, ROOT);
  return { kind: 'rootOf', at: spanFrom(c, first), equation, over };
}
