// Blanks, line ends and comments: trivia, kept for the printer.
import { span } from '../../text/span.ts';
import { lexingProblem } from '../problems/lexing.ts';
import { BIDI_CONTROL, codePointName, isBlank, isLineEnd } from './characters.ts';
import { type Scan, skip } from './scan.ts';

/** The offset of the first character at or behind `at` that is no blank. */
export function behindBlanks(text: string, at: number): number {
  let end = at;
  while (isBlank(text[end])) end++;
  return end;
}

/** The offset at which the line of `at` ends. */
export function lineEndFrom(text: string, at: number): number {
  let end = at;
  while (end < text.length && !isLineEnd(text[end])) end++;
  return end;
}

export function readBlanks(scan: Scan): boolean {
  const end = behindBlanks(scan.text, scan.at);
  if (end === scan.at) return false;
  if (scan.first) scan.indent = end - scan.at;
  skip(scan, end, 'blank');
  return true;
}

export function readLineEnd(scan: Scan): boolean {
  if (!isLineEnd(scan.text[scan.at])) return false;
  const pair = scan.text[scan.at] === '\r' && scan.text[scan.at + 1] === '\n';
  skip(scan, scan.at + (pair ? 2 : 1), 'line end');
  scan.first = true;
  scan.indent = 0;
  return true;
}

export function readComment(scan: Scan): boolean {
  if (scan.text[scan.at] !== '#') return false;
  const end = lineEndFrom(scan.text, scan.at);
  reportBidiControls(scan, scan.at, end);
  skip(scan, end, 'comment');
  return true;
}

/** `// …`, a comment in other notations; read as one, with an error that offers `#`. */
export function readOtherComment(scan: Scan): boolean {
  const { text, at } = scan;
  if (!text.startsWith('//', at)) return false;
  const end = lineEndFrom(text, at);
  let signs = at + 2;
  while (text[signs] === '/') signs++;
  scan.problems.push(lexingProblem('other-comment', span(at, signs), {}));
  reportBidiControls(scan, at, end);
  skip(scan, end, 'comment');
  return true;
}

/** Reports the characters between two offsets that turn the direction of text, each run once (L12). */
export function reportBidiControls(scan: Scan, from: number, to: number): void {
  for (let i = from; i < to; i++) {
    if (!BIDI_CONTROL.test(scan.text[i]!)) continue;
    const start = i;
    while (i < to && BIDI_CONTROL.test(scan.text[i]!)) i++;
    const characters = codePointName(scan.text[start]!);
    scan.problems.push(lexingProblem('bidi-control', span(start, i), { characters }));
  }
}
