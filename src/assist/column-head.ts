// A column's head as it is written: its name and its unit.

import type { ColumnModel } from '../language/program.ts';
import { elementOf } from '../language/type.ts';
import { writeHead } from '../sheet/table-head.ts';

/** `I_AC3 / A`, `type`, `installed / date`. A computed column has the unit that it is calculated in. */
export function columnHead(column: ColumnModel): string {
  const signature = column.item?.checked?.signature;
  const type = signature ? elementOf(signature.type) : column.type;
  if (type.is === 'date') return `${column.name} / date`;
  const display = signature ? signature.display : column.display;
  const unit = display === 'auto' || display === null ? '' : display.text;
  if (type.is !== 'quantity') return column.name;
  if (unit === '') return column.name;
  return writeHead(column.name, unit);
}
