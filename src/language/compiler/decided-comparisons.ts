// Comparisons decided: by the slack between the sides and its uncertainty (D1 to D3; JCGM 106, guarded acceptance).
import type { Relation } from '../ast.ts';
import type { Checked, CheckedComparison } from '../checked.ts';
import type { Combined } from '../uncertainty/combine.ts';
import { best, subtract, type Uncertain } from '../uncertainty/dual.ts';
import { compare, relates, same, TOLERANCE } from './comparisons.ts';
import type { Compiler } from './compiler.ts';
import { combinedOutcome, type Decide, type DecidedSides, type Decision, type Fresh, type Outcome, smaller } from './decision.ts';
import type { Evaluate, Frame, Run } from './frame.ts';

const NONE: Combined = { standard: 0, expanded: 0, k: null, nu: null };

export function compileComparisonDecision(k: Compiler, node: CheckedComparison, fresh: Fresh): Decide {
  const compiled = node.operands.map(k.compile);
  const links = node.relations.map((_, i) => link(node, i, compiled, fresh));
  if (links.length === 1) return links[0]!;
  return (f) => {
    const decided: Decision[] = [];
    for (const decide of links) {
      const decision = decide(f);
      if (decision.outcome === 'fails') return decision;
      decided.push(decision);
    }
    return combinedOutcome(decided, 'holds', smaller);
  };
}

/** One link of a chain; on lists every element, the worst one shown. */
function link(node: CheckedComparison, i: number, compiled: readonly Evaluate[], fresh: Fresh): Decide {
  const [left, right] = [compiled[i]!, compiled[i + 1]!];
  const { relation, at } = node.relations[i]!;
  const leftNode = node.operands[i]!;
  const rightNode = node.operands[i + 1]!;
  const limitIsLeft = i === 0 && (node.relations.length > 1 || (isFixed(leftNode) && !isFixed(rightNode)));
  const { of } = node;
  const rising = relation === '<' || relation === '<=';
  const sides = (left: unknown, right: unknown, slack: number, limit: number, combined: Combined, shifted: boolean): DecidedSides => {
    return { left, right, leftNode, rightNode, relation, at, of, slack, limit, limitIsLeft, combined, shifted };
  };
  const one = (a: unknown, b: unknown, f: Frame, element: number | null): Decision => {
    if (of === 'text' || of === 'yesno') {
      return { outcome: compare(of, relation, a, b) ? 'holds' : 'fails', sides: sides(a, b, Number.NaN, 0, NONE, false) };
    }
    if (typeof a === 'number' && typeof b === 'number') {
      const slack = slackOf(relation, same(a, b) ? 0 : rising ? b - a : a - b);
      return { outcome: relates(relation, a, b) ? 'holds' : 'fails', sides: sides(a, b, slack, limitIsLeft ? a : b, NONE, false) };
    }
    const pick = (v: unknown) => (element !== null && Array.isArray(v) ? v[element] : v) as Uncertain;
    const difference = (x: Uncertain, y: Uncertain) => (rising ? subtract(y, x) : subtract(x, y));
    const again = (run: Run) => {
      const inner = fresh(f, run);
      return difference(pick(left(inner)), pick(right(inner)));
    };
    const d = difference(a as Uncertain, b as Uncertain);
    const { combined, shifted } = f.run.spread(d, again);
    const [p, q] = [best(a as Uncertain), best(b as Uncertain)];
    const slack = slackOf(relation, same(p, q) ? 0 : best(d));
    const outcome = judge(relation, p, q, slack, combined.expanded);
    return { outcome, sides: sides(a, b, slack, best((limitIsLeft ? a : b) as Uncertain), combined, shifted) };
  };
  if (node.type.is !== 'list') return (f) => one(left(f), right(f), f, null);
  return (f) => {
    const a = left(f);
    const b = right(f);
    const count = Math.max(Array.isArray(a) ? a.length : 0, Array.isArray(b) ? b.length : 0);
    const decided = Array.from({ length: count }, (_, j) => one(Array.isArray(a) ? a[j] : a, Array.isArray(b) ? b[j] : b, f, j));
    const failed = decided.filter((d) => d.outcome === 'fails');
    if (failed.length > 0) return combinedOutcome(failed, 'fails', smaller);
    return combinedOutcome(decided, 'holds', smaller);
  };
}

/** Whether a side is written as numbers alone: `3 A`, `0.85 * 110 V`. Against a side that is not, it is the limit, wherever it stands. */
function isFixed(node: Checked): boolean {
  if (node.kind === 'product') return node.factors.every(({ operand }) => isFixed(operand));
  return node.kind === 'constant';
}

/** Positive where the relation holds: of an equality any difference is short. */
function slackOf(relation: Relation, difference: number): number {
  if (relation === '==' || relation === 'is') return difference === 0 ? 0 : -Math.abs(difference);
  return relation === '!=' || relation === 'is not' ? Math.abs(difference) : difference;
}

/** The outcome (D1, D3), with the tolerance of comparisons (P4): what is U but for 1e-9 of the sides is U. */
function judge(relation: Relation, a: number, b: number, slack: number, U: number): Outcome {
  if (U === 0) return relates(relation, a, b) ? 'holds' : 'fails';
  const tolerance = TOLERANCE * Math.max(Math.abs(a), Math.abs(b));
  switch (relation) {
    case '<=':
    case '>=':
      return slack - U >= -tolerance ? 'holds' : slack + U < -tolerance ? 'fails' : 'undecided';
    case '<':
    case '>':
      return slack - U > tolerance ? 'holds' : slack + U <= tolerance ? 'fails' : 'undecided';
    case '==':
    case 'is':
      return -slack > U + tolerance ? 'fails' : 'undecided';
    case '!=':
    case 'is not':
      return slack > U + tolerance ? 'holds' : 'undecided';
  }
}
