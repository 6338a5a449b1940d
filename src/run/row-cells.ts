// The cells of a chosen row, as they are shown.
import { cellReader, RowValue } from '../language/compiler/values.ts';
import { Fault } from '../language/fault.ts';
import type { ColumnModel, TableModel } from '../language/program.ts';
import { elementOf } from '../language/type.ts';
import type { RowCell } from './result.ts';
import { show } from './shown.ts';

/** Every column of the row in the table's order, computed ones behind; none where the value is no row. */
export function rowCells(value: unknown, digits: number, wanted: (column: string) => boolean = () => true): readonly RowCell[] {
  if (!(value instanceof RowValue)) return [];
  const { table, index } = value;
  return [...table.columns.values()]
    .filter(({ name }) => wanted(name))
    .map((column) => {
      const { type, display } = formOf(column);
      const cell = cellOf(value, column);
      const written = typeof cell === 'number' ? (column.texts?.[index] ?? null) : null;
      return { column: column.name, value: cell === undefined ? null : show(cell, type, display, { digits, written }) };
    });
}

/** The wanted cells of the first `count` rows of a table. */
export function tableRows(
  table: TableModel | undefined,
  count: number,
  wanted: (column: string) => boolean,
  digits: number,
): readonly (readonly RowCell[])[] {
  if (table === undefined) return [];
  return Array.from({ length: Math.min(count, table.rowCount) }, (_, index) => rowCells(new RowValue(table, index), digits, wanted));
}

function formOf(column: ColumnModel) {
  const signature = column.item?.checked?.signature;
  return signature ? { type: elementOf(signature.type), display: signature.display } : { type: column.type, display: column.display };
}

// Undefined: absent, unreadable or not calculated.
function cellOf({ table, index }: RowValue, column: ColumnModel): unknown {
  try {
    return cellReader(table, column, table.at)(index);
  } catch (fault) {
    if (fault instanceof Fault) return undefined;
    throw fault;
  }
}
