// Comparisons by the trichotomy of P4 and P5, and what is undecided within the uncertainty (D4).
import type { Relation } from '../ast.ts';
import type { Checked, CheckedComparison } from '../checked.ts';
import { raise } from '../fault.ts';
import { valueProblem } from '../problems/values.ts';
import { combined } from '../uncertainty/combine.ts';
import { best, subtract, type Uncertain } from '../uncertainty/dual.ts';
import { broadcast } from './broadcast.ts';
import type { Compiler } from './compiler.ts';
import type { Evaluate, Frame } from './frame.ts';

/** Relative tolerance of equality (P4). */
export const TOLERANCE = 1e-9;

/** a == b within the tolerance. */
export function same(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= TOLERANCE * Math.max(Math.abs(a), Math.abs(b));
}

const RELATIONS: Readonly<Record<Relation, (a: number, b: number) => boolean>> = {
  '<': (a, b) => a < b && !same(a, b),
  '<=': (a, b) => a < b || same(a, b),
  '>': (a, b) => a > b && !same(a, b),
  '>=': (a, b) => a > b || same(a, b),
  '==': same,
  is: same,
  '!=': (a, b) => !same(a, b),
  'is not': (a, b) => !same(a, b),
};

/** Whether a relation holds between two numbers. */
export function relates(relation: Relation, a: number, b: number): boolean {
  return RELATIONS[relation](a, b);
}

/** Texts are equal after NFC, trimmed, with runs of spaces as one (P5). */
export function sameText(a: string, b: string): boolean {
  return a === b || settle(a) === settle(b);
}

const settle = (text: string) => text.normalize('NFC').trim().replace(/\s+/g, ' ');

/** The relation between two values of one kind. */
export function compare(of: CheckedComparison['of'], relation: Relation, a: unknown, b: unknown): boolean {
  if (of === 'quantity' || of === 'date') return relates(relation, a as number, b as number);
  const equal = of === 'text' ? sameText(a as string, b as string) : a === b;
  return relation === '!=' || relation === 'is not' ? !equal : equal;
}

export function compileComparison(k: Compiler, node: CheckedComparison): Evaluate {
  const { operands, relations, of } = node;
  const compiled = operands.map(k.compile);
  const uncertainNumbers = node.uncertain && of === 'quantity';
  const chain = (values: readonly unknown[], frame: Frame) => {
    for (let i = 0; i < relations.length; i++) {
      const { relation } = relations[i]!;
      const [a, b] = [values[i], values[i + 1]];
      if (of === 'quantity') checkFinite(a as Uncertain, b as Uncertain, node);
      if (uncertainNumbers && !frame.run.shifting) noteUndecided(node, a as Uncertain, b as Uncertain, frame);
      if (!compare(of, relation, uncertainNumbers ? best(a as Uncertain) : a, uncertainNumbers ? best(b as Uncertain) : b)) return false;
    }
    return true;
  };
  if (node.type.is === 'list')
    return broadcast(
      compiled,
      operands.map((o) => o.type.is === 'list'),
      node.at,
      chain,
    );
  if (compiled.length === 2 && !node.uncertain && of === 'quantity')
    return plainComparison(compiled as [Evaluate<number>, Evaluate<number>], node);
  return (f) =>
    chain(
      compiled.map((o) => o(f)),
      f,
    );
}

function plainComparison([left, right]: readonly [Evaluate<number>, Evaluate<number>], node: CheckedComparison): Evaluate<boolean> {
  const holds = RELATIONS[node.relations[0]!.relation];
  return (f) => {
    const a = left(f);
    const b = right(f);
    checkFinite(a, b, node);
    return holds(a, b);
  };
}

function checkFinite(a: Uncertain, b: Uncertain, node: Checked): void {
  if (!Number.isFinite(best(a)) || !Number.isFinite(best(b))) raise(valueProblem('overflow', node.at, {}));
}

function noteUndecided(node: CheckedComparison, a: Uncertain, b: Uncertain, frame: Frame): void {
  const difference = subtract(a, b);
  const { expanded } = combined(difference);
  if (expanded > 0 && Math.abs(best(difference)) <= expanded) {
    frame.run.notes.push(valueProblem('undecided', node.at, {}));
  }
}
