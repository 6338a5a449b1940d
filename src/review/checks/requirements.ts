// Requirements that do not hold, and concessions that have run out.

import { marginWords } from '../../run/margin-words.ts';
import { sidesText } from '../../run/record.ts';
import type { RequirementResult } from '../../run/result.ts';
import { dateText } from '../../text/date.ts';
import { type Check, inFile, statements } from '../check.ts';
import { type Finding, finding, type Level } from '../finding.ts';

const CODES = { fails: 'requirement-fails', undecided: 'requirement-undecided', 'not calculated': 'requirement-not-calculated' } as const;

/** A `shall` that does not hold needs a person, unless a concession accepts it on that day; a `should` is told and no more. */
export const requirements: Check = (review) =>
  statements(review).flatMap((result): readonly Finding[] => {
    if (result.kind !== 'requirement' || result.status === 'holds') return [];
    const { concession } = result.statement;
    const lapsed = concession !== null && concession.until.days < review.on;
    const level: Level = result.force === 'should' || (concession !== null && !lapsed) ? 'note' : 'finding';
    const accepted = concession && !lapsed ? `; accepted by ${concession.by.value} until ${dateText(concession.until.days)}` : '';
    const found = [finding(CODES[result.status], level, inFile(review, result), words(result) + accepted)];
    if (lapsed) {
      const message = `the concession by ${concession.by.value} ran out on ${dateText(concession.until.days)}`;
      found.push(finding('concession-run-out', 'finding', inFile(review, result, concession.at), message));
    }
    return found;
  });

/** `shall I_n <= I_AC3: fails, 41.20 A ≤ 40 A, 1.200 A short, U 0.30 A`. */
function words({ force, condition, status, sides, worstAt }: RequirementResult): string {
  const said = `${force} ${condition}: ${status}`;
  if (sides === null) return said;
  const margin = marginWords(sides, (width) => width);
  const point = worstAt.map(({ name, value }) => `${name} = ${value.short}`).join(', ');
  const parts = [sidesText(sides), margin, sides.uncertainty && `U ${sides.uncertainty}`, point && `at ${point}`];
  return `${said}, ${parts.filter(Boolean).join(', ')}`;
}
