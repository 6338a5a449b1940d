// Rows that a sheet was run for, as CSV: the row's own fields as they came, what was calculated behind them.
import type { Field } from '../run/batch/outputs.ts';
import { field, quoted } from './csv.ts';

/** One line with its line end. There are as many own fields as the head has: missing ones are empty, surplus ones left out. */
export function batchLine(own: readonly string[], width: number, cells: readonly Field[]): string {
  const fields = new Array<string>(width + cells.length);
  for (let i = 0; i < width; i++) fields[i] = quoted(own[i] ?? '');
  for (let i = 0; i < cells.length; i++) fields[width + i] = field(cells[i]!);
  return `${fields.join(',')}\n`;
}
