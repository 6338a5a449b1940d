// Sums, products, signs and powers (P1, L5, L13). Chains of any length are one node (P7).
import type { Span } from '../../text/span.ts';
import type { Expression, Power, Product, Sum } from '../ast.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import { superscriptText } from '../superscript.ts';
import type { SuperscriptToken } from '../token.ts';
import { primary } from './atoms.ts';
import { type Cursor, isOperator, peek, report, spanFrom, textOf } from './cursor.ts';
import { isNumeric, literal } from './literals.ts';
import { nested } from './nesting.ts';

export function sum(c: Cursor): Expression {
  const first = c.at;
  const operand = term(c);
  if (!isOperator(c, '+') && !isOperator(c, '-')) return operand;
  const terms: Sum['terms'][number][] = [{ sign: 1, operator: null, operand }];
  while (isOperator(c, '+') || isOperator(c, '-')) {
    const sign = isOperator(c, '+') ? 1 : -1;
    const operator = c.tokens[c.at++]!.at;
    terms.push({ sign, operator, operand: term(c) });
  }
  return { kind: 'sum', at: spanFrom(c, first), terms };
}

function term(c: Cursor): Expression {
  const first = c.at;
  const operand = signed(c);
  if (!isOperator(c, '*') && !isOperator(c, '/')) return operand;
  const factors: Product['factors'][number][] = [{ inverse: false, operator: null, operand }];
  while (isOperator(c, '*') || isOperator(c, '/')) {
    const inverse = isOperator(c, '/');
    const operator = c.tokens[c.at++]!.at;
    factors.push({ inverse, operator, operand: signed(c) });
  }
  return { kind: 'product', at: spanFrom(c, first), factors };
}

function signed(c: Cursor): Expression {
  while (isOperator(c, '+')) {
    report(c, () => syntaxProblem('unary-plus', peek(c)!.at, {}));
    c.at++;
  }
  if (!isOperator(c, '-')) return raised(c);
  const first = c.at;
  const minus = minusOfLiteral(c);
  if (minus !== null) return literal(c, minus);
  c.at++;
  const operand = nested(c, signed);
  return { kind: 'negate', at: spanFrom(c, first), operand };
}

/** Takes a minus that belongs to the literal behind it: one with no power behind it (L13). */
function minusOfLiteral(c: Cursor): Span | null {
  if (!isNumeric(peek(c, 1)) || powerFollows(c, 2)) return null;
  return c.tokens[c.at++]!.at;
}

function powerFollows(c: Cursor, ahead = 0): boolean {
  return isOperator(c, '^', ahead) || peek(c, ahead)?.kind === 'superscript';
}

/** A primary and its power: `x^-2`, `(U/2)²`. */
export function raised(c: Cursor): Expression {
  const first = c.at;
  const base = primary(c);
  if (!powerFollows(c)) return base;
  const made = powerOf(c, first, base);
  if (powerFollows(c)) twoPowers(c, made);
  checkBase(c, made);
  return made;
}

function powerOf(c: Cursor, first: number, base: Expression): Power {
  const token = c.tokens[c.at++]!;
  const superscript = token.kind === 'superscript';
  const exponent = superscript ? wholePower(token) : nested(c, exponentOf);
  return { kind: 'power', at: spanFrom(c, first), base, exponent, superscript };
}

function exponentOf(c: Cursor): Expression {
  const first = c.at;
  if (!isOperator(c, '-')) return raised(c);
  const minus = minusOfLiteral(c);
  if (minus !== null) return literal(c, minus);
  c.at++;
  const operand = nested(c, exponentOf);
  return { kind: 'negate', at: spanFrom(c, first), operand };
}

function wholePower(token: SuperscriptToken): Expression {
  return { kind: 'quantity', at: token.at, number: String(token.power), value: token.power, unit: null, unitAt: null, bounds: null };
}

/** A literal with a unit, and a root, take no power without parentheses (L5, P1). */
function checkBase(c: Cursor, power: Power): void {
  const { base, exponent } = power;
  const raisedText = c.text.slice(base.at.end, power.at.end).trim();
  if (base.kind === 'squareRoot') {
    const operand = textOf(c, base.operand.at);
    report(c, () =>
      syntaxProblem('power-of-root', power.at, { inside: `√(${operand}${raisedText})`, outside: `(√${operand})${raisedText}` }),
    );
  } else if (base.kind === 'quantity' && base.unit !== null && base.bounds === null) {
    const whole = `(${textOf(c, base.at)})${raisedText}`;
    const joins =
      base.unit.parts.length === 1 && exponent.kind === 'quantity' && exponent.unit === null && Number.isInteger(exponent.value);
    const unit = joins ? `${textOf(c, base.at)}${superscriptText(exponent.value)}` : null;
    report(c, () => syntaxProblem('power-of-quantity', power.at, { whole, unit }));
  }
  if (exponent.kind === 'power' && exponent.superscript) {
    const inner = textOf(c, exponent.at);
    const left = `(${textOf(c, base.at)}^${textOf(c, exponent.base.at)})${textOf(c, exponent.exponent.at)}`;
    report(c, () => syntaxProblem('two-powers', power.at, { left, right: `${textOf(c, base.at)}^(${inner})` }));
  }
}

/** `x²^3`, `x² ²`: reported, and read over. */
function twoPowers(c: Cursor, made: Power): void {
  const first = c.at;
  while (powerFollows(c)) powerOf(c, first, made);
  const second = textOf(c, spanFrom(c, first));
  const at = { start: made.at.start, end: spanFrom(c, first).end };
  report(c, () => syntaxProblem('two-powers', at, { left: `(${textOf(c, made.at)})${second}`, right: null }));
}
