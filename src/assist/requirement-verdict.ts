// What a requirement comes to as a check that passes or not: as `verify` counts it, with both sides in words.
import { sidesText, verdict } from '../run/record.ts';
import type { RequirementResult, Sides } from '../run/result.ts';
import { dateText } from '../text/date.ts';

export interface RequirementVerdict {
  /** `noted`: it does not hold, and that is told and no more: a recommendation, or accepted by a concession that has not run out. */
  readonly state: 'passes' | 'fails' | 'noted' | 'not calculated';
  /** `34.40 A ≤ 34 A: fails, 1.2 % short`. */
  readonly message: string;
  /** What was wanted and what there is, `≤ 34 A` and `34.40 A`; null where there is no comparison. */
  readonly sides: { readonly wanted: string; readonly found: string } | null;
}

/** The verdict on a day, in days since 1970-01-01. */
export function requirementVerdict(result: RequirementResult, on: number): RequirementVerdict {
  const { status, sides, force, statement } = result;
  const { concession } = statement;
  const accepted = concession !== null && concession.until.days >= on;
  return {
    state: status === 'holds' ? 'passes' : force === 'should' || accepted ? 'noted' : status === 'not calculated' ? status : 'fails',
    message: [words(result), ...(concession && status !== 'holds' ? [concessionWords(concession, accepted)] : [])].join('; '),
    sides: sides && bothSides(sides),
  };
}

function words({ status, sides, rows, worstAt, missing }: RequirementResult): string {
  const said = verdict(status, sides).join(', ');
  const because = missing?.kind === 'not calculated' ? ` since ${missing.because.join(', ')} has no value` : '';
  const where = [
    ...rows.slice(0, 1).map(({ label }) => `worst: ${label}`),
    ...worstAt.map(({ name, value }) => `at ${name} = ${value.short}`),
  ];
  return [`${sides ? `${sidesText(sides)}: ` : ''}${said}${because}`, ...where].join('; ');
}

function concessionWords({ by, until }: NonNullable<RequirementResult['statement']['concession']>, accepted: boolean): string {
  return accepted
    ? `accepted by ${by.value} until ${dateText(until.days)}`
    : `the concession by ${by.value} ran out on ${dateText(until.days)}`;
}

const MIRRORED: Readonly<Record<string, string>> = { '≤': '≥', '≥': '≤', '<': '>', '>': '<' };

function bothSides(sides: Sides): { readonly wanted: string; readonly found: string } {
  const text = sidesText(sides);
  const relation = text.slice(sides.left.short.length, text.length - sides.right.short.length).trim();
  return sides.limitIsLeft
    ? { wanted: `${MIRRORED[relation] ?? relation} ${sides.left.short}`, found: sides.right.short }
    : { wanted: `${relation} ${sides.right.short}`, found: sides.left.short };
}
