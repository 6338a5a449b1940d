// Decisions: holds, fails or undecided, by the slack between the sides and its uncertainty (D1 to D3; JCGM 106, guarded acceptance).
import type { Span } from '../../text/span.ts';
import type { Relation } from '../ast.ts';
import type { Checked, CheckedComparison } from '../checked.ts';
import type { Combined } from '../uncertainty/combine.ts';
import { best, subtract, type Uncertain } from '../uncertainty/dual.ts';
import { compare, relates, TOLERANCE } from './comparisons.ts';
import type { Compiler } from './compiler.ts';
import type { Evaluate, Frame, Run } from './frame.ts';

export type Outcome = 'holds' | 'fails' | 'undecided';

/** The comparison that decides: both sides with the slack, positive where it holds on the best values; SI, days for dates. */
export interface DecidedSides {
  readonly left: unknown;
  readonly right: unknown;
  readonly leftNode: Checked;
  readonly rightNode: Checked;
  readonly relation: Relation;
  /** Where the relation stands. */
  readonly at: Span;
  readonly of: CheckedComparison['of'];
  /** NaN where the sides have no difference (texts, yes/no). */
  readonly slack: number;
  /** The limit that the percent is of. */
  readonly limit: number;
  /** Whether the limit is the left side: in a chain it is the outer one (D2). */
  readonly limitIsLeft: boolean;
  readonly combined: Combined;
  readonly shifted: boolean;
}

export interface Decision {
  readonly outcome: Outcome;
  /** The comparison with the smallest margin; null where there is none. */
  readonly sides: DecidedSides | null;
}

export type Decide = (frame: Frame) => Decision;

const NONE: Combined = { standard: 0, expanded: 0, k: null, nu: null };

/** Compiles a condition for deciding. `fresh` clears what a frame has worked out, for computing anew with shifted inputs. */
export function compileDecision(k: Compiler, node: Checked, fresh: (frame: Frame, run: Run) => Frame): Decide {
  switch (node.kind) {
    case 'and':
    case 'or':
      return junction(
        node.kind,
        node.operands.map((o) => compileDecision(k, o, fresh)),
      );
    case 'not':
      return negation(compileDecision(k, node.operand, fresh));
    case 'comparison':
      return comparison(k, node, fresh);
    default:
      return yesNo(k.compile(node));
  }
}

/** Kleene's and/or, left to right, stopping where the rest can't change it (D2, P6). */
function junction(kind: 'and' | 'or', parts: readonly Decide[]): Decide {
  const stop: Outcome = kind === 'and' ? 'fails' : 'holds';
  return (f) => {
    const decided: Decision[] = [];
    for (const part of parts) {
      const decision = part(f);
      decided.push(decision);
      if (decision.outcome === stop) return decision;
    }
    return kind === 'and' ? combinedOutcome(decided, 'holds', smaller) : combinedOutcome(decided, 'fails', greater);
  };
}

/** Undecided where one is; the sides that decide among those that make the outcome: all must hold, or one must. */
function combinedOutcome(
  decided: readonly Decision[],
  otherwise: Outcome,
  deciding: (a: DecidedSides, b: DecidedSides) => DecidedSides,
): Decision {
  const undecided = decided.filter((d) => d.outcome === 'undecided');
  const sides = (undecided.length > 0 ? undecided : decided).flatMap((d) => d.sides ?? []);
  return {
    outcome: undecided.length > 0 ? 'undecided' : otherwise,
    sides: sides.length === 0 ? null : sides.reduce(deciding),
  };
}

const smaller = (a: DecidedSides, b: DecidedSides) => (relativeSlack(b) < relativeSlack(a) ? b : a);
const greater = (a: DecidedSides, b: DecidedSides) => (relativeSlack(b) > relativeSlack(a) ? b : a);

/** Slack (less `by`) against the limit, so that margins in different units can be ordered; no difference counts as none to spare last. */
export function relativeSlack({ slack, limit }: DecidedSides, by = 0): number {
  return Number.isNaN(slack) ? Number.POSITIVE_INFINITY : (slack - by) / Math.max(Math.abs(limit), Number.MIN_VALUE);
}

const OPPOSITE: Readonly<Record<Relation, Relation>> = {
  '<': '>=', '<=': '>', '>': '<=', '>=': '<', '==': '!=', '!=': '==', is: 'is not', 'is not': 'is',
}; // biome-ignore format: pairs

function negation(part: Decide): Decide {
  return (f) => {
    const { outcome, sides } = part(f);
    return {
      outcome: outcome === 'holds' ? 'fails' : outcome === 'fails' ? 'holds' : outcome,
      sides: sides === null ? null : { ...sides, slack: -sides.slack, relation: OPPOSITE[sides.relation] },
    };
  };
}

function yesNo(value: Evaluate): Decide {
  return (f) => {
    const found = value(f);
    const all = Array.isArray(found) ? found.every(Boolean) : found === true;
    return { outcome: all ? 'holds' : 'fails', sides: null };
  };
}

function comparison(k: Compiler, node: CheckedComparison, fresh: (frame: Frame, run: Run) => Frame): Decide {
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
function link(node: CheckedComparison, i: number, compiled: readonly Evaluate[], fresh: (frame: Frame, run: Run) => Frame): Decide {
  const [left, right] = [compiled[i]!, compiled[i + 1]!];
  const { relation, at } = node.relations[i]!;
  const leftNode = node.operands[i]!;
  const rightNode = node.operands[i + 1]!;
  const limitIsLeft = i === 0 && node.relations.length > 1;
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
      const slack = slackOf(relation, rising ? b - a : a - b);
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
    const slack = slackOf(relation, best(d));
    const outcome = judge(relation, best(a as Uncertain), best(b as Uncertain), slack, combined.expanded);
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
