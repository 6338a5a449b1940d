// The requirement that most needs a look: what fails before what is open, and of two alike the one with less in hand.
import type { RequirementResult, SheetResult, Shown } from '../run/result.ts';

/** The worst requirement of a sheet, or of one block of it; null where there is none. */
export function worstRequirement({ cells }: SheetResult, block: number | null = null): RequirementResult | null {
  const requirements = cells
    .filter(({ cell }) => block === null || cell === block)
    .flatMap(({ statements }) => statements.filter((statement) => statement.kind === 'requirement'));
  return requirements.reduce<RequirementResult | null>((worst, one) => (worst === null || isWorse(one, worst) ? one : worst), null);
}

function isWorse(one: RequirementResult, other: RequirementResult): boolean {
  const ranks = rank(one) - rank(other);
  return ranks < 0 || (ranks === 0 && inHand(one) < inHand(other));
}

const RANKS = { fails: 0, 'not calculated': 1, undecided: 2, holds: 6 } as const;

/** A recommendation, or what someone has accepted, comes behind every requirement that does not hold. */
function rank({ status, force, statement }: RequirementResult): number {
  const milder = status !== 'holds' && (force === 'should' || statement.concession !== null) ? 3 : 0;
  return RANKS[status] + milder;
}

/** The slack as a fraction of the limit, so that amperes and volts compare; negative where it fails. */
function inHand({ sides }: RequirementResult): number {
  if (sides === null) return 0;
  const limit = size(sides.limitIsLeft ? sides.left : sides.right);
  return limit === 0 ? Math.sign(sides.slack) : sides.slack / limit;
}

function size(shown: Shown): number {
  return shown.kind === 'quantity' ? Math.abs(shown.si) : 0;
}
