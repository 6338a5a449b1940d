// Register of tables: what each is and where it comes from, then each in full with the columns that the sheet computes.
import type { ColumnResult, Shown } from '../../run/result.ts';
import type { ColumnType, Table } from '../../sheet/table.ts';
import { writeHead } from '../../sheet/table-head.ts';
import { type Child, type ElementNode, element } from '../../view/node.ts';
import { type Register, type RegisterInput, table } from './register.ts';

/** Rows of a table that are shown; the rest is counted. */
const ROWS_SHOWN = 500;

export const tables: Register = {
  id: 'tables',
  title: 'Tables',
  make: (input) => {
    const lines = input.tables.map((t) => [
      t.name,
      t.caption,
      `${t.rowCount} rows, ${t.columns.length} columns`,
      t.path ?? '',
      t.source ? `${t.source.kind}: ${t.source.text}` : 'without a source',
    ]);
    if (lines.length === 0) return null;
    const extended = input.tables.flatMap((t) => extendedTable(t, input));
    return element('div', {}, table(['Table', 'Caption', 'Size', 'File', 'Source'], lines), ...extended);
  },
};

/** A table from a file, or one with computed columns, in full; one that stands in the text as it is needs no second place. */
function extendedTable(t: Table, { result }: RegisterInput): readonly ElementNode[] {
  const computed = result.cells
    .flatMap((cell) => cell.statements)
    .filter((s): s is ColumnResult => s.kind === 'column' && s.table === t.name && s.missing === null);
  if (computed.length === 0 && t.path === null) return [];
  const heads = [...t.columns.map((c) => headOf(c.name, unitOf(c.type))), ...computed.map((c) => headOf(c.column, c.unit?.text ?? null))];
  const rows = Array.from({ length: Math.min(t.rowCount, ROWS_SHOWN) }, (_, row): Child[] => [
    ...t.columns.map((c) => c.cells[row]?.text ?? ''),
    ...computed.map((c) => cellOf(c.values[row] ?? null)),
  ]);
  const more = t.rowCount > ROWS_SHOWN ? [element('p', {}, `… and ${t.rowCount - ROWS_SHOWN} more rows.`)] : [];
  const caption = computed.length === 0 ? t.name : `${t.name}, with computed columns ${computed.map((c) => c.column).join(', ')}`;
  return [
    element('div', { class: 'aw-scroll', tabindex: '0', role: 'group', 'aria-label': 'Table' }, table(heads, rows, caption)),
    ...more,
  ];
}

function headOf(name: string, unit: string | null): string {
  return unit === null ? name : writeHead(name, unit);
}

function unitOf(type: ColumnType): string | null {
  return type.kind === 'number' && type.unit.text !== '' ? type.unit.text : type.kind === 'date' ? 'date' : null;
}

/** The number alone where the head has the unit; a cell in error is a dash. */
function cellOf(value: Shown | null): string {
  if (value === null) return '–';
  if (value.kind !== 'quantity') return value.short;
  return value.uncertainty === null ? value.number : `${value.number} ± ${value.uncertainty.number}`;
}
