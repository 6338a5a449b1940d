// What `verify` found: as lines for a person, and as JSON.

import type { Level } from '../review/finding.ts';
import { type Verification, worstLevel } from '../review/verification.ts';
import { dateText } from '../text/date.ts';
import { columns, padRight, visible } from './columns.ts';
import type { Stream, Style } from './terminal.ts';

/** Prints a verification in one of the forms of `--format`. */
export type Print = (verifications: readonly Verification[], on: number, stream: Stream) => void;

const STYLE: Readonly<Record<Level, Style>> = { error: 'red', finding: 'yellow', note: 'blue' };

/** One line a sheet, the findings below it as `path:line:column`, and a line that sums up. */
export const asText: Print = (verifications, _, stream) => {
  const { paint, line } = stream;
  const width = Math.max(0, ...verifications.map((v) => columns(visible(v.sheet))));
  for (const verification of verifications) {
    const worst = worstLevel(verification);
    const word = paint(worst === null ? 'green' : STYLE[worst], padRight(worst ?? 'ok', 'finding'.length));
    line(`${word}  ${padRight(visible(verification.sheet), width)}  ${requirements(verification)}`.trimEnd());
    for (const { level, path, line: at, column, message, code } of verification.findings) {
      const place = `${visible(path ?? verification.sheet)}:${at}:${column}:`;
      line(`         ${place} ${paint(STYLE[level], level)}: ${visible(message)} ${paint('dim', `(${code})`)}`);
    }
  }
  const count = (worst: ReturnType<typeof worstLevel>) => verifications.filter((v) => worstLevel(v) === worst).length;
  const parts = [
    `${count(null)} ok`,
    count('finding') > 0 && `${count('finding')} with findings`,
    count('error') > 0 && `${count('error')} with errors`,
  ];
  line(`${verifications.length} ${verifications.length === 1 ? 'sheet' : 'sheets'}: ${parts.filter(Boolean).join(' · ')}`);
};

export const asJson: Print = (verifications, on, stream) => {
  const count = (level: Level) => verifications.flatMap((v) => v.findings).filter((f) => f.level === level).length;
  const summary = { sheets: verifications.length, errors: count('error'), findings: count('finding'), notes: count('note') };
  stream.write(`${JSON.stringify({ on: dateText(on), sheets: verifications, summary }, null, 2)}\n`);
};

function requirements({ requirements: r }: Verification): string {
  const parts = [r.holds > 0 && `${r.holds} hold`, r.fails > 0 && `${r.fails} fail`, r.undecided > 0 && `${r.undecided} undecided`];
  return [...parts, r['not calculated'] > 0 && `${r['not calculated']} not calculated`].filter(Boolean).join(' · ');
}
