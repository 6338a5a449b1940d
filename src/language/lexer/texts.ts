// Texts: between plain quotation marks, on one line, with the escapes \" and \\ (L14).
import { span } from '../../text/span.ts';
import { lexingProblem } from '../problems/lexing.ts';
import { reportBidiControls } from './blanks.ts';
import { characterAt, isLineEnd, isNamePart } from './characters.ts';
import { type Scan, take } from './scan.ts';

/** The longest text (F10). */
const MAX_TEXT = 10_000;

const OTHER_QUOTES = "'‘’‚‛“”„‟«»";

export function readText(scan: Scan): boolean {
  const { text, at: start } = scan;
  if (text[start] !== '"') return false;
  let value = '';
  let end = start + 1;
  for (;;) {
    const from = end;
    while (end < text.length && text[end] !== '"' && text[end] !== '\\' && !isLineEnd(text[end])) end++;
    value += text.slice(from, end);
    if (text[end] !== '\\') break;
    const escaped = characterAt(text, end + 1);
    const known = escaped === '"' || escaped === '\\';
    if (!known) scan.problems.push(lexingProblem('text-escape', span(end, end + 1 + visible(escaped)), { escape: `\\${escaped.trim()}` }));
    value += known ? escaped : '\\';
    end += known ? 2 : 1;
  }
  const closed = text[end] === '"';
  if (!closed) scan.problems.push(lexingProblem('unclosed-text', span(start, end), {}));
  if (value.length > MAX_TEXT) scan.problems.push(lexingProblem('text-too-long', span(start, end), { limit: MAX_TEXT }));
  reportBidiControls(scan, start, end);
  take(scan, closed ? end + 1 : end, { kind: 'text', value });
  return true;
}

/** How much of an escaped character belongs into the problem's place: nothing of a blank or a line end. */
function visible(escaped: string): number {
  return escaped.trim().length;
}

/** Texts between typographic or single quotation marks: read as texts, with an error that offers the plain marks (L12). */
export function readMisquotedText(scan: Scan): boolean {
  const { text, at: start } = scan;
  if (!isOtherQuote(text[start]) || isPrime(text, start)) return false;
  let end = start + 1;
  while (end < text.length && !isOtherQuote(text[end]) && !isLineEnd(text[end])) end++;
  if (!isOtherQuote(text[end])) return false;
  const value = text.slice(start + 1, end);
  const plain = `"${value.replace(/["\\]/g, '\\$&')}"`;
  scan.problems.push(lexingProblem('wrong-quotes', span(start, end + 1), { text: plain }));
  reportBidiControls(scan, start, end);
  take(scan, end + 1, { kind: 'text', value });
  return true;
}

/** Whether a single mark stands directly behind a name or a number, as a prime or an apostrophe does. */
function isPrime(text: string, at: number): boolean {
  return at > 0 && "'’".includes(text[at]!) && isNamePart(text[at - 1]!);
}

export function isOtherQuote(c: string | undefined): boolean {
  return c !== undefined && c !== '' && OTHER_QUOTES.includes(c);
}
