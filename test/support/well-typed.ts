// Random expressions that are well-typed: every one has a value, or a division by zero or the like.
import fc from 'fast-check';

/** Exponents of volt, ampere and second. */
export type Exponents = readonly [volt: number, ampere: number, second: number];

export const PLAIN: Exponents = [0, 0, 0];

/** What every expression may use: entries, functions and a list. */
export const GIVEN = `
u_1 = 12.4 V
u_2 = -3 mV
u_3 = 0.4 kV
i_1 = 7.5 A
i_2 = 300 mA
t_1 = 20 ms
t_2 = 0.5 min
n_1 = 3
n_2 = -0.25
us = [1 V, 20 mV, 3 kV]
ns = [2, 0.5, -1]
twice(x: any) = x + x
square(x: any) = x * x
clamp(x: any, low: any, high: any) = min(max(x, low), high)
parallel(r: ohm, q: ohm): ohm = p / (r + q)
  with p = r * q
`;

const NAMES: readonly (readonly [string, Exponents])[] = [
  ['u_1', [1, 0, 0]], ['u_2', [1, 0, 0]], ['u_3', [1, 0, 0]], ['i_1', [0, 1, 0]], ['i_2', [0, 1, 0]], ['t_1', [0, 0, 1]],
  ['t_2', [0, 0, 1]], ['n_1', PLAIN], ['n_2', PLAIN],
]; // biome-ignore format: a table

const SYMBOLS: readonly (readonly string[])[] = [
  ['V', 'mV', 'kV', 'µV'],
  ['A', 'mA', 'kA'],
  ['s', 'ms', 'min', 'h'],
];

const NUMBERS = ['0.5', '1', '2', '3', '7.25', '12', '0.03', '480', '1e3', '2.5e-2'];

const same = (a: Exponents, b: Exponents) => a.every((x, i) => x === b[i]);
const minus = (a: Exponents, b: Exponents): Exponents => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const plus = (a: Exponents, b: Exponents): Exponents => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const times = (a: Exponents, by: number): Exponents => [a[0] * by, a[1] * by, a[2] * by];
const size = (a: Exponents) => Math.abs(a[0]) + Math.abs(a[1]) + Math.abs(a[2]);

/** Draws from fast-check's stream: the generator is written as a program. */
interface Draw {
  of<T>(options: readonly T[]): T;
  chance(percent: number): boolean;
}

/** A unit of this dimension, `''` for plain numbers. */
export function unitText(d: Exponents, symbols: (i: number) => string): string {
  const part = (i: number) => symbols(i) + (Math.abs(d[i]!) === 1 ? '' : `^${Math.abs(d[i]!)}`);
  const above = [0, 1, 2].filter((i) => d[i]! > 0).map(part);
  const below = [0, 1, 2].filter((i) => d[i]! < 0).map(part);
  if (below.length === 0) return above.join('·');
  const divisor = below.length === 1 ? below[0]! : `(${below.join('·')})`;
  return above.length === 0 ? `1/${divisor}` : `${above.join('·')}/${divisor}`;
}

function literal(d: Exponents, draw: Draw): string {
  const unit = unitText(d, (i) => draw.of(SYMBOLS[i]!));
  return unit === '' ? draw.of(NUMBERS) : `${draw.of(NUMBERS)} ${unit}`;
}

const SMALL: readonly Exponents[] = [PLAIN, [1, 0, 0], [0, 1, 0], [0, 0, 1], [1, -1, 0], [1, 1, 0], [0, 0, -1]];

/** An expression of this dimension; `simple` keeps to what a general calculator has: no `if`, lists or functions of the sheet. */
function quantity(d: Exponents, depth: number, draw: Draw, simple: boolean): string {
  const inner = (e: Exponents = d) => quantity(e, depth - 1, draw, simple);
  const atom = (e: Exponents = d) => `(${inner(e)})`;
  if (depth <= 0 || size(d) > 6) {
    const names = NAMES.filter(([, of]) => same(of, d));
    return names.length > 0 && draw.chance(60) ? draw.of(names)[0] : literal(d, draw);
  }
  const plain: readonly (() => string)[] = [
    () => `exp(${atom()} / (1 + abs(${atom()})))`,
    () => `ln(1 + abs(${inner()}))`,
    () => `${draw.of(['sin', 'cos', 'atan'])}(${inner()})`,
    () => `log10(0.5 + abs(${inner()}))`,
    () => `(1 + abs(${inner()}))^${draw.of(['0.5', '-2', '1.6', '(1/3)'])}`,
  ];
  const other = draw.of(SMALL);
  const general: readonly (() => string)[] = [
    () => `${atom()} + ${atom()}`,
    () => `${atom()} - ${atom()} + ${atom()}`,
    () => `${atom(other)} * ${atom(minus(d, other))}`,
    () => `${atom(plus(d, other))} / ${atom(other)}`,
    () => `${atom(other)} * ${atom(minus(d, other))} / ${atom(PLAIN)}`,
    () => `-${atom()}`,
    () => `abs(${inner()})`,
    () => `sqrt(${atom()}^2)`,
    () => (d.every((x) => x % 2 === 0) ? `${atom(times(d, 0.5))}^2` : `√(abs(${inner(times(d, 2))}))`),
    () => inner(),
  ];
  const own: readonly (() => string)[] = [
    () => `(if ${condition(depth - 1, draw)} then ${inner()} else ${inner()})`,
    () => `${draw.of(['min', 'max', 'sum', 'mean', 'hypot'])}(${inner()}, ${inner()})`,
    () => `clamp(${inner()}, ${inner()}, high = ${inner()})`,
    () => `twice(${inner()})`,
    () =>
      same(d, [1, -1, 0]) ? `parallel(q = ${inner()}, r = ${inner()})` : `square(${inner(other)}) * ${atom(minus(d, times(other, 2)))}`,
    () => `${draw.of(['sum', 'mean', 'max', 'min', 'hypot'])}(${list(d, depth - 1, draw)})`,
    () => `floor(${atom()} / ${literal(d, draw)}) * ${literal(d, draw)}`,
  ];
  const choices = [...general, ...(same(d, PLAIN) ? plain : []), ...(simple ? [] : own)];
  return draw.of(choices)();
}

/** A list of three of this dimension. */
function list(d: Exponents, depth: number, draw: Draw): string {
  const inner = () => quantity(d, depth - 1, draw, false);
  if (depth <= 0)
    return same(d, [1, 0, 0]) ? 'us' : same(d, PLAIN) ? 'ns' : `[${literal(d, draw)}, ${literal(d, draw)}, ${literal(d, draw)}]`;
  return draw.of([
    () => `[${inner()}, ${inner()}, ${inner()}]`,
    () => `(${list(d, depth - 1, draw)}) * (${list(PLAIN, depth - 1, draw)})`,
    () => `(${list(d, depth - 1, draw)}) + (${inner()})`,
    () => `-(${list(d, depth - 1, draw)})`,
    () => `twice(${list(d, depth - 1, draw)})`,
    () => `max(${list(d, depth - 1, draw)}, ${inner()})`,
  ])();
}

function condition(depth: number, draw: Draw): string {
  const d = draw.of(SMALL);
  const side = () => `(${quantity(d, depth - 1, draw, false)})`;
  if (depth <= 0) return draw.of([`u_1 > ${literal([1, 0, 0], draw)}`, 'n_1 < n_2', 'yes', 'not no']);
  return draw.of([
    () => `${side()} ${draw.of(['<', '<=', '>', '>='])} ${side()}`,
    () => `${side()} <= ${side()} < ${side()}`,
    () => `(${condition(depth - 1, draw)}) and (${condition(depth - 1, draw)})`,
    () => `(${condition(depth - 1, draw)}) or (${condition(depth - 1, draw)})`,
    () => `not (${condition(depth - 1, draw)})`,
  ])();
}

/** Draws by a seed (a linear congruential generator; Numerical Recipes, 7.1); a failing expression shrinks to a shallower one. */
function drawn<T>(make: (draw: Draw, depth: number) => T, depth: number): fc.Arbitrary<T> {
  return fc.tuple(fc.integer({ min: 1, max: depth }), fc.nat(2 ** 31 - 1)).map(([its, seed]) => {
    let state = seed;
    const take = (below: number) => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return Math.floor((state / 2 ** 32) * below);
    };
    return make({ of: (options) => options[take(options.length)]!, chance: (percent) => take(100) < percent }, its);
  });
}

/** A well-typed expression with its dimension. */
export const wellTyped = (depth: number, simple = false): fc.Arbitrary<{ readonly text: string; readonly dimension: Exponents }> =>
  drawn((draw, its) => {
    const dimension = draw.of(SMALL);
    return { text: quantity(dimension, its, draw, simple), dimension };
  }, depth);

/** A well-typed condition. */
export const wellTypedCondition = (depth: number): fc.Arbitrary<string> => drawn((draw, its) => condition(its, draw), depth);
