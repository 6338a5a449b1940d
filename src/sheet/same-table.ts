// Whether two readings of a table say the same, wherever it stands.
import type { Cell, Table, TableColumn } from './table.ts';

export function sameTable(a: Table, b: Table): boolean {
  if (a === b) return true;
  return (
    a.name === b.name &&
    a.rowCount === b.rowCount &&
    a.broken === b.broken &&
    a.columns.length === b.columns.length &&
    a.columns.every((column, i) => sameColumn(column, b.columns[i]!))
  );
}

function sameColumn(a: TableColumn, b: TableColumn): boolean {
  if (a.cells === b.cells && a.name === b.name) return true;
  return (
    a.name === b.name && a.broken === b.broken && typeOf(a) === typeOf(b) && a.cells.every((cell, row) => sameCell(cell, b.cells[row]!))
  );
}

const typeOf = ({ type }: TableColumn) => (type.kind === 'number' ? `in ${type.unit.text}` : type.kind);

/** A cell's text says it all, but in a row with too many or too few cells nothing is read. */
function sameCell(a: Cell, b: Cell): boolean {
  return a.text === b.text && Object.is(a.value, b.value);
}
