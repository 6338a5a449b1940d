// Makes a table of its heads and rows: typed columns, with a problem for every cell that could not be read.
import type { Problem } from '../text/problem.ts';
import type { Span } from '../text/span.ts';
import { PLAIN_UNIT } from '../units/unit.ts';
import type { Cell, ColumnType, Table, TableColumn } from './table.ts';
import type { TableCaption } from './table-caption.ts';
import { readCell } from './table-cell.ts';
import { readHead } from './table-head.ts';
import { tableProblem } from './table-problems.ts';

export const MAX_ROWS = 100_000;
export const MAX_COLUMNS = 1_000;
export const MAX_CELLS = 2_000_000;
/** So many cells of one table are reported; the rest is counted. */
const MAX_REPORTED = 20;

const PLAIN_NUMBERS: ColumnType = { kind: 'number', unit: PLAIN_UNIT };

/** A cell's text with its escapes undone, and its place. */
export interface RawCell {
  readonly text: string;
  readonly at: Span;
}

/** The texts of a row, and where each of them stands. */
export interface RawRow {
  readonly texts: readonly string[];
  readonly at: Span;
  readonly placeOf: (column: number) => Span;
}

/** A table before its cells are read. */
export interface RawTable {
  readonly heads: readonly RawCell[];
  readonly rows: readonly RawRow[];
  /** The place that a cell keeps: its own, or its row's, which costs nothing in a long file. */
  readonly keepPlaces: boolean;
  readonly ragged: 'row-ragged' | 'record-ragged';
}

/** The table of a caption. `at` is the whole table in its sheet. */
export function makeTable(caption: TableCaption, raw: RawTable, at: Span, problems: Problem[]): Table {
  const { name, nameAt, source, path } = caption;
  const base = { name, nameAt, caption: caption.caption, source, path, at };
  const tooLarge = sizeFault(raw);
  if (tooLarge) {
    problems.push(tableProblem('table-too-large', raw.heads[0]?.at ?? nameAt, { name, limit: tooLarge }));
    return { ...base, columns: [], rowCount: 0, broken: true };
  }
  const report = reporter(name, problems);
  const whole = raw.rows.map((row, i) => isWhole(row, i, raw, report));
  const columns: TableColumn[] = [];
  const seen = new Map<string, Span>();
  for (const [i, { text, at: headAt }] of raw.heads.entries()) {
    const head = readHead(text, headAt, problems);
    const first = head && seen.get(head.name);
    if (first) problems.push(tableProblem('column-twice', headAt, { name: head.name }, [{ at: first, label: 'the first one' }]));
    if (!head || first) continue;
    seen.set(head.name, headAt);
    const type: ColumnType = head.type ?? PLAIN_NUMBERS;
    const cells = raw.rows.map((row, r) => {
      const readable = head.type !== null && whole[r] === true;
      return cellOf(row, r, i, raw, readable ? { name: head.name, type } : null, report);
    });
    if (type.kind === 'text' && allNumbers(cells)) problems.push(tableProblem('column-of-numbers', headAt, { name: head.name }));
    columns.push({ name: head.name, at: headAt, type, cells, ...(head.type === null ? { broken: true } : {}) });
  }
  report.close();
  return { ...base, columns, rowCount: raw.rows.length };
}

function sizeFault({ heads, rows }: RawTable): string | null {
  if (heads.length > MAX_COLUMNS) return `${grouped(MAX_COLUMNS)} columns`;
  if (rows.length > MAX_ROWS) return `${grouped(MAX_ROWS)} rows`;
  return rows.length * heads.length > MAX_CELLS ? `${grouped(MAX_CELLS)} cells` : null;
}

/** `100,000`. */
export function grouped(count: number): string {
  return `${count}`.replace(/\B(?=(?:\d{3})+$)/g, ',');
}

/** Whether texts read as numbers without exception, as in a column whose unit was forgotten. */
function allNumbers(cells: readonly Cell[]): boolean {
  const read = cells.map(({ text }) => readCell(text, PLAIN_NUMBERS)).filter((cell) => 'because' in cell || cell.value !== null);
  return read.length > 0 && !read.some((cell) => 'because' in cell);
}

interface Reporter {
  report(at: () => Span, make: (at: Span) => Problem): void;
  close(): void;
}

function reporter(name: string, problems: Problem[]): Reporter {
  let count = 0;
  let last: Span | null = null;
  return {
    report(at, make) {
      if (count++ < MAX_REPORTED) problems.push(make(at()));
      else last ??= at();
    },
    close() {
      if (last) problems.push(tableProblem('cells-more', last, { count: count - MAX_REPORTED, name }));
    },
  };
}

function isWhole(row: RawRow, index: number, raw: RawTable, { report }: Reporter): boolean {
  const [found, wanted] = [row.texts.length, raw.heads.length];
  const facts = { row: index + 1, label: labelOf(row), found, wanted };
  if (found !== wanted) report(() => row.at, (at) => tableProblem(raw.ragged, at, facts)); // biome-ignore format: one sentence
  return found === wanted;
}

function labelOf(row: RawRow): string {
  const [first = ''] = row.texts;
  return first.length > 40 ? `${first.slice(0, 40)}…` : first;
}

function cellOf(
  row: RawRow,
  index: number,
  column: number,
  raw: RawTable,
  readable: { readonly name: string; readonly type: ColumnType } | null,
  { report }: Reporter,
): Cell {
  const text = row.texts[column] ?? '';
  const at = raw.keepPlaces ? row.placeOf(column) : row.at;
  if (!readable) return { text, value: undefined, bounds: null, at };
  const read = readCell(text, readable.type);
  if (!('because' in read)) return { text, ...read, at };
  const facts = { row: index + 1, label: column === 0 ? '' : labelOf(row), column: readable.name, text, ...read };
  const code = readable.type.kind === 'date' ? 'cell-date' : 'cell-number';
  report(() => row.placeOf(column), (place) => tableProblem(code, place, facts)); // biome-ignore format: one sentence
  return { text, value: undefined, bounds: null, at };
}
