// Tables in CSV files (RFC 4180): the first line holds the heads, as in a pipe table.
import { CsvError, parse } from 'csv-parse/browser/esm/sync';
import { lineMap, positionAt } from '../text/lines.ts';
import type { Problem } from '../text/problem.ts';
import { type Span, span } from '../text/span.ts';
import { fieldText } from './csv-field.ts';
import { directionControls } from './direction-controls.ts';
import { withoutBlanks } from './pipe-row.ts';
import type { Table } from './table.ts';
import type { TableCaption } from './table-caption.ts';
import { grouped, MAX_ROWS, makeTable, type RawRow } from './table-columns.ts';
import { tableProblem } from './table-problems.ts';

/** A longer file is refused; ask its size before reading it. */
export const MAX_CSV_CHARACTERS = 16_000_000;

export interface CsvTable {
  readonly table: Table;
  /** Places are in the CSV file. */
  readonly problems: readonly Problem[];
}

/** The table of a CSV file's text under the caption that links to it. Places of columns and cells are in the CSV file. */
export function readCsvTable(text: string, caption: TableCaption): CsvTable {
  const problems: Problem[] = [];
  const records = text.length > MAX_CSV_CHARACTERS ? tooLong(caption, problems) : readRecords(text, problems);
  problems.push(...(records ? directionControls(text) : []));
  const [head, ...rows] = records ?? [];
  if (records && !head) problems.push(tableProblem('csv-empty', span(0, 0), {}));
  const separator = head && otherSeparator(head.texts);
  if (separator) problems.push(tableProblem('csv-separator', head.at, { separator }));
  if (!head || separator) {
    const { name, nameAt, source, path, at } = caption;
    return { table: { name, nameAt, caption: caption.caption, source, path, columns: [], rowCount: 0, broken: true, at }, problems };
  }
  const heads = head.texts.map((its, i) => ({ text: its, at: i < 100 ? head.placeOf(i) : head.at }));
  return { table: makeTable(caption, { heads, rows, keepPlaces: false, ragged: 'record-ragged' }, caption.at, problems), problems };
}

function tooLong({ name }: TableCaption, problems: Problem[]): null {
  problems.push(tableProblem('table-too-large', span(0, 0), { name, limit: `${grouped(MAX_CSV_CHARACTERS)} characters` }));
  return null;
}

interface Parsed {
  readonly record: readonly string[];
  readonly info: { readonly bytes: number };
}

/** The records with their places, no more than one beyond the limit; null (with a problem) where the file is no CSV. */
function readRecords(text: string, problems: Problem[]): readonly RawRow[] | null {
  const bom = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  const offsetOf = offsets(text, bom);
  try {
    const parsed = parse(text.slice(bom), {
      record_delimiter: ['\r\n', '\n', '\r'],
      relax_column_count: true,
      skip_empty_lines: true,
      info: true,
      to: MAX_ROWS + 2,
    }) as unknown as readonly Parsed[];
    let end = bom;
    return parsed.map(({ record, info }) => {
      const start = skipLineEnds(text, end);
      end = offsetOf(info.bytes);
      const at = span(start, trimLineEnds(text, start, end));
      return {
        texts: record.map((field) => fieldText(withoutBlanks(field))),
        at,
        placeOf: (column: number) => fieldPlace(text, at, column),
      };
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    problems.push(syntaxProblem(error, text));
    return null;
  }
}

function syntaxProblem(error: CsvError, text: string): Problem {
  if (error.code === 'CSV_QUOTE_NOT_CLOSED') {
    const start = openQuote(text);
    const at = span(start, start + text.slice(start).search(/[\r\n]|$/));
    const line = positionAt(lineMap(text), start).line + 1;
    return tableProblem('csv-syntax', at, { because: `the quotation mark that opens in line ${line} is never closed` });
  }
  const { lines } = error as unknown as { readonly lines?: number };
  const map = lineMap(text);
  const line = Math.min(Math.max(1, lines ?? 1), map.starts.length);
  const start = map.starts[line - 1]!;
  const at = span(start, trimLineEnds(text, start, map.starts[line] ?? text.length));
  return tableProblem('csv-syntax', at, { because: (REASONS[error.code] ?? ((l) => `line ${l} can't be read`))(line) });
}

const REASONS: Readonly<Record<string, (line: number) => string>> = {
  INVALID_OPENING_QUOTE: (line) =>
    `in line ${line} a quotation mark stands inside a field that does not begin with one; put the field in quotes and double the mark inside`,
  CSV_INVALID_CLOSING_QUOTE: (line) =>
    `in line ${line} something follows the closing quotation mark of a field; a mark inside a field in quotes is doubled`,
};

/** The quotation mark that is open at the text's end: marks open and close in turn, doubled ones included. */
function openQuote(text: string): number {
  let open = -1;
  for (let i = text.indexOf('"'); i >= 0; i = text.indexOf('"', i + 1)) open = open < 0 ? i : -1;
  return Math.max(0, open);
}

/** Turns rising numbers of UTF-8 bytes behind `from` into offsets of the text. */
function offsets(text: string, from: number): (bytes: number) => number {
  let [at, bytes] = [from, 0];
  return (wanted) => {
    while (bytes < wanted && at < text.length) {
      const code = text.codePointAt(at)!;
      bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
      at += code < 0x10000 ? 1 : 2;
    }
    return at;
  };
}

function skipLineEnds(text: string, from: number): number {
  let at = from;
  while (text[at] === '\n' || text[at] === '\r') at++;
  return at;
}

function trimLineEnds(text: string, start: number, end: number): number {
  let at = end;
  while (at > start && (text[at - 1] === '\n' || text[at - 1] === '\r')) at--;
  return at;
}

/** Where a field of a record stands, quotation marks included. */
function fieldPlace(text: string, record: Span, column: number): Span {
  let start = record.start;
  for (let i = 0; start <= record.end; i++) {
    const end = fieldEnd(text, start, record.end);
    if (i === column) return span(start, end);
    start = end + 1;
  }
  return record;
}

function fieldEnd(text: string, start: number, limit: number): number {
  let quoted = false;
  for (let i = start; i < limit; i++) {
    if (text[i] === '"') quoted = !quoted;
    else if (text[i] === ',' && !quoted) return i;
  }
  return limit;
}

/** What separates the fields where it is plainly no comma: the head is one field with several such signs in it. */
export function otherSeparator(heads: readonly string[]): string | null {
  if (heads.length !== 1) return null;
  if (heads[0]!.includes(';')) return 'semicolons';
  return heads[0]!.includes('\t') ? 'tabs' : null;
}
