// Sums, products, powers: plain closures where all is exact, with derivatives where something is uncertain, over lists where one is.
import type { Span } from '../../text/span.ts';
import type { Checked, CheckedNegate, CheckedPower, CheckedProduct, CheckedRootSign, CheckedSum } from '../checked.ts';
import { raise } from '../fault.ts';
import { ln, power } from '../functions/elementary.ts';
import { squareRoot } from '../functions/powers.ts';
import { valueProblem } from '../problems/values.ts';
import * as dual from '../uncertainty/dual.ts';
import { best, type Uncertain } from '../uncertainty/dual.ts';
import { broadcast } from './broadcast.ts';
import { type Compiler, compileNumber } from './compiler.ts';
import type { Evaluate } from './frame.ts';

/** Evaluates the operands from left to right, then works on their values. */
function gathering(operands: readonly Evaluate[], then: (values: readonly unknown[]) => Uncertain): Evaluate<Uncertain> {
  const [a, b, c, d] = operands as [Evaluate, Evaluate, Evaluate, Evaluate];
  if (operands.length === 2) return (f) => then([a(f), b(f)]);
  if (operands.length === 3) return (f) => then([a(f), b(f), c(f)]);
  if (operands.length === 4) return (f) => then([a(f), b(f), c(f), d(f)]);
  return (f) => then(operands.map((o) => o(f)));
}

const isList = (node: Checked) => node.type.is === 'list';

export function compileNegate(k: Compiler, node: CheckedNegate): Evaluate {
  const operand = k.compile(node.operand);
  if (isList(node)) return broadcast([operand], [true], node.at, ([x]) => dual.negate(x as Uncertain));
  if (node.uncertain) return (f) => dual.negate(operand(f) as Uncertain);
  return (f) => -(operand(f) as number);
}

// ------------------------------------------------------------------------------------------------------------ sums

export function compileSum(k: Compiler, node: CheckedSum): Evaluate {
  const operands = node.terms.map((t) => t.operand);
  const signs = node.terms.map((t, i) => t.sign * (node.dates?.terms[i] ?? 1));
  const result = node.dates?.result ?? 1;
  if (node.uncertain || isList(node)) {
    const add = (values: readonly unknown[]) => addAll(values as readonly Uncertain[], signs, result);
    const compiled = operands.map(k.compile);
    if (isList(node)) return broadcast(compiled, operands.map(isList), node.at, add);
    return gathering(compiled, add);
  }
  if (node.dates !== null) {
    const compiled = operands.map((o) => compileNumber(k, o));
    return (f) =>
      addAll(
        compiled.map((o) => o(f)),
        signs,
        result,
      );
  }
  return plainSum(
    operands.map((o) => compileNumber(k, o)),
    signs,
  );
}

/** Left to right (F5). */
function addAll(values: readonly Uncertain[], signs: readonly number[], scale: number): Uncertain {
  let value = 0;
  for (let i = 0; i < values.length; i++) value += best(values[i]!) * signs[i]!;
  if (values.length === 2 && scale === 1) return dual.join(value, values[0]!, signs[0]!, values[1]!, signs[1]!);
  return dual.combination(
    value * scale,
    values,
    signs.map((s) => s * scale),
  );
}

function plainSum(terms: readonly Evaluate<number>[], signs: readonly number[]): Evaluate<number> {
  const [a, b] = terms as [Evaluate<number>, Evaluate<number>];
  if (terms.length === 2) return signs[1] === 1 ? (f) => a(f) + b(f) : (f) => a(f) - b(f);
  return (f) => {
    let sum = 0;
    for (let i = 0; i < terms.length; i++) sum += signs[i]! * terms[i]!(f);
    return sum;
  };
}

// -------------------------------------------------------------------------------------------------------- products

export function compileProduct(k: Compiler, node: CheckedProduct): Evaluate {
  const operands = node.factors.map((x) => x.operand);
  const inverse = node.factors.map((x) => x.inverse);
  const places = operands.map((o) => o.at);
  if (node.uncertain || isList(node)) {
    const multiply = (values: readonly unknown[]) => multiplyAll(values as readonly Uncertain[], inverse, places);
    const compiled = operands.map(k.compile);
    if (isList(node)) return broadcast(compiled, operands.map(isList), node.at, multiply);
    return gathering(compiled, multiply);
  }
  return plainProduct(
    operands.map((o) => compileNumber(k, o)),
    inverse,
    places,
  );
}

/** All factors at once: ∂/∂xᵢ is the product over xᵢ, with the other sign behind a division. */
function multiplyAll(values: readonly Uncertain[], inverse: readonly boolean[], places: readonly Span[]): Uncertain {
  let product = 1;
  let zero = false;
  let first: dual.Dual | null = null;
  let squared = false;
  let second: dual.Dual | null = null;
  let byFirst = 0;
  let bySecond = 0;
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    const v = values[i]!;
    const x = typeof v === 'number' ? v : v.value;
    if (inverse[i]) product /= checkDivisor(x, places[i]!);
    else product = i === 0 ? x : product * x;
    zero ||= x === 0;
    if (typeof v === 'number') continue;
    squared ||= v === first;
    count++;
    const by = (inverse[i] ? -1 : 1) / x;
    if (count === 1) {
      first = v;
      byFirst = by;
    } else if (count === 2) {
      second = v;
      bySecond = by;
    }
  }
  if (squared && isFlat(first!)) return dual.kinked(multiplyInTurn(values, inverse));
  if (zero) return multiplyInTurn(values, inverse);
  if (count === 1) return dual.chain(first!, product, product * byFirst);
  if (count === 2) return dual.join(product, first!, product * byFirst, second!, product * bySecond);
  const weights = values.map((v, i) => (typeof v === 'number' ? 0 : (inverse[i] ? -product : product) / v.value));
  return dual.combination(product, values, weights);
}

/** Whether zero lies within the standard uncertainty: there a square has no slope that serves. */
function isFlat(x: Uncertain): boolean {
  const u = dual.standard(x);
  return u > 0 && Math.abs(best(x)) <= u;
}

/** One factor after the other, where one of them is 0. */
function multiplyInTurn(values: readonly Uncertain[], inverse: readonly boolean[]): Uncertain {
  return values.reduce((product, x, i) => (inverse[i] ? dual.divide(product, x) : dual.multiply(product, x)));
}

function plainProduct(factors: readonly Evaluate<number>[], inverse: readonly boolean[], places: readonly Span[]): Evaluate<number> {
  const [a, b, c] = factors as [Evaluate<number>, Evaluate<number>, Evaluate<number>];
  if (factors.length === 2) {
    if (!inverse[1]) return (f) => a(f) * b(f);
    const at = places[1]!;
    return (f) => a(f) / checkDivisor(b(f), at);
  }
  if (!inverse.includes(true)) {
    if (factors.length === 3) return (f) => a(f) * b(f) * c(f);
    if (factors.length === 4) {
      const d = factors[3]!;
      return (f) => a(f) * b(f) * c(f) * d(f);
    }
  }
  return (f) => {
    let product = factors[0]!(f);
    for (let i = 1; i < factors.length; i++) {
      const x = factors[i]!(f);
      product = inverse[i] ? product / checkDivisor(x, places[i]!) : product * x;
    }
    return product;
  };
}

function checkDivisor(x: number, at: Span): number {
  if (x === 0) raise(valueProblem('divides-by-zero', at, {}));
  if (x - x !== 0) raise(valueProblem('overflow', at, {}));
  return x;
}

// ---------------------------------------------------------------------------------------------------------- powers

export function compilePower(k: Compiler, node: CheckedPower): Evaluate {
  const { base, exponent, at } = node;
  if (node.uncertain || isList(node)) {
    const raised = ([x, y]: readonly unknown[]) => powerOf(x as Uncertain, y as Uncertain, at);
    const compiled = [base, exponent].map(k.compile);
    if (isList(node)) return broadcast(compiled, [base, exponent].map(isList), at, raised);
    return (f) => raised(compiled.map((o) => o(f)));
  }
  const x = compileNumber(k, base);
  if (exponent.kind === 'constant' && exponent.value === 2) {
    return (f) => {
      const a = x(f);
      return a * a;
    };
  }
  const y = compileNumber(k, exponent);
  return (f) => plainPower(x(f), y(f), at);
}

function plainPower(x: number, y: number, at: Span): number {
  if (x < 0 && !Number.isInteger(y)) raise(valueProblem('power-undefined', at, {}));
  if (x === 0 && y < 0) raise(valueProblem('divides-by-zero', at, {}));
  return power(x, y);
}

function powerOf(x: Uncertain, y: Uncertain, at: Span): Uncertain {
  const a = best(x);
  const b = best(y);
  const value = plainPower(a, b, at);
  const byBase = b === 0 ? 0 : b === 1 ? 1 : b === 2 ? 2 * a : b * power(a, b - 1);
  const kink = (b > 1 || !Number.isInteger(b)) && isFlat(x);
  if (typeof y === 'number') return dual.join(value, x, byBase, y, 0, kink);
  return dual.join(value, x, byBase, y, a > 0 ? value * ln(a) : 0, kink);
}

export function compileSquareRoot(k: Compiler, node: CheckedRootSign): Evaluate {
  const site = { at: node.at, name: '√', args: [node.operand], again: null };
  const operand = k.compile(node.operand);
  const root = squareRoot.dual(site);
  if (isList(node)) return broadcast([operand], [true], node.at, ([x], f) => root([x as Uncertain], f));
  if (node.uncertain) return (f) => root([operand(f) as Uncertain], f);
  const plain = squareRoot.plain(site);
  return (f) => plain(operand(f) as number);
}
