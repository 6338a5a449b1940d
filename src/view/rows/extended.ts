// A table as the computed columns of a cell extend it: the columns that they read, then the columns themselves.
import { computedColumns } from '../../run/computed-columns.ts';
import type { ColumnResult, RowCell, Shown } from '../../run/result.ts';
import type { Unit } from '../../units/unit.ts';
import type { ExtendedView } from '../extended-view.ts';
import { numberText, quantityText, shownText, unitText } from '../math/quantity.ts';
import { symbol } from '../math/symbol.ts';
import type { RowContext } from './context.ts';

/** Rows that are shown; more are counted. */
const MOST = 500;

/** The table at the last of the cell's computed columns of it; null at the others, and where no column has values. */
export function extendedOf(of: ColumnResult, { cell, result, recorded }: RowContext): ExtendedView | null {
  const own = computedColumns(cell, of.table);
  if (own.at(-1) !== of) return null;
  const computed = own.filter((column) => column.values.length > 0);
  if (computed.length === 0) return null;
  const { labels } = computed[0]!;
  const [first = []] = result.rows(of.table, 1, () => true);
  const written = readColumns(own, first, cell.code);
  const label = labelColumn(first, labels);
  const shown = new Set(written);
  const rows = result.rows(of.table, MOST, (column) => shown.has(column)).map(valuesByColumn);
  const columns: Column[] = [
    ...written
      .filter((name) => name !== label)
      .map((name) =>
        columnOf(
          name,
          rows.map((row) => row.get(name) ?? null),
          [],
        ),
      ),
    ...computed.map((c) => columnOf(c.column, c.values.slice(0, MOST), recorded.column(c))),
  ];
  return {
    table: of.table,
    rows: labels.length,
    label: label ?? 'row',
    heads: columns.map((c, i) => ({ symbol: symbol(c.name), unit: unitText(c.unit), computed: i >= columns.length - computed.length })),
    lines: labels.slice(0, MOST).map((name, row) => ({
      label: name,
      cells: columns.map((c) => ({ text: cellText(c.values[row] ?? null, c.unit), was: c.were[row] ?? null })),
    })),
  };
}

// Columns of the table that are named in the statements, in the order of the table.
function readColumns(own: readonly ColumnResult[], row: readonly RowCell[], code: string): readonly string[] {
  const computed = new Set(own.map((column) => column.column));
  const named = new Set(own.flatMap(({ statement: { at } }) => code.slice(at.start, at.end).replace(TEXTS, '').match(NAMES) ?? []));
  return row.map((cell) => cell.column).filter((name) => named.has(name) && !computed.has(name));
}

const TEXTS = /"(?:[^"\\]|\\.)*(?:"|\\?$)/gs;
const NAMES = /[\p{L}_][\p{L}\p{N}_]*/gu;

// The column that the rows are called by.
function labelColumn(first: readonly RowCell[], labels: readonly string[]): string | null {
  return first.find(({ value }) => isLabel(value) && value?.short === labels[0])?.column ?? null;
}

// A column of quantities keeps its place among the others: its head has the unit.
function isLabel(value: Shown | null): boolean {
  return value !== null && (value.kind !== 'quantity' || value.unit === null);
}

function valuesByColumn(row: readonly RowCell[]): ReadonlyMap<string, Shown | null> {
  return new Map(row.map(({ column, value }) => [column, value]));
}

interface Column {
  readonly name: string;
  readonly values: readonly (Shown | null)[];
  readonly were: readonly (string | null)[];
  /** The unit of its first quantity, which stands in its head. */
  readonly unit: Unit | null;
}

function columnOf(name: string, values: readonly (Shown | null)[], were: readonly (string | null)[]): Column {
  const quantity = values.find((v) => v?.kind === 'quantity');
  return { name, values, were, unit: quantity?.kind === 'quantity' ? quantity.unit : null };
}

function cellText(shown: Shown | null, unit: Unit | null): string | null {
  if (shown === null) return null;
  if (shown.kind !== 'quantity') return shownText(shown);
  const same = (other: Unit | null) => unitText(other) === unitText(unit);
  const value = same(shown.unit) ? numberText(shown.number) : shownText(shown);
  if (shown.uncertainty === null) return value;
  const width = shown.uncertainty;
  return `${value} ±\u00A0${same(width.unit) ? numberText(width.number) : quantityText(width.number, width.unit)}`;
}
