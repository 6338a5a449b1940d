// Parts of consecutive lines under each other: clauses under clauses, comments under comments.

/** A line that has a part to be moved into a column: what stands left of it. Null for a line without one, which ends a run. */
export type Left = string | null;

/** The gap between a statement and its first clause, and before a comment. */
export const GAP = 2;
/** Longer lines keep their own column, so that one of them does not push all others aside. */
const WIDEST = 64;

/** For each line the blanks that bring its part into the column of its run. */
export function columnGaps(lefts: readonly Left[]): readonly string[] {
  const gaps: string[] = [];
  for (let start = 0; start < lefts.length; ) {
    let end = start;
    while (end < lefts.length && lefts[end] !== null) end++;
    const widths = lefts.slice(start, end).map((left) => width(left!));
    const column = Math.max(0, ...widths.filter((w) => w <= WIDEST));
    gaps.push(...widths.map((w) => ' '.repeat(Math.max(0, column - w) + GAP)));
    if (end < lefts.length) gaps.push('');
    start = end + 1;
  }
  return gaps;
}

/** In characters as they are shown: combining marks take no place. */
function width(text: string): number {
  return [...text.normalize('NFC')].filter((c) => !/\p{M}/u.test(c)).length;
}
