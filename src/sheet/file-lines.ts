// The lines of a file as the reader walks them: their text without line ends, whether they are blank, what lies between two.
import { type LineMap, lineMap } from '../text/lines.ts';
import { type Span, span } from '../text/span.ts';
import type { LineEnd } from './sheet.ts';

export interface FileLines {
  readonly text: string;
  readonly map: LineMap;
  readonly count: number;
  /** Where line `i` starts; the byte order mark is not part of line 0. `count` gives the end of the text. */
  start(i: number): number;
  /** Where line `i` ends, before its line end. */
  end(i: number): number;
  /** The line without its line end. */
  line(i: number): string;
  blank(i: number): boolean;
  /** From the start of line `from` to the end of the line before `to`, its line end left out. */
  between(from: number, to: number): Span;
}

/** The lines of a text. */
export function fileLines(text: string): FileLines {
  const map = lineMap(text);
  const count = map.starts.length;
  const bom = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  const start = (i: number) => (i >= count ? text.length : i === 0 ? bom : map.starts[i]!);
  const end = (i: number) => {
    let at = map.starts[i + 1] ?? text.length;
    if (i + 1 >= count) return at;
    if (text.charCodeAt(at - 1) === 10 && text.charCodeAt(at - 2) === 13 && at - 1 > start(i)) at--;
    return at - 1;
  };
  const line = (i: number) => text.slice(start(i), end(i));
  const blank = (i: number) => /^[ \t]*$/.test(line(i));
  const between = (from: number, to: number) => span(start(from), to > from ? end(to - 1) : start(from));
  return { text, map, count, start, end, line, blank, between };
}

/** The first line end at or behind an offset; LF where there is none. */
export function lineEndFrom(text: string, offset: number): LineEnd {
  for (let i = offset; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 10) return '\n';
    if (c === 13) return text.charCodeAt(i + 1) === 10 ? '\r\n' : '\r';
  }
  return '\n';
}
