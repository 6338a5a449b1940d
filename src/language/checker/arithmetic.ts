// Sums, products, powers and roots: their dimensions, points of temperature and dates (A1, A5), kinds of power (W1).
import type { Span } from '../../text/span.ts';
import { type Dimension, divide, hasAllowedExponents, multiply, PLAIN, raise } from '../../units/dimension.ts';
import { differenceUnit } from '../../units/quantity.ts';
import { rationalFrom } from '../../units/rational.ts';
import { parseUnit } from '../../units/read-unit.ts';
import type * as ast from '../ast.ts';
import type { Checked, Display } from '../checked.ts';
import { typeProblem } from '../problems/types.ts';
import { DATE, elementOf, listOf, NUMBER, type QuantityType, quantity, type Type } from '../type.ts';
import { meet } from './agreement.ts';
import { type Context, checkExpression, failed, unknown } from './context.ts';
import { describeChecked } from './describe.ts';

const SECONDS_A_DAY = 86400;

/** `wrap(of)` is a list where any operand is one. */
export function shaped(of: Type, operands: readonly Checked[]): Type {
  return operands.some((o) => o.type.is === 'list') ? listOf(of) : of;
}

const isUnknown = (node: Checked) => elementOf(node.type).is === 'unknown';

export function checkNegation(c: Context, node: ast.Negation): Checked {
  const operand = checkExpression(c, node.operand);
  if (isUnknown(operand)) return operand;
  const type = elementOf(operand.type);
  if (type.is !== 'quantity')
    return failed(c, typeProblem('wants-number', operand.at, { doing: '"-" takes', found: describeChecked(operand) }));
  if (type.point) return noPoint(c, operand, 'a point of temperature has no negative; a negative one is written `-5 degC`');
  return { kind: 'negate', at: node.at, type: operand.type, display: operand.display, uncertain: operand.uncertain, operand };
}

export function checkSum(c: Context, node: ast.Sum): Checked {
  const terms = node.terms.map((t) => ({ sign: t.sign, operand: checkExpression(c, t.operand), operator: t.operator }));
  const operands = terms.map((t) => t.operand);
  if (operands.some(isUnknown)) return unknown(node.at);
  for (const term of terms) {
    const is = elementOf(term.operand.type).is;
    if (is !== 'quantity' && is !== 'date') {
      return failed(c, typeProblem('wants-number', term.operand.at, { doing: 'a sum takes', found: describeChecked(term.operand) }));
    }
  }
  if (operands.some((o) => elementOf(o.type).is === 'date')) return checkDateSum(c, node, terms);
  let sum = operands[0]!;
  let type = elementOf(sum.type) as QuantityType;
  let display: Display = sum.display;
  for (const term of terms.slice(1)) {
    const next = addTerm(c, node, { ...sum, type, display }, term);
    if (next === null) return unknown(node.at);
    if (type.zero) display = term.operand.display;
    if (type.point && !next.point) display = display === 'auto' || display === null ? 'auto' : differenceUnit(display);
    if (!type.point && next.point) display = term.operand.display;
    type = next;
    sum = term.operand;
  }
  return {
    kind: 'sum',
    at: node.at,
    type: shaped(type, operands),
    display,
    uncertain: operands.some((o) => o.uncertain),
    terms: terms.map(({ sign, operand }) => ({ sign, operand })),
    dates: null,
  };
}

interface Term {
  readonly sign: 1 | -1;
  readonly operand: Checked;
  readonly operator: Span | null;
}

/** The type after one more term; null where it can't be added (reported). */
function addTerm(c: Context, node: ast.Sum, left: Checked, term: Term): QuantityType | null {
  const a = elementOf(left.type) as QuantityType;
  const b = elementOf(term.operand.type) as QuantityType;
  const doing = term.sign === 1 ? 'adds' : 'subtracts';
  const at = node.terms.length === 2 ? node.at : (term.operator ?? node.at);
  if (!a.point && !b.point) return meet(c, left, term.operand, { doing, at });
  if (a.zero || b.zero) return meet(c, left, term.operand, { doing, at });
  if (a.dimension.si !== b.dimension.si) return meet(c, left, term.operand, { doing, at });
  if (a.point && b.point) {
    if (term.sign === -1) return quantity(a.dimension);
    const mends = literalDifference(term.operand);
    return point(
      c,
      term.operand,
      `two points of temperature can't be added${mends.write === null ? '' : `; a difference is written \`${mends.write}\``}`,
      mends.mends,
    );
  }
  if (b.point && term.sign === -1) return point(c, term.operand, "a point of temperature can't be taken from a difference", []);
  return a.point ? a : b;
}

function literalDifference(node: Checked): { write: string | null; mends: { title: string; edits: { at: Span; text: string }[] }[] } {
  if (node.kind !== 'constant' || node.written === null || node.display === null || node.display === 'auto')
    return { write: 'T_2 - T_1', mends: [] };
  const unit = differenceUnit(node.display);
  const write = `${node.written} ${unit.text}`;
  return { write, mends: [{ title: `Write \`${write}\``, edits: [{ at: node.at, text: write }] }] };
}

function point(c: Context, node: Checked, words: string, mends: readonly { title: string; edits: { at: Span; text: string }[] }[]): null {
  c.problems.push(typeProblem('point-arithmetic', node.at, { words, mends }));
  return null;
}

function noPoint(c: Context, node: Checked, words: string): Checked {
  point(c, node, words, []);
  return unknown(node.at);
}

/** date − date is a duration in d; date ± duration is a date (A1, A5). Dates count in days, durations in seconds. */
function checkDateSum(c: Context, node: ast.Sum, terms: readonly Term[]): Checked {
  let isDate = false;
  let display: Display = terms[0]!.operand.display;
  for (const [i, term] of terms.entries()) {
    const b = elementOf(term.operand.type);
    if (b.is === 'quantity') {
      if (!isDuration(c, node, term.operand, b)) return unknown(node.at);
      continue;
    }
    const words =
      term.sign === 1 ? isDate && "two dates can't be added; add a duration in d" : !isDate && "a date can't be taken from a duration";
    if (words) return failed(c, typeProblem('point-arithmetic', term.operand.at, { words, mends: [] }));
    isDate = term.sign === 1;
    if (!isDate) display = parseUnit('d');
    else if (i > 0) display = null;
  }
  const operands = terms.map((t) => t.operand);
  return {
    kind: 'sum',
    at: node.at,
    type: shaped(isDate ? DATE : quantity(parseUnit('s')!.dimension), operands),
    display: isDate ? null : display,
    uncertain: operands.some((o) => o.uncertain),
    terms: terms.map(({ sign, operand }) => ({ sign, operand })),
    dates: {
      terms: operands.map((o) => (elementOf(o.type).is === 'date' ? 1 : 1 / SECONDS_A_DAY)),
      result: isDate ? 1 : SECONDS_A_DAY,
    },
  };
}

/** Whether a term beside dates is a duration; where not it is reported. */
function isDuration(c: Context, node: ast.Sum, operand: Checked, type: QuantityType): boolean {
  noteMeanDuration(c, operand);
  if (type.zero || type.dimension.si === parseUnit('s')!.dimension) return true;
  const facts = { doing: 'adds', left: 'a date', right: describeChecked(operand), hint: '; a duration is written in d', mends: [] };
  c.problems.push(typeProblem('dimension-mismatch', node.at, facts));
  return false;
}

function noteMeanDuration(c: Context, node: Checked): void {
  if (node.kind === 'constant' && node.display !== null && node.display !== 'auto' && /^(month|year)$/.test(node.display.text)) {
    c.problems.push(typeProblem('mean-duration', node.at, { unit: node.display.text }));
  }
}

export function checkProduct(c: Context, node: ast.Product): Checked {
  const factors = node.factors.map((f) => ({ inverse: f.inverse, operand: checkExpression(c, f.operand) }));
  let dimension: Dimension = PLAIN;
  let lost = false;
  for (const { inverse, operand } of factors) {
    const type = elementOf(operand.type);
    if (type.is === 'unknown') lost = true;
    else if (type.is !== 'quantity') {
      c.problems.push(typeProblem('wants-number', operand.at, { doing: 'a product takes', found: describeChecked(operand) }));
      lost = true;
    } else if (type.point) {
      const words =
        'a multiple of a point of temperature has no meaning; take a difference, such as `T - 20 degC` or `T - absolute_zero`; between two points stands `T_1 + 0.7 * (T_2 - T_1)`';
      c.problems.push(typeProblem('point-arithmetic', operand.at, { words, mends: [] }));
      lost = true;
    } else dimension = inverse ? divide(dimension, type.dimension) : multiply(dimension, type.dimension);
  }
  if (lost || !allowed(c, dimension, node.at)) return unknown(node.at);
  const operands = factors.map((f) => f.operand);
  return {
    kind: 'product',
    at: node.at,
    type: shaped(quantity(dimension), operands),
    display: 'auto',
    uncertain: operands.some((o) => o.uncertain),
    factors,
  };
}

export function checkPower(c: Context, node: ast.Power): Checked {
  const base = checkExpression(c, node.base);
  const exponent = checkExpression(c, node.exponent);
  if (isUnknown(base) || isUnknown(exponent)) return unknown(node.at);
  const power = elementOf(exponent.type);
  const type = elementOf(base.type);
  if (power.is !== 'quantity' || power.dimension.si !== PLAIN) {
    return failed(c, typeProblem('power-plain', exponent.at, { found: describeChecked(exponent) }));
  }
  if (type.is !== 'quantity')
    return failed(c, typeProblem('wants-number', base.at, { doing: 'a power takes', found: describeChecked(base) }));
  if (type.point) return noPoint(c, base, 'a power of a point of temperature has no meaning; `T - absolute_zero` is in kelvins above zero');
  const uncertain = base.uncertain || exponent.uncertain;
  const made = (dimension: Dimension): Checked => ({
    kind: 'power', at: node.at, type: shaped(quantity(dimension), [base, exponent]), display: 'auto', uncertain, base, exponent,
  }); // biome-ignore format: one node
  if (type.dimension === PLAIN) return made(PLAIN);
  const number = literalNumber(node.exponent);
  if (number === null) return type.dimension.si === PLAIN ? made(PLAIN) : failed(c, typeProblem('power-of-unit', exponent.at, {}));
  const exact = rationalFrom(number);
  const raised = exact === null ? null : raise(type.dimension, exact);
  if (raised === null || !hasAllowedExponents(raised)) return failed(c, typeProblem('power-fraction', exponent.at, {}));
  return made(raised);
}

/** The value of an exponent made of number literals alone (T6), else null. */
function literalNumber(node: ast.Expression): number | null {
  switch (node.kind) {
    case 'quantity':
      return node.unit === null ? node.value : null;
    case 'group':
      return literalNumber(node.inner);
    case 'negate': {
      const x = literalNumber(node.operand);
      return x === null ? null : -x;
    }
    case 'sum':
      return fold(
        node.terms.map((t) => [t.operand, (sum: number, x: number) => sum + t.sign * x]),
        0,
      );
    case 'product':
      return fold(
        node.factors.map((f) => [f.operand, (product: number, x: number) => (f.inverse ? product / x : product * x)]),
        1,
      );
    default:
      return null;
  }
}

function fold(parts: readonly (readonly [ast.Expression, (before: number, x: number) => number])[], start: number): number | null {
  let result = start;
  for (const [part, step] of parts) {
    const x = literalNumber(part);
    if (x === null) return null;
    result = step(result, x);
  }
  return result;
}

export function checkSquareRoot(c: Context, node: ast.SquareRoot): Checked {
  const operand = checkExpression(c, node.operand);
  const type = rootType(c, operand, '√');
  if (type === null) return unknown(node.at);
  return { kind: 'squareRoot', at: node.at, type: shaped(type, [operand]), display: 'auto', uncertain: operand.uncertain, operand };
}

/** The type of a square root: every exponent halved. Null where there is none (reported). */
export function rootType(c: Context, operand: Checked, name: string): QuantityType | null {
  const type = elementOf(operand.type);
  if (type.is === 'unknown') return null;
  if (type.is !== 'quantity') {
    c.problems.push(typeProblem('wants-number', operand.at, { doing: `\`${name}\` takes`, found: describeChecked(operand) }));
    return null;
  }
  if (type.point)
    return point(c, operand, 'a root of a point of temperature has no meaning; `T - absolute_zero` is in kelvins above zero', []);
  const halved = raise(type.dimension, { num: 1, den: 2 });
  if (!hasAllowedExponents(halved)) {
    c.problems.push(typeProblem('power-fraction', operand.at, {}));
    return null;
  }
  return type.zero ? NUMBER : quantity(halved);
}

/** Whether the exponents of a dimension can be counted on; where not it is reported. */
function allowed(c: Context, dimension: Dimension, at: Span): boolean {
  if (hasAllowedExponents(dimension)) return true;
  c.problems.push(typeProblem('exponents', at, {}));
  return false;
}
