// One line of a pipe table: its cells with their places, and the escapes in them (GitHub Flavored Markdown, 4.10).
import { type Span, span } from '../text/span.ts';

/** A cell as written, without the blanks around it; an empty cell has an empty span. */
export interface RowCell {
  readonly text: string;
  readonly at: Span;
}

/** More cells are not told apart: a row that has them is no row of a table that is read. */
const MAX_CELLS = 2_000;

/** The cells of one line without its line end. `offset` is where the line starts in the file. */
export function splitRow(line: string, offset: number): readonly RowCell[] {
  const cells: RowCell[] = [];
  const end = line.trimEnd().length;
  let from = line.length - line.trimStart().length;
  if (line[from] === '|') from++;
  for (let i = from; i <= end; i++) {
    const ends = i === end ? i > from || cells.length === 0 : line[i] === '|' && line[i - 1] !== '\\' && cells.length < MAX_CELLS;
    if (!ends) continue;
    cells.push(trimmed(line, from, i, offset));
    from = i + 1;
  }
  return cells;
}

function trimmed(line: string, from: number, to: number, offset: number): RowCell {
  const { start, end } = trimBlanks(line, from, to);
  return { text: line.slice(start, end), at: span(offset + start, offset + end) };
}

/** A text without the spaces and tabs at its ends. */
export function withoutBlanks(text: string): string {
  if (!isBlank(text.charCodeAt(0)) && !isBlank(text.charCodeAt(text.length - 1))) return text;
  const { start, end } = trimBlanks(text, 0, text.length);
  return text.slice(start, end);
}

/** The part of `text` from `from` to `to` without the spaces and tabs at its ends. */
export function trimBlanks(text: string, from: number, to: number): Span {
  let [start, end] = [from, to];
  while (start < end && isBlank(text.charCodeAt(start))) start++;
  while (end > start && isBlank(text.charCodeAt(end - 1))) end--;
  return span(start, end);
}

function isBlank(code: number): boolean {
  return code === 32 || code === 9;
}

/** Undoes the escapes of a cell: `\|` first, as tables are split before their text is read, then those of ASCII punctuation. */
export function unescapeCell(text: string): string {
  if (!text.includes('\\')) return text;
  return text.replaceAll('\\|', '|').replace(/\\([!-/:-@[-`{-~])/g, '$1');
}

/**
 * Plain text as Markdown on one line, fit for a cell: `|`, backquotes and backslashes always, and what would otherwise start HTML,
 * an entity, emphasis or a link. `I_n <= 2 * x` stays as it is.
 */
export function escapeCell(text: string): string {
  return escapeMarks(text.replace(/[\\`|]/g, '\\$&').replace(/\](?=\()/g, '\\]'));
}

/** The same for the text of a link, where every bracket means something. */
export function escapeLinkText(text: string): string {
  return escapeMarks(text.replace(/[\\`|[\]]/g, '\\$&'));
}

function escapeMarks(text: string): string {
  return text
    .replace(/<(?=[A-Za-z/!?])/g, '\\<')
    .replace(/&(?=#?\w+;)/g, '\\&')
    .replace(/~(?=~)/g, '\\~')
    .replace(/(?<!\s)\*|\*(?!\s)/g, '\\*')
    .replace(/(?<![\p{L}\p{N}])_|_(?![\p{L}\p{N}])/gu, '\\_');
}
