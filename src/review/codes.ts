// What the codes of findings mean, in a few words: rules of a log, names of test cases, titles of annotations.

/** Codes of the checks, the most serious first within a level. */
const CHECKS: Readonly<Record<string, string>> = {
  'not-a-sheet': 'The file is no sheet',
  'requirement-fails': 'A requirement fails',
  'concession-run-out': 'A concession has run out',
  'requirement-undecided': 'A requirement is undecided within the uncertainty',
  'requirement-not-calculated': 'A requirement is not calculated',
  'overdue-instrument': 'An instrument was overdue for calibration when it was read',
  'results-stale': 'Recorded results are out of date',
  'results-not-recorded': 'Results are not recorded',
  'value-stale': 'A value in the text is out of date',
  'no-source': 'An input has no source',
  'signature-out-of-date': 'A signature covers another text',
  'version-gives-other-results': 'Another version, with which it was signed, gave other results',
  'check-not-independent': 'The sheet was checked or approved by the one who prepared it',
  'signature-missing': 'A signature is missing',
};

const ORDER = Object.keys(CHECKS);

/** `A requirement fails`; for a problem of the sheet its code in words. */
export function meaningOf(code: string): string {
  if (Object.hasOwn(CHECKS, code)) return CHECKS[code]!;
  const words = code.replaceAll('-', ' ');
  return `Problem: ${words}`;
}

/** Place of a code among findings of one level; problems of the sheet stand behind the checks that precede them in the table. */
export function seriousness(code: string): number {
  const place = ORDER.indexOf(code);
  return place === -1 ? ORDER.length : place;
}
