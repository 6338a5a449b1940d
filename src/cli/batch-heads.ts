// Makes a sheet ready for rows with these heads, and says what is wrong with either.

import { type Batch, openBatch } from '../run/batch.ts';
import { otherSeparator } from '../sheet/csv.ts';
import { quoted } from '../sheet/csv-field.ts';
import type { RawCell } from '../sheet/table-columns.ts';
import { tableProblem } from '../sheet/table-problems.ts';
import type { Problem } from '../text/problem.ts';
import { visible } from './columns.ts';
import { type Diagnostic, source } from './diagnostics.ts';
import { type LoadedSheet, report } from './load.ts';
import type { Stream } from './terminal.ts';

/** Null where the sheet or the heads have errors; these are printed. `name` is the file of the rows. */
export function readyForRows(sheet: LoadedSheet, heads: readonly string[], name: string, err: Stream): Batch | null {
  const { text, cells } = headLine(heads);
  const whole = { start: 0, end: text.length };
  const separator = otherSeparator(heads);
  const { batch, problems, errors } =
    heads.length === 0
      ? { batch: null, problems: [tableProblem('csv-empty', whole, {})], errors: [] }
      : separator !== null
        ? { batch: null, problems: [tableProblem('csv-separator', whole, { separator })], errors: [] }
        : openBatch(sheet.open, cells);
  report(errors.length > 0 ? errors.map(sheet.diagnosticOf) : problems.map(inLine(name, text)), err);
  if (batch === null) return null;
  const said = [
    `rows replace ${names(batch.replaced)}`,
    ...(batch.kept.length > 0 ? [`as in the sheet: ${names(batch.kept)}`] : []),
    ...(batch.carried.length > 0 ? [`carried along: ${names(batch.carried)}`] : []),
  ];
  err.line(said.join('; '));
  return batch;
}

function names(all: readonly string[]): string {
  return visible(all.join(', '));
}

/** The line of the heads, and where each of them stands in it. */
function headLine(heads: readonly string[]): { readonly text: string; readonly cells: readonly RawCell[] } {
  let text = '';
  const cells = heads.map((head, i) => {
    if (i > 0) text += ',';
    const start = text.length;
    text += quoted(head);
    return { text: head.trim(), at: { start, end: text.length } };
  });
  return { text, cells };
}

function inLine(name: string, text: string): (problem: Problem) => Diagnostic {
  const line = source(name, text);
  return ({ at, severity, code, message, mends, places }) => ({
    source: line,
    at,
    severity,
    code,
    message,
    mends: mends.map((mend) => mend.title),
    places: places.map((place) => ({ source: line, at: place.at, label: place.label })),
  });
}
