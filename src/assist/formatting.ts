// Formatting as edits: only of what changes, so that cursors and folds stay where they are.
import { format } from '../language/format.ts';
import type { Edit } from '../text/problem.ts';
import { type Span, span } from '../text/span.ts';

/** The edits that bring a block's code into its regular form; with `within`, only of the lines that it touches. */
export function formatEdits(code: string, within?: Span): readonly Edit[] {
  const before = [...linesOf(code)];
  const after = [...linesOf(format(code))];
  return before.flatMap(({ start, text }, i) => {
    const now = after[i]?.text ?? text;
    const touched = within === undefined || (start <= within.end && within.start <= start + text.length);
    return now === text || !touched ? [] : [difference(start, text, now)];
  });
}

/** The formatter keeps lines and their ends. */
function* linesOf(text: string): Generator<{ start: number; text: string }> {
  let start = 0;
  for (const line of text.split(/(\r\n|\n|\r)/)) {
    if (!/[\r\n]/.test(line)) yield { start, text: line };
    start += line.length;
  }
}

/** The smallest edit: what differs between the common beginning and the common end. */
function difference(start: number, before: string, after: string): Edit {
  const shorter = Math.min(before.length, after.length);
  let head = 0;
  while (head < shorter && before[head] === after[head]) head++;
  let tail = 0;
  while (tail < shorter - head && before.at(-1 - tail) === after.at(-1 - tail)) tail++;
  return { at: span(start + head, start + before.length - tail), text: after.slice(head, after.length - tail) };
}
