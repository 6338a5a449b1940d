// The recorded results under a calc block: a pipe table between two comments, written and read back.
import { escapeCell, splitRow, trimBlanks, unescapeCell } from './pipe-row.ts';
import type { LineEnd } from './sheet.ts';

/** One recorded result: what it is of, its value or both sides, and a status or message. Plain text, no Markdown. */
export interface ResultRow {
  readonly result: string;
  readonly value: string;
  readonly note: string;
}

const OPEN = '<!-- results -->';
const CLOSE = '<!-- end results -->';
const HEAD = '| result | value | note |';
const RULE = '| :-- | --: | :-- |';

const OPEN_LINE = /^ {0,3}<!--[ \t]*results[ \t]*-->[ \t]*$/;
const CLOSE_LINE = /^ {0,3}<!--[ \t]*end results[ \t]*-->[ \t]*$/;
const ROW_LINE = /^ {0,3}\|/;
const RULE_CELL = /^:?-+:?$/;

/** Whether a line opens a results block. */
export function opensResults(line: string): boolean {
  return OPEN_LINE.test(line);
}

/** Whether a line closes a results block. */
export function closesResults(line: string): boolean {
  return CLOSE_LINE.test(line);
}

/** Whether a line may stand between the two: a row of a table. */
export function isResultsRow(line: string): boolean {
  return ROW_LINE.test(line);
}

/**
 * The results block of these rows, from the opening to the closing comment, without a line end behind it.
 * Line breaks become a space; characters that mean something in Markdown are escaped, so that no text can end a cell or the block (F4).
 */
export function writeResults(rows: readonly ResultRow[], lineEnd: LineEnd): string {
  return [OPEN, HEAD, RULE, ...rows.map((row) => writeRow(normalRow(row))), CLOSE].join(lineEnd);
}

/** The rows of a results block's text, or null where it is not one: other lines, another head, rows of another width. */
export function readResults(block: string): readonly ResultRow[] | null {
  const lines = block.split(/\r\n?|\n/).filter((line) => line.trim() !== '');
  const [open, head, rule, ...rest] = lines;
  const close = rest.pop();
  if (open === undefined || close === undefined || !opensResults(open) || !closesResults(close)) return null;
  if (cells(head!).join('|') !== 'result|value|note' || !cells(rule!).every((cell) => RULE_CELL.test(cell))) return null;
  const rows: ResultRow[] = [];
  for (const line of rest) {
    const [result, value, note, ...more] = cells(line);
    if (!isResultsRow(line) || result === undefined || value === undefined || note === undefined || more.length > 0) return null;
    rows.push({ result, value, note });
  }
  return rows;
}

/** Whether two lists of rows record the same. */
export function sameResults(a: readonly ResultRow[], b: readonly ResultRow[]): boolean {
  if (a.length !== b.length) return false;
  return a.every((row, i) => writeRow(normalRow(row)) === writeRow(normalRow(b[i]!)));
}

function cells(line: string): readonly string[] {
  return splitRow(line, 0).map((cell) => unescapeCell(cell.text));
}

function normalRow(row: ResultRow): readonly string[] {
  return [row.result, row.value, row.note].map((text) => {
    const line = text.replace(/[\r\n\v\f\u0085\u2028\u2029]+/g, ' ');
    const { start, end } = trimBlanks(line, 0, line.length);
    return line.slice(start, end);
  });
}

function writeRow(texts: readonly string[]): string {
  return `|${texts.map((text) => (text === '' ? ' ' : ` ${escapeCell(text)} `)).join('|')}|`;
}
