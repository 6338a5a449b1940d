// Line and column of an offset. A line ends with LF, CRLF or a lone CR, as CommonMark has it.

/** Zero-based line and column; the column counts UTF-16 code units. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** The line starts of one text, for turning offsets into positions and back. */
export interface LineMap {
  readonly starts: readonly number[];
  readonly length: number;
}

/** Finds the line starts of a text, in one pass. */
export function lineMap(text: string): LineMap {
  const starts = [0];
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 13 && text.charCodeAt(i + 1) === 10) continue;
    if (c === 10 || c === 13) starts.push(i + 1);
  }
  return { starts, length: text.length };
}

/** The position of an offset; offsets outside the text are taken as its nearest end. */
export function positionAt(map: LineMap, offset: number): Position {
  const at = Math.max(0, Math.min(offset, map.length));
  let low = 0;
  let high = map.starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (map.starts[middle]! <= at) low = middle;
    else high = middle - 1;
  }
  return { line: low, column: at - map.starts[low]! };
}

/** The offset of a position; a column behind the line's end is taken as that end. */
export function offsetAt(map: LineMap, position: Position): number {
  const line = Math.max(0, Math.min(position.line, map.starts.length - 1));
  const next = map.starts[line + 1] ?? map.length;
  return Math.min(map.starts[line]! + Math.max(0, position.column), next);
}
