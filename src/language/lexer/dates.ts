// Dates: exactly dddd-dd-dd, a day of the calendar (L8). What only looks like one is an error that offers both readings.
import { daysOf } from '../../text/date.ts';
import { span } from '../../text/span.ts';
import { lexingProblem } from '../problems/lexing.ts';
import { characterAt, isDigit, isNamePart } from './characters.ts';
import { matchAt, type Scan, take } from './scan.ts';

const DASHES = /[-\u2010-\u2015\u2212]/;
const SHAPE = /\d{4}[-\u2010-\u2015\u2212]\d{1,2}[-\u2010-\u2015\u2212]\d+/y;
const REST = /(?:[\p{L}\p{M}\d_]|[-\u2010-\u2015\u2212](?=[\p{L}\d_])|\.(?=\d))+/uy;
const TIME = /T[\d:.,Z+-]*/y;

/** Whether something of the shape of a date begins at `at`. */
export function looksLikeDate(text: string, at: number): boolean {
  return matchAt(SHAPE, text, at) !== null;
}

export function readDate(scan: Scan): boolean {
  const { text, at: start } = scan;
  const shape = isDigit(text[start]) ? matchAt(SHAPE, text, start) : null;
  if (shape === null) return false;
  const [year, month, day] = shape.split(/[^\d]/) as [string, string, string];
  const days = daysOf(Number(year), Number(month), Number(day));
  const padded = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const end = start + shape.length;
  const time = matchAt(TIME, text, end) ?? '';
  if (time !== '' && !isNamePart(characterAt(text, end + time.length))) {
    const at = take(scan, end + time.length, { kind: 'date', days });
    scan.problems.push(lexingProblem('date-with-time', at, { date: padded }));
    return true;
  }
  const rest = matchAt(REST, text, end) ?? '';
  const at = take(scan, end + rest.length, { kind: 'date', days });
  const before = start > 0 ? text[start - 1]! : '';
  if (rest !== '' || shape !== padded || (before !== '' && isNamePart(before))) {
    const date = days === null ? null : dateReading(padded, rest);
    scan.problems.push(lexingProblem('date-form', at, { date, subtraction: subtraction(shape + rest) }));
  } else if (days === null) {
    scan.problems.push(lexingProblem('no-such-date', at, { date: padded }));
  } else if (DASHES.test(before)) {
    scan.problems.push(lexingProblem('date-touches-sign', at, { apart: `- ${padded}`, sign: span(start - 1, start) }));
  }
  return true;
}

/** What was meant if it was a date, or two with a minus between them. */
function dateReading(date: string, rest: string): string | null {
  if (rest === '') return date;
  return /^-\d{4}-\d{2}-\d{2}$/.test(rest) ? `${date} - ${rest.slice(1)}` : null;
}

/** The same numbers with spaces around the signs, and without leading zeros; null where they are no numbers. */
function subtraction(written: string): string | null {
  const parts = written.split(DASHES);
  if (!parts.every((part) => /^\d+$/.test(part))) return null;
  return parts.map((part) => part.replace(/^0+(?=\d)/, '')).join(' - ');
}
