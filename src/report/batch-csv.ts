// Rows that a sheet was run for, as CSV: the row's own fields, what was calculated behind them; no text is a formula.
import type { Field } from '../run/batch/outputs.ts';
import { field } from './csv.ts';

/** One line with its line end. There are as many own fields as the head has: missing ones are empty, surplus ones left out. */
export function batchLine(own: readonly string[], width: number, cells: readonly Field[]): string {
  const fields = new Array<string>(width + cells.length);
  for (let i = 0; i < width; i++) fields[i] = field(own[i] ?? '');
  for (let i = 0; i < cells.length; i++) fields[width + i] = field(cells[i]!);
  return `${fields.join(',')}\n`;
}
