// `root of g over x from a to b`: scanned for changes of sign, bisected, with the derivative of the implicit function (U4).
import { dateText } from '../../text/date.ts';
import { numberText } from '../../units/number-text.ts';
import { fromSI } from '../../units/quantity.ts';
import type { CheckedRoot } from '../checked.ts';
import { Fault, raise } from '../fault.ts';
import { valueProblem } from '../problems/values.ts';
import { best, chain, Dual, standard, type Uncertain } from '../uncertainty/dual.ts';
import { Input } from '../uncertainty/input.ts';
import type { Compiler } from './compiler.ts';
import type { Evaluate, Frame } from './frame.ts';

/** Equal intervals in which the range is scanned. */
const SCAN = 200;
/** A change of sign with |g| above this part of its largest sample is a jump. */
const JUMP = 1e-6;
/** Roots that are told by their places. */
const PLACES_SHOWN = 4;

export function compileRoot(k: Compiler, node: CheckedRoot): Evaluate {
  const equation = k.compile(node.equation);
  const from = k.compile(node.from);
  const to = k.compile(node.to);
  const shown = (x: number) => textOf(x, node);
  return (f) => {
    const a = best(from(f) as Uncertain);
    const b = best(to(f) as Uncertain);
    const variable = node.name;
    if (!(a < b)) return raise(valueProblem('empty-range', node.at, { variable, from: shown(a), to: shown(b) }));
    const value = (x: number) => best(equationAt(equation, node, x, f));
    const g = (x: number) => defined(value, x, variable, shown);
    const { brackets, largest, first, last } = scan(g, a, b);
    if (brackets.length === 0) {
      return raise(valueProblem('no-root', node.at, { variable, from: shown(a), to: shown(b), left: signed(first), right: signed(last) }));
    }
    if (brackets.length > PLACES_SHOWN) return raise(valueProblem('several-roots', node.at, manyRoots(brackets, shown)));
    const places = brackets.map(([x0, x1]) => (x0 === x1 ? x0 : bisect(value, x0, x1)));
    if (places.length > 1) {
      return raise(valueProblem('several-roots', node.at, { count: `${places.length}`, places: places.map(shown).join(' and ') }));
    }
    const x = places[0]!;
    if (isJump(value, x, largest)) return raise(valueProblem('jump-no-root', node.at, { variable, place: shown(x) }));
    return node.uncertain ? implicit(equation, node, x, b - a, f) : x;
  };
}

function equationAt(equation: Evaluate, node: CheckedRoot, x: Uncertain, f: Frame): Uncertain {
  f.locals[node.variable] = x;
  for (const index of node.locals) f.locals[index] = undefined;
  return equation(f) as Uncertain;
}

/** The value at a sample; what is wrong there is told with its place. */
function defined(value: (x: number) => number, x: number, variable: string, shown: (x: number) => string): number {
  try {
    return value(x);
  } catch (fault) {
    if (!(fault instanceof Fault) || fault.problem === null) throw fault;
    const { at, message, places } = fault.problem;
    return raise(valueProblem('undefined-at', at, { where: `\`${variable}\` = ${shown(x)}`, message }, places));
  }
}

function manyRoots(brackets: readonly (readonly [number, number])[], shown: (x: number) => string) {
  const first = brackets.slice(0, PLACES_SHOWN).map(([x]) => shown(x));
  return { count: brackets.length > SCAN ? 'more than 200' : `${brackets.length}`, places: `${first.join(', ')}, …` };
}

/** Whether the sign changes without a root: the value there is far from zero, or there is none. */
function isJump(value: (x: number) => number, x: number, largest: number): boolean {
  const there = valueOrNothing(value, x);
  return there === null || Math.abs(there) > JUMP * largest;
}

/** The intervals over which the sign changes; an exact zero is one of its own. */
function scan(g: (x: number) => number, a: number, b: number) {
  const brackets: [number, number][] = [];
  let before = g(a);
  const first = before;
  let largest = Math.abs(before);
  if (before === 0) brackets.push([a, a]);
  for (let i = 1; i <= SCAN; i++) {
    const x0 = a + ((b - a) * (i - 1)) / SCAN;
    const x1 = i === SCAN ? b : a + ((b - a) * i) / SCAN;
    const now = g(x1);
    largest = Math.max(largest, Math.abs(now));
    if (now === 0) brackets.push([x1, x1]);
    else if (before !== 0 && before > 0 !== now > 0) brackets.push([x0, x1]);
    before = now;
  }
  return { brackets, largest, first, last: before };
}

/** Halves the interval until its ends are adjacent numbers; the end with the smaller |g|, or the first place without value. */
function bisect(g: (x: number) => number, from: number, to: number): number {
  let a = from;
  let b = to;
  let ga = g(a);
  let gb = g(b);
  for (;;) {
    const middle = a + (b - a) / 2;
    if (!(middle > a && middle < b)) return Math.abs(ga) <= Math.abs(gb) ? a : b;
    const gm = valueOrNothing(g, middle);
    if (gm === 0 || gm === null) return middle;
    if (gm > 0 === ga > 0) [a, ga] = [middle, gm];
    else [b, gb] = [middle, gm];
  }
}

function valueOrNothing(g: (x: number) => number, x: number): number | null {
  try {
    return g(x);
  } catch (fault) {
    if (fault instanceof Fault) return null;
    throw fault;
  }
}

/**
 * dx/dp = −(∂g/∂p)/(∂g/∂x): the unknown takes part as one more input. Where the curve is flat within the uncertainty of the root,
 * no derivative serves (U6).
 */
function implicit(equation: Evaluate, node: CheckedRoot, x: number, range: number, f: Frame): Uncertain {
  const { slope, rest } = slopeAt(equation, node, x, f);
  if (rest === null) return x;
  const reach = standard(rest) / Math.abs(slope);
  if (slope === 0 || !(reach < range) || !isSteady(equation, node, x, reach, slope, f)) {
    return new Dual(
      x,
      rest.inputs,
      rest.slopes.map(() => 0),
      standard(rest) > 0 || rest.kink,
    );
  }
  return chain(rest, x, -1 / slope);
}

/** ∂g/∂x at x, and x with the slopes of g by all inputs; null where g is exact. */
function slopeAt(equation: Evaluate, node: CheckedRoot, x: number, f: Frame): { slope: number; rest: Dual | null } {
  const unknown = new Input('', f.run.item, node.at.start, x, { components: [], limits: null });
  const g = equationAt(equation, node, unknown.current, f);
  if (typeof g === 'number') return { slope: 0, rest: null };
  const place = g.inputs.indexOf(unknown);
  const others = (_: unknown, i: number) => i !== place;
  return { slope: place === -1 ? 0 : g.slopes[place]!, rest: new Dual(x, g.inputs.filter(others), g.slopes.filter(others), g.kink) };
}

/** Whether the curve keeps at least half its slope as far as the uncertainty of the root reaches. */
function isSteady(equation: Evaluate, node: CheckedRoot, x: number, reach: number, slope: number, f: Frame): boolean {
  if (reach === 0) return true;
  try {
    return [x - reach, x + reach].every((there) => slopeAt(equation, node, there, f).slope / slope >= 0.5);
  } catch (fault) {
    if (fault instanceof Fault) return false;
    throw fault;
  }
}

function textOf(x: number, node: CheckedRoot): string {
  if (node.type.is === 'date') return dateText(x);
  const unit = node.display === 'auto' ? null : node.display;
  const number = numberText(fromSI(x, unit), 4);
  return unit === null ? number : `${number} ${unit.text}`;
}

const signed = (g: number) => (g > 0 ? 'above zero' : g < 0 ? 'below zero' : 'zero');
