// The computed columns of a calc cell by the table that they extend, in the order of the cell.
import type { CellResult, ColumnResult } from './result.ts';

const known = new WeakMap<CellResult, ReadonlyMap<string, readonly ColumnResult[]>>();

/** The cell's computed columns of a table. They are sorted out once a cell, since each of many columns may ask for them all. */
export function computedColumns(cell: CellResult, table: string): readonly ColumnResult[] {
  const sorted = known.get(cell) ?? byTable(cell);
  known.set(cell, sorted);
  return sorted.get(table) ?? [];
}

function byTable(cell: CellResult): ReadonlyMap<string, readonly ColumnResult[]> {
  const found = new Map<string, ColumnResult[]>();
  for (const statement of cell.statements) {
    if (statement.kind !== 'column') continue;
    const columns = found.get(statement.table) ?? [];
    columns.push(statement);
    found.set(statement.table, columns);
  }
  return found;
}
