// Dates: exactly dddd-dd-dd, a day of the calendar (L8). What only looks like one is an error that offers both readings.
import { span } from '../../text/span.ts';
import { daysOf } from '../date.ts';
import { lexingProblem } from '../problems/lexing.ts';
import { characterAt, isNamePart } from './characters.ts';
import { matchAt, type Scan, take } from './scan.ts';

export { dateText, daysOf } from '../date.ts';

const DASH = '[-\u2010-\u2015\u2212]';
const SHAPE = new RegExp(`\\d{4}${DASH}\\d{1,2}${DASH}\\d+`, 'y');
const REST = new RegExp(`(?:[\\p{L}\\p{M}\\d_]|${DASH}(?=[\\p{L}\\d_])|\\.(?=\\d))+`, 'uy');
const TIME = /T[\d:.,Z+-]*/y;

/** Whether something of the shape of a date begins at `at`. */
export function looksLikeDate(text: string, at: number): boolean {
  return matchAt(SHAPE, text, at) !== null;
}

export function readDate(scan: Scan): boolean {
  const { text, at: start } = scan;
  const shape = matchAt(SHAPE, text, start);
  if (shape === null) return false;
  const [year, month, day] = shape.split(/[^\d]/) as [string, string, string];
  const days = daysOf(Number(year), Number(month), Number(day));
  const padded = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  let end = start + shape.length;
  const time = matchAt(TIME, text, end);
  const touched = start > 0 && (text[start - 1] === '-' || isNamePart(text[start - 1]!));
  if (time !== null && !isNamePart(characterAt(text, end + time.length))) {
    end += time.length;
    scan.problems.push(lexingProblem('date-with-time', span(start, end), { date: padded }));
  } else {
    const rest = matchAt(REST, text, end) ?? '';
    end += rest.length;
    const at = span(start, end);
    if (shape !== padded || touched || rest !== '') {
      const parts = `${shape}${rest}`.split(new RegExp(DASH)).map((part) => part.replace(/^0+(?=\d)/, ''));
      const date = rest === '' && !touched && days !== null && day.length <= 2 ? padded : null;
      scan.problems.push(lexingProblem('date-form', at, { date, subtraction: parts.join(' - ') }));
    } else if (days === null) {
      scan.problems.push(lexingProblem('no-such-date', at, { date: padded }));
    }
  }
  take(scan, end, { kind: 'date', days });
  return true;
}
