// Literals and the limits behind them: `400 V ± 2 %`, `92 % within 91.3 % to 92.4 %` (L10, L13, L16).
import { cover, type Span } from '../../text/span.ts';
import { differenceToSI, toSI } from '../../units/quantity.ts';
import type { Bounds, PlusMinus, QuantityLiteral } from '../ast.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import type { NumberToken, QuantityToken } from '../token.ts';
import {
  type Cursor,
  gap,
  isContextual,
  isMark,
  isOperator,
  peek,
  previous,
  report,
  skipInBracket,
  spanFrom,
  takeContextual,
  takeMark,
  takeOperator,
  takeWord,
} from './cursor.ts';

export function isNumeric(token: { readonly kind: string } | undefined): token is NumberToken | QuantityToken {
  return token?.kind === 'number' || token?.kind === 'quantity';
}

/** The literal of one token; `minus` is where its sign stands, if it has one. */
function literalOf(token: NumberToken | QuantityToken, minus: Span | null, difference = false): QuantityLiteral {
  const unit = token.kind === 'quantity' ? token.unit : null;
  const sign = minus === null ? '' : '-';
  const digits = sign + (token.text === 'pi' ? String(Math.PI) : token.text);
  const value = difference ? differenceToSI(digits, unit) : toSI(digits, unit);
  return {
    kind: 'quantity',
    at: minus === null ? token.at : cover(minus, token.at),
    number: sign + token.text,
    value,
    unit,
    unitAt: token.kind === 'quantity' ? token.unitAt : null,
    bounds: null,
  };
}

/** A literal and the limits behind it. The cursor stands on its number; its sign has been read. */
export function literal(c: Cursor, minus: Span | null): QuantityLiteral {
  const plain = literalOf(peek(c) as NumberToken | QuantityToken, minus);
  c.at++;
  const bounds = boundsHere(c);
  if (bounds === null) return plain;
  const made = { ...plain, at: cover(plain.at, bounds.at), bounds };
  c.uncertain.push(made);
  return made;
}

/** Limits, if any stand here. */
export function boundsHere(c: Cursor): Bounds | null {
  const token = peek(c);
  if (token?.kind === 'plusminus') return plusMinus(c);
  if (!isContextual(c, 'within')) return null;
  const first = c.at++;
  const from = bound(c);
  if (!takeWord(c, 'to')) report(c, () => syntaxProblem('bound-literal', (peek(c) ?? previous(c)).at, {}));
  const to = bound(c);
  return { kind: 'within', at: spanFrom(c, first), from, to };
}

function bound(c: Cursor): QuantityLiteral {
  const minus = isOperator(c, '-') ? peek(c)!.at : null;
  if (minus !== null) c.at++;
  const token = peek(c);
  if (isNumeric(token)) {
    c.at++;
    return literalOf(token, minus);
  }
  report(c, () => syntaxProblem('bound-literal', (token ?? previous(c)).at, {}));
  return noLiteral(c);
}

function plusMinus(c: Cursor): PlusMinus {
  const first = c.at++;
  const parts: QuantityLiteral[] = [];
  if (takeMark(c, '(')) {
    do parts.push(halfWidth(c));
    while (takeOperator(c, '+'));
    if (!isMark(c, ')')) {
      report(c, () => syntaxProblem('half-width-literal', (peek(c) ?? previous(c)).at, {}));
      skipInBracket(c);
    }
    takeMark(c, ')');
  } else {
    parts.push(halfWidth(c));
  }
  const coverage = isMark(c, '(') ? coverageHere(c) : null;
  return { kind: 'plusminus', at: spanFrom(c, first), parts, coverage };
}

function halfWidth(c: Cursor): QuantityLiteral {
  const token = peek(c);
  if (isNumeric(token)) {
    c.at++;
    return literalOf(token, null, true);
  }
  const signed = (isOperator(c, '-') || isOperator(c, '+')) && isNumeric(peek(c, 1));
  report(c, () => syntaxProblem(signed ? 'half-width-negative' : 'half-width-literal', (token ?? previous(c)).at, {}));
  if (!signed) return noLiteral(c);
  c.at++;
  return halfWidth(c);
}

/** `(k=2, nu=18)` (L10): the cursor stands on its bracket. */
function coverageHere(c: Cursor): PlusMinus['coverage'] {
  const first = c.at++;
  const k = factor(c, 'k');
  const nu = takeMark(c, ',') ? factor(c, 'nu') : null;
  if (!isMark(c, ')')) {
    report(c, () => syntaxProblem('coverage-form', (peek(c) ?? previous(c)).at, {}));
    skipInBracket(c);
  }
  takeMark(c, ')');
  return { at: spanFrom(c, first), k, nu };
}

function factor(c: Cursor, name: 'k' | 'nu'): number {
  const named = takeContextual(c, name) && takeMark(c, '=');
  const token = peek(c);
  if (!named || token?.kind !== 'number') {
    report(c, () => syntaxProblem(named ? 'coverage-number' : 'coverage-form', (token ?? previous(c)).at, { name }));
    return 1;
  }
  c.at++;
  const value = literalOf(token, null).value;
  if (!(value > 0)) report(c, () => syntaxProblem('coverage-number', token.at, { name }));
  return value;
}

function noLiteral(c: Cursor): QuantityLiteral {
  return { kind: 'quantity', at: gap(c), number: '', value: Number.NaN, unit: null, unitAt: null, bounds: null };
}
