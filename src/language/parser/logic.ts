// Comparisons and what joins them: `or`, `and`, `not` (P1, P3, P5).
import { cover } from '../../text/span.ts';
import type { Comparison, Expression, Junction, Relation } from '../ast.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import { sum } from './arithmetic.ts';
import { type Cursor, isMark, isWord, peek, report, spanFrom, takeWord } from './cursor.ts';
import { nested } from './nesting.ts';

export function or(c: Cursor): Expression {
  return junction(c, 'or', and);
}

function and(c: Cursor): Expression {
  return junction(c, 'and', not);
}

function junction(c: Cursor, kind: Junction['kind'], part: (c: Cursor) => Expression): Expression {
  const first = c.at;
  const operand = part(c);
  if (!isWord(c, kind)) return operand;
  const operands = [operand];
  while (takeWord(c, kind)) operands.push(part(c));
  return { kind, at: spanFrom(c, first), operands };
}

function not(c: Cursor): Expression {
  if (!isWord(c, 'not')) return comparison(c);
  const first = c.at++;
  const operand = nested(c, not);
  return { kind: 'not', at: spanFrom(c, first), operand };
}

function comparison(c: Cursor): Expression {
  const first = c.at;
  const operand = sum(c);
  let found = relationHere(c);
  if (found === null) return operand;
  const operands = [operand];
  const relations: Comparison['relations'][number][] = [];
  for (; found !== null; found = relationHere(c)) {
    relations.push(found);
    operands.push(sum(c));
  }
  const made: Comparison = { kind: 'comparison', at: spanFrom(c, first), operands, relations };
  if (relations.length > 1) checkChain(c, made);
  return made;
}

const RELATIONS: ReadonlySet<string> = new Set(['<', '<=', '>', '>=', '==', '!=']);

/** Takes a relation, if one stands here. `=` in its place is an error that offers `==`. */
function relationHere(c: Cursor): Comparison['relations'][number] | null {
  const token = peek(c);
  if (token?.kind === 'operator' && RELATIONS.has(token.operator)) {
    c.at++;
    return { relation: token.operator as Relation, at: token.at };
  }
  if (token?.kind === 'word' && token.word === 'is') {
    const first = c.at++;
    const relation = takeWord(c, 'not') ? 'is not' : 'is';
    return { relation, at: spanFrom(c, first) };
  }
  if (token === undefined || !isMark(c, '=')) return null;
  report(c, () => syntaxProblem('equals-compares', token.at, {}));
  c.at++;
  return { relation: '==', at: token.at };
}

/** A chain runs one way (P3): reported where it turns, with the comparison that joins there by `and`. */
function checkChain(c: Cursor, chain: Comparison): void {
  let way: string | null = null;
  for (const [i, { relation }] of chain.relations.entries()) {
    const direction = relation[0] === '<' || relation[0] === '>' ? relation[0] : null;
    const chains = direction !== null || relation === '==';
    const alone = chains ? null : relation;
    if (alone === null && (direction === null || way === null || way === direction)) {
      way ??= direction;
      continue;
    }
    const turn = i === 0 ? 1 : i;
    const middle = chain.operands[turn]!;
    const left = c.text.slice(chain.at.start, middle.at.end);
    const right = c.text.slice(middle.at.start, chain.at.end);
    const joined = `${left} and ${right}`;
    const at = cover(chain.at, chain.at);
    if (alone !== null) report(c, () => syntaxProblem('no-chain', at, { relation: alone, joined }));
    else report(c, () => syntaxProblem('chain-turns', at, { joined }));
    return;
  }
}
