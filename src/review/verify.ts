// Verifies one sheet: everything in it that needs a person before the sheet may be relied on.
import type { Check, Review } from './check.ts';
import { problems } from './checks/problems.ts';
import { recordedResults } from './checks/recorded.ts';
import { requirements } from './checks/requirements.ts';
import { signatures } from './checks/signatures.ts';
import type { Finding, Level } from './finding.ts';

const CHECKS: readonly Check[] = [problems, requirements, recordedResults, signatures];

const RANK: Readonly<Record<Level, number>> = { error: 0, finding: 1, note: 2 };

/** All findings in the order of the text; those in other files come last. */
export function verifySheet(review: Review): readonly Finding[] {
  return CHECKS.flatMap((check) => check(review)).sort(
    (a, b) => compare(a.path ?? '', b.path ?? '') || a.at.start - b.at.start || RANK[a.level] - RANK[b.level],
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
