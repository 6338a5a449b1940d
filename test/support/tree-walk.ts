// An independent, slow answer: walks the syntax tree with quantity objects that carry their dimension and a bound on rounding errors.
import type { Expression, FunctionDefinition, QuantityLiteral, Statement } from '../../src/language/ast.ts';
import { parse } from '../../src/language/parser.ts';

/** A quantity: SI value, exponents by base symbol, and how far the value may be off by rounding. */
export interface Quantity {
  readonly value: number;
  readonly powers: Readonly<Record<string, number>>;
  readonly error: number;
}

export type Value = Quantity | boolean | readonly Value[];

/** Raised where there is no value: division by zero, overflow; and where rounding could turn a comparison. */
export class NoValue extends Error {}

type Scope = ReadonlyMap<string, () => Value>;

interface Program {
  readonly functions: ReadonlyMap<string, FunctionDefinition>;
  readonly names: Map<string, () => Value>;
}

/** The value of the entry `name` in a block. */
export function walkEntry(code: string, name: string): Value {
  const { statements } = parse(code);
  const functions = new Map(statements.flatMap((s) => (s.kind === 'function' ? [[s.name.name, s] as const] : [])));
  const program: Program = { functions, names: new Map() };
  for (const s of statements) define(s, program);
  return program.names.get(name)!();
}

function define(s: Statement, program: Program): void {
  if (s.kind === 'entry') program.names.set(s.name.name, () => walk(s.value, new Map(), program));
}

const EPS = 2 ** -51;
const made = (value: number, powers: Quantity['powers'], error: number): Quantity => {
  if (!Number.isFinite(value)) throw new NoValue('too large');
  return { value, powers, error: error + EPS * Math.abs(value) };
};
const plain = (value: number, error: number) => made(value, {}, error);

function asQuantity(v: Value): Quantity {
  if (typeof v === 'boolean' || Array.isArray(v)) throw new Error('a quantity is due');
  return v as Quantity;
}

function asYesNo(v: Value): boolean {
  if (typeof v !== 'boolean') throw new Error('a yes or no is due');
  return v;
}

function sameDimension(a: Quantity, b: Quantity): void {
  const keys = new Set([...Object.keys(a.powers), ...Object.keys(b.powers)]);
  for (const key of keys) {
    const isZero = a.value === 0 || b.value === 0;
    if (Math.abs((a.powers[key] ?? 0) - (b.powers[key] ?? 0)) > 1e-9 && !isZero) throw new Error(`dimensions differ in ${key}`);
  }
}

function withPowers(a: Quantity['powers'], b: Quantity['powers'], times: number): Quantity['powers'] {
  const sum: Record<string, number> = { ...a };
  for (const [key, power] of Object.entries(b)) sum[key] = (sum[key] ?? 0) + times * power;
  return sum;
}

function literal(node: QuantityLiteral): Quantity {
  const parts = node.unit?.parts ?? [];
  let size = Number(node.number === 'pi' ? Math.PI : node.number);
  let powers: Quantity['powers'] = {};
  for (const { symbol, power } of parts) {
    const exponent = power.num / power.den;
    size *= (symbol.factor * 10 ** symbol.decimal) ** exponent;
    const own = Object.fromEntries(symbol.dimension.exponents.map((e, i) => [`${i}`, e.num / e.den]));
    powers = withPowers(powers, own, exponent);
  }
  return made(size, powers, 4 * EPS * Math.abs(size));
}

/** The same on every element where one is a list. */
function each(values: readonly Value[], of: (...one: Quantity[]) => Quantity): Value {
  const lists = values.filter((v): v is readonly Value[] => Array.isArray(v));
  if (lists.length === 0) return of(...values.map(asQuantity));
  return lists[0]!.map((_, i) =>
    each(
      values.map((v) => (Array.isArray(v) ? (v[i] as Value) : v)),
      of,
    ),
  );
}

function add(a: Quantity, b: Quantity): Quantity {
  sameDimension(a, b);
  return made(a.value + b.value, a.value === 0 ? b.powers : a.powers, a.error + b.error);
}
const negate = (a: Quantity): Quantity => ({ ...a, value: -a.value });
const multiply = (a: Quantity, b: Quantity) =>
  made(a.value * b.value, withPowers(a.powers, b.powers, 1), a.error * Math.abs(b.value) + b.error * Math.abs(a.value) + a.error * b.error);

function divide(a: Quantity, b: Quantity): Quantity {
  if (Math.abs(b.value) <= b.error) throw new NoValue('division by zero, or close to it');
  const value = a.value / b.value;
  return made(value, withPowers(a.powers, b.powers, -1), (a.error + Math.abs(value) * b.error) / (Math.abs(b.value) - b.error));
}

function raise(a: Quantity, exponent: number): Quantity {
  if (a.value < 0 && !Number.isInteger(exponent)) throw new NoValue('root of a negative');
  if (a.value === 0 && exponent < 0) throw new NoValue('division by zero');
  const value = a.value ** exponent;
  const relative = a.value === 0 ? 0 : Math.abs(exponent) * (a.error / Math.abs(a.value));
  if (relative > 0.01) throw new NoValue('nothing left of it');
  const powers = Object.fromEntries(Object.entries(a.powers).map(([key, power]) => [key, power * exponent]));
  return made(
    value,
    powers,
    2 * relative * Math.abs(value) + (a.value === 0 ? a.error ** Math.min(1, exponent) : 0) + 8 * EPS * Math.abs(value),
  );
}

/** A smooth function with the greatest slope that it has near x. */
const smooth = (f: (x: number) => number, slope: (x: number) => number) => (a: Quantity) =>
  plain(f(a.value), Math.abs(slope(a.value)) * a.error * 2 + 8 * EPS * Math.abs(f(a.value)) + EPS);

const pick = (better: (a: number, b: number) => boolean) => (values: readonly Quantity[]) => {
  const chosen = values.reduce((a, b) => {
    sameDimension(a, b);
    return better(b.value, a.value) ? b : a;
  });
  return { ...chosen, powers: values.find((v) => v.value !== 0)?.powers ?? chosen.powers, error: Math.max(...values.map((v) => v.error)) };
};
const sum = (values: readonly Quantity[]) => values.reduce(add);
const mean = (values: readonly Quantity[]) => divide(sum(values), plain(values.length, 0));
const root = (a: Quantity) => raise(a, 0.5);

function whole(a: Quantity): Quantity {
  const settled = Math.abs(a.value - Math.round(a.value)) <= 1e-9 * Math.max(1, Math.abs(a.value));
  if (settled || Math.abs(a.value - Math.round(a.value)) <= a.error + 2e-9 * Math.abs(a.value)) throw new NoValue('on a step');
  return plain(Math.floor(a.value), 0);
}

const SINGLE: Readonly<Record<string, (a: Quantity) => Quantity>> = {
  sqrt: root,
  abs: (a) => ({ ...a, value: Math.abs(a.value) }),
  exp: smooth(Math.exp, Math.exp),
  ln: smooth(Math.log, (x) => 1 / x),
  log10: smooth(Math.log10, (x) => 1 / x),
  sin: smooth(Math.sin, () => 1),
  cos: smooth(Math.cos, () => 1),
  atan: smooth(Math.atan, () => 1),
  floor: whole,
};

const OVER: Readonly<Record<string, (values: readonly Quantity[]) => Quantity>> = {
  min: pick((a, b) => a < b),
  max: pick((a, b) => a > b),
  sum,
  mean,
  hypot: (values) => (values.every((v) => v.value === 0) ? values[0]! : root(sum(values.map((v) => multiply(v, v))))),
};

function walk(node: Expression, scope: Scope, program: Program): Value {
  const go = (e: Expression) => walk(e, scope, program);
  switch (node.kind) {
    case 'quantity':
      return literal(node);
    case 'yesno':
      return node.value;
    case 'name':
      return (scope.get(node.name) ?? program.names.get(node.name))!();
    case 'group':
      return go(node.inner);
    case 'list':
      return node.items.map(go);
    case 'negate':
      return each([go(node.operand)], negate);
    case 'squareRoot':
      return each([go(node.operand)], root);
    case 'sum':
      return node.terms.map((t) => (t.sign === 1 ? go(t.operand) : each([go(t.operand)], negate))).reduce((a, b) => each([a, b], add));
    case 'product':
      return node.factors
        .map((f) => ({ inverse: f.inverse, value: go(f.operand) }))
        .reduce<Value | null>((a, f) => (a === null ? f.value : each([a, f.value], f.inverse ? divide : multiply)), null)!;
    case 'power': {
      const exponent = asQuantity(go(node.exponent)).value;
      return each([go(node.base)], (base) => raise(base, exponent));
    }
    case 'if':
      return asYesNo(go(node.condition)) ? go(node.then) : go(node.otherwise);
    case 'and':
      return node.operands.every((o) => asYesNo(go(o)));
    case 'or':
      return node.operands.some((o) => asYesNo(go(o)));
    case 'not':
      return !asYesNo(go(node.operand));
    case 'comparison': {
      const operands = node.operands.map((o) => asQuantity(go(o)));
      return node.relations.every(({ relation }, i) => compare(relation, operands[i]!, operands[i + 1]!));
    }
    case 'call':
      return call(node, scope, program);
    default:
      throw new Error(`${node.kind} is not walked`);
  }
}

function compare(relation: string, a: Quantity, b: Quantity): boolean {
  sameDimension(a, b);
  const difference = a.value - b.value;
  const edge = 1e-9 * Math.max(Math.abs(a.value), Math.abs(b.value));
  if (Math.abs(Math.abs(difference) - edge) <= a.error + b.error + EPS * edge) throw new NoValue('too close to tell');
  const equal = Math.abs(difference) <= edge;
  if (equal) return relation.includes('=');
  return relation.startsWith('<') ? difference < 0 : difference > 0;
}

function call(node: Extract<Expression, { kind: 'call' }>, scope: Scope, program: Program): Value {
  const name = node.callee.name;
  const args = node.args.map((a) => ({ name: a.name?.name ?? null, value: walk(a.value, scope, program) }));
  const definition = program.functions.get(name);
  if (definition !== undefined) return callOwn(definition, args, program);
  const values = args.map((a) => a.value);
  if (Object.hasOwn(SINGLE, name)) return each(values, SINGLE[name]!);
  const over = OVER[name]!;
  if (values.length === 1 && Array.isArray(values[0])) return over((values[0] as readonly Value[]).map(asQuantity));
  return each(values, (...all) => over(all));
}

/** A call of a function of the sheet: once an element where an argument is a list; its locals where they are used. */
function callOwn(definition: FunctionDefinition, args: readonly { name: string | null; value: Value }[], program: Program): Value {
  const parameters = definition.parameters.map((p) => p.name.name);
  const placed = parameters.map((p, i) => args.find((a) => a.name === p)?.value ?? args[i]!.value);
  const length = placed.find((v): v is readonly Value[] => Array.isArray(v))?.length;
  const one = (values: readonly Value[]): Value => {
    const inner = new Map<string, () => Value>(parameters.map((p, i) => [p, () => values[i]!]));
    for (const local of definition.clauses.locals) inner.set(local.name.name, () => walk(local.value, inner, program));
    return walk(definition.body, inner, program);
  };
  if (length === undefined) return one(placed);
  return Array.from({ length }, (_, i) => one(placed.map((v) => (Array.isArray(v) ? (v[i] as Value) : v))));
}
