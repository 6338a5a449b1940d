// Runs a sheet for rows as they come: pieces of CSV for the output, counts for the summary, nothing kept.

import type { CsvRows } from '../node/csv-rows.ts';
import { batchLine } from '../report/batch-csv.ts';
import type { Batch } from '../run/batch.ts';
import { grouped } from '../sheet/table-columns.ts';
import { visible } from './columns.ts';
import type { Progress } from './progress.ts';
import type { Stream } from './terminal.ts';

/** How the rows came out so far. A row with an error counts as nothing else. */
export interface BatchCount {
  rows: number;
  errors: number;
  fail: number;
  undecided: number;
}

export interface BadRow {
  /** From 1, the heads not counted. */
  readonly row: number;
  /** The row's first field. */
  readonly label: string;
  readonly errors: readonly string[];
}

/** Characters that are gathered before they are handed on. */
const PIECE = 1 << 16;

/** One row out for one row in, in their order, behind a line of heads. */
export async function* calculatedRows(
  { heads, groups }: CsvRows,
  batch: Batch,
  count: BatchCount,
  onBadRow: (bad: BadRow) => void,
): AsyncGenerator<string, void> {
  let piece = batchLine(heads, heads.length, batch.heads);
  for await (const group of groups) {
    for (const fields of group) {
      const { cells, errors, verdict } = batch.run(fields);
      count.rows++;
      if (errors.length > 0) {
        count.errors++;
        onBadRow({ row: count.rows, label: fields[0] ?? '', errors });
      } else if (verdict === 'fails') count.fail++;
      else if (verdict === 'undecided') count.undecided++;
      piece += batchLine(fields, heads.length, cells);
    }
    if (piece.length > PIECE) {
      yield piece;
      piece = '';
    }
  }
  yield piece;
}

/** So many bad rows are told one by one; the column `error` has them all. */
const TOLD = 20;
const LABEL = 40;

/** Tells of the first bad rows, above the progress line. */
export function badRowPrinter(name: string, err: Stream, line: Progress): (bad: BadRow) => void {
  let told = 0;
  return ({ row, label, errors }) => {
    if (++told > TOLD + 1) return;
    line.end();
    if (told > TOLD) return err.line('more rows with errors follow; the column `error` says what is wrong in each');
    const called = label === '' ? '' : ` (${label.length > LABEL ? `${label.slice(0, LABEL)}…` : label})`;
    err.line(visible(`${name}: row ${grouped(row)}${called}: ${errors.join('; ')}`));
  };
}

/** `100,000 rows: 99,980 hold, 12 fail, 3 undecided, 5 with errors`. */
export function printEnd({ rows, errors, fail, undecided }: BatchCount, err: Stream): void {
  const parts = [
    [rows - errors - fail - undecided, 'hold'],
    [fail, 'fail'],
    [undecided, 'undecided'],
    [errors, errors === 1 ? 'with an error' : 'with errors'],
  ] as const;
  const said = parts.filter(([count], i) => i === 0 || count > 0).map(([count, what]) => `${grouped(count)} ${what}`);
  err.line(`${grouped(rows)} ${rows === 1 ? 'row' : 'rows'}: ${said.join(', ')}`);
}
