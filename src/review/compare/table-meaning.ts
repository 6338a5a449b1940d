// What a table means cell by cell: values with their limits, whatever they are written like.
import type { Cell, ColumnType, Table, TableColumn } from '../../sheet/table.ts';

/** What a cell means; two cells with the same meaning are the same. */
export function cellMeaning({ value, text, bounds }: Cell): string {
  if (value === undefined) return `? ${text}`;
  const known = typeof value === 'string' ? value.normalize('NFC').replace(/\s+/g, ' ').trim() : value;
  return JSON.stringify([known, bounds?.halfWidth ?? null]);
}

/** A column's head as it is written: `I_AC3 / A`. */
export function headText({ name, type }: TableColumn): string {
  return `${name}${typeText(type)}`;
}

function typeText(type: ColumnType): string {
  if (type.kind === 'number') return ` / ${type.unit.text === '' ? '1' : type.unit.text}`;
  return type.kind === 'date' ? ' / date' : '';
}

/** A cell as it reads with its unit: `38 A`; null where it is absent. */
export function cellText({ text, value }: Cell, { type }: TableColumn): string | null {
  if (value === null) return null;
  return type.kind === 'number' && type.unit.text !== '' ? `${text} ${type.unit.text}` : text;
}

/** All of a table but its name, caption and source. */
export function tableMeaning({ columns, rowCount }: Table): string {
  return JSON.stringify([rowCount, columns.map((column) => [headText(column), column.cells.map(cellMeaning)])]);
}
