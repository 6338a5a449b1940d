// All findings of several sheets, the most serious first: for places that show only so many.
import { seriousness } from './codes.ts';
import type { Level } from './finding.ts';
import type { PlacedFinding, Verification } from './verification.ts';

/** A finding with the file that it is in. */
export interface FiledFinding extends PlacedFinding {
  /** As given on the command line, or the path of a file that the sheet uses. */
  readonly file: string;
}

const RANK: Readonly<Record<Level, number>> = { error: 0, finding: 1, note: 2 };

/** By level, then by code, then in the order of the sheets and their text. */
export function worstFirst(verifications: readonly Verification[]): readonly FiledFinding[] {
  return verifications
    .flatMap(({ sheet, findings }) => findings.map((finding) => ({ ...finding, file: finding.path ?? sheet })))
    .sort((a, b) => RANK[a.level] - RANK[b.level] || seriousness(a.code) - seriousness(b.code));
}
