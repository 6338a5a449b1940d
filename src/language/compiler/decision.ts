// What a decision is, and how those of parts become one of the whole (D1, D2).
import type { Span } from '../../text/span.ts';
import type { Relation } from '../ast.ts';
import type { Checked, CheckedComparison } from '../checked.ts';
import type { Combined } from '../uncertainty/combine.ts';
import type { Frame, Run } from './frame.ts';

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
  /** Whether the limit is the left side: in a chain it is the outer one (D2), and else what is written as numbers alone. */
  readonly limitIsLeft: boolean;
  readonly combined: Combined;
  readonly shifted: boolean;
}

export interface Decision {
  readonly outcome: Outcome;
  /** The comparison with the smallest margin; null where there is none. */
  readonly sides: DecidedSides | null;
}

/** What was decided of an item's yes or no: one of an entry, one a row of a computed column, none where there is no value. */
export type Decisions = readonly (Decision | undefined)[];

export type Decide = (frame: Frame) => Decision;

/** The frame in another run, with what it has worked out forgotten: for computing anew with shifted inputs. */
export type Fresh = (frame: Frame, run: Run) => Frame;

/** Undecided where one is; the sides that decide among those that make the outcome: all must hold, or one must. */
export function combinedOutcome(
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

export const smaller = (a: DecidedSides, b: DecidedSides) => (relativeSlack(b) < relativeSlack(a) ? b : a);
export const greater = (a: DecidedSides, b: DecidedSides) => (relativeSlack(b) > relativeSlack(a) ? b : a);

/** Slack (less `by`) against the limit, so that margins in different units can be ordered; no difference counts as none to spare last. */
export function relativeSlack({ slack, limit }: DecidedSides, by = 0): number {
  return Number.isNaN(slack) ? Number.POSITIVE_INFINITY : (slack - by) / Math.max(Math.abs(limit), Number.MIN_VALUE);
}
