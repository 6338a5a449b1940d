// Numbers: digits, a point with digits on both sides, an exponent (L7). Near misses are read as what was likely meant, with an error.
import { span } from '../../text/span.ts';
import { lexingProblem } from '../problems/lexing.ts';
import { isDigit, isLetter } from './characters.ts';
import { looksLikeDate } from './dates.ts';
import { beginsReciprocal, takeNumber } from './quantities.ts';
import { matchAt, type Scan } from './scan.ts';

const NUMBER = /\d+(?:\.\d+)?(?:[eE][+\-\u2212]?\d+)?/y;
const COMMAS = /(?:,\d+(?:\.\d+)?)+/y;
const POINTS = /(?:\.\d+)+/y;
const GAP = /(?:_|[ \t\u00A0\u2009\u202F]+)(?=\d)/y;

export function readNumber(scan: Scan): boolean {
  const { text, at: start } = scan;
  if (text[start] === '.' && isDigit(text[start + 1])) return readBarePoint(scan);
  const number = matchAt(NUMBER, text, start);
  if (number === null) return false;
  const end = start + number.length;
  const commas = matchAt(COMMAS, text, end);
  const points = commas === null ? matchAt(POINTS, text, end) : null;
  const trailing = text[end] === '.' && !isDigit(text[end + 1]) && !(isLetter(text[end + 1] ?? '') && !number.includes('.'));
  if (commas !== null) return takeCommas(scan, number, commas);
  if (points !== null && /^\d{1,2}\.\d{1,2}\.\d{4}$/.test(number + points)) {
    scan.problems.push(lexingProblem('date-form', span(start, end + points.length), { date: null, subtraction: null }));
    return takeNumber(scan, end + points.length, number);
  }
  if (points !== null) return takePointless(scan, end + points.length, null, number);
  if (trailing) return takePointless(scan, end + 1, number, number);
  const gapped = withGaps(text, number, end);
  if (gapped !== null) {
    scan.problems.push(lexingProblem('gap-in-number', span(start, gapped.end), { joined: gapped.joined }));
    return takeNumber(scan, gapped.end, gapped.joined ?? number);
  }
  return takeChecked(scan, end, number);
}

/** Takes a number of the right form; leading zeros and sizes beyond all calculation are errors. */
function takeChecked(scan: Scan, end: number, written: string): boolean {
  const plain = written.replace('\u2212', '-').replace(/^0+(?=\d)/, '');
  if (/^0\d/.test(written)) scan.problems.push(lexingProblem('leading-zeros', span(scan.at, end), { number: plain }));
  const value = Number(plain);
  if (!Number.isFinite(value) || (value === 0 && /[1-9]/.test(plain.split(/e/i)[0]!))) {
    scan.problems.push(lexingProblem('number-out-of-range', span(scan.at, end), { number: written }));
  }
  return takeNumber(scan, end, plain);
}

/** `.5`; behind a name or a bracket the point stands for itself. */
function readBarePoint(scan: Scan): boolean {
  const last = scan.tokens.at(-1);
  if (
    last?.at.end === scan.at &&
    last.kind !== 'operator' &&
    last.kind !== 'plusminus' &&
    !(last.kind === 'punctuation' && '([,:='.includes(last.mark))
  ) {
    return false;
  }
  const number = `0.${matchAt(NUMBER, scan.text, scan.at + 1)!}`;
  const end = scan.at + number.length - 1;
  scan.problems.push(lexingProblem('point-without-digits', span(scan.at, end), { number }));
  return takeNumber(scan, end, number);
}

function takePointless(scan: Scan, end: number, offer: string | null, number: string): boolean {
  scan.problems.push(lexingProblem('point-without-digits', span(scan.at, end), { number: offer }));
  return takeNumber(scan, end, number.replace('\u2212', '-'));
}

/** `1,5` or `12,500`: read as a decimal comma, since that is the commonest slip. */
function takeCommas(scan: Scan, number: string, commas: string): boolean {
  const end = scan.at + number.length + commas.length;
  const groups = `${number}${commas}`.split(',');
  const decimal = groups.length === 2 && !number.includes('.') && !groups[1]!.includes('.') ? groups.join('.') : null;
  const thousands = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(`${number}${commas}`) ? groups.join('') : null;
  const facts = { decimal, joined: thousands, separated: groups.join(', ') };
  scan.problems.push(lexingProblem('comma-in-number', span(scan.at, end), facts));
  return takeNumber(scan, end, decimal ?? thousands ?? number);
}

/** Digits behind a blank or `_`: where they end, and the joined number if there is one; null where the number has no gap. */
function withGaps(text: string, number: string, end: number): { end: number; joined: string | null } | null {
  const groups = [number];
  let at = end;
  for (let gap = matchAt(GAP, text, at); gap !== null; gap = matchAt(GAP, text, at)) {
    const from = at + gap.length;
    if (looksLikeDate(text, from) || (gap !== '_' && beginsReciprocal(text, from))) break;
    const group = matchAt(NUMBER, text, from)!;
    groups.push(group);
    at = from + group.length;
  }
  if (at === end) return null;
  const fractions = groups.findIndex((group) => /[.eE]/.test(group));
  const whole = fractions === -1 || groups.slice(fractions + 1).every((group) => /^\d+$/.test(group));
  return { end: at, joined: whole ? groups.join('') : null };
}
