// Where the front matter stands in a file: between a first line `---` and the next one.
import type { Span } from '../text/span.ts';
import type { FileLines } from './file-lines.ts';

/** The line behind the closing `---`; 0 where the file has no front matter, or one that is not closed. */
export function frontMatterEnd(lines: FileLines): number {
  if (!isDashes(lines, 0)) return 0;
  for (let i = 1; i < lines.count; i++) if (isDashes(lines, i)) return i + 1;
  return 0;
}

/** The YAML between the two lines, the last line end left out; `end` is the line behind the closing one. */
export function frontMatterCode(lines: FileLines, end: number): Span {
  return lines.between(1, end - 1);
}

/** Whether a line is `---` alone. */
export function isDashes(lines: FileLines, i: number): boolean {
  return /^---[ \t]*$/.test(lines.line(i));
}
