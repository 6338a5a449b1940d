// Rows of a CSV stream (RFC 4180), one after the other: memory holds a piece of it, however long it is.
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { CsvError, parse } from 'csv-parse';
import { fieldText } from '../sheet/csv-field.ts';

/** Longest row, in bytes. What is longer has most likely a quotation mark that is never closed. */
export const LONGEST_ROW = 1_000_000;

/** The stream is no CSV from some row on; `message` says from which, in a plain sentence without a full stop. */
export class NotCsv extends Error {}

/** The fields of a row. */
export type Row = readonly string[];

export interface CsvRows {
  /** Of the first row; none where there is no row. */
  readonly heads: Row;
  /** The others in the groups in which they come, for which waiting is worth its while; each group is let go before the next. */
  readonly groups: AsyncIterable<readonly Row[]>;
}

/** Reads up to the heads. Rows need not be equally long; a stray quotation mark inside a field is taken as written. */
export async function csvRows(bytes: AsyncIterable<Uint8Array>): Promise<CsvRows> {
  const groups = rowGroups(bytes);
  const first = await groups.next();
  const [heads = [], ...rest] = first.done ? [] : first.value;
  return { heads, groups: followed(rest, groups) };
}

async function* followed(first: readonly Row[], others: AsyncIterable<readonly Row[]>): AsyncGenerator<readonly Row[], void> {
  yield first;
  yield* others;
}

async function* rowGroups(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<readonly Row[], void> {
  const parser = parse({
    record_delimiter: ['\r\n', '\n', '\r'],
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: true,
    max_record_size: LONGEST_ROW,
  });
  const feeding = pipeline(Readable.from(decoded(bytes)), parser);
  // Reading the parser tells of the same failure.
  feeding.catch(() => {});
  try {
    for await (const first of parser as AsyncIterable<Row>) {
      const group = [first.map(fieldText)];
      for (let row: Row | null = parser.read(); row !== null; row = parser.read()) group.push(row.map(fieldText));
      yield group;
    }
  } catch (error) {
    throw error instanceof CsvError ? new NotCsv(because(error)) : error;
  }
}

async function* decoded(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<string, void> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  try {
    for await (const piece of bytes) yield decoder.decode(piece, { stream: true });
    yield decoder.decode();
  } catch (error) {
    throw (error as NodeJS.ErrnoException).code === 'ERR_ENCODING_INVALID_ENCODED_DATA'
      ? new NotCsv('it has bytes that are not UTF-8; save it as UTF-8')
      : error;
  }
}

function because(error: CsvError): string {
  const { records } = error as unknown as { readonly records: number };
  const row = records === 0 ? 'the line of the heads' : `row ${records}`;
  switch (error.code) {
    case 'CSV_QUOTE_NOT_CLOSED':
      return `a quotation mark in ${row} is never closed`;
    case 'CSV_MAX_RECORD_SIZE':
      return `${row} has more than ${LONGEST_ROW / 1e6} million characters; most likely a quotation mark in it is never closed`;
    default:
      return `${row} can't be read: ${error.message}`;
  }
}
