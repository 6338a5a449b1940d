// Tables as expressions see them: columns with types, cells as values, computed columns added.
import type { ColumnModel, Item, Module, TableModel } from '../language/program.ts';
import { DATE, TEXT, type Type, typeOfUnit, UNKNOWN } from '../language/type.ts';
import { Dual } from '../language/uncertainty/dual.ts';
import { Input, limitsSpread } from '../language/uncertainty/input.ts';
import type { Table, TableColumn } from '../sheet/table.ts';
import { MAX_COLUMNS, MAX_ROWS } from '../sheet/table-columns.ts';

/**
 * The model of a table that was read, the `place`-th of its text. Cells with `±` are inputs of their own (U1); those that stood just so
 * in the table as it was `before` are the same inputs.
 */
export function tableModel(module: Module, table: Table, place: number, before?: TableModel): TableModel {
  const columns = new Map<string, ColumnModel>();
  for (const [i, column] of table.columns.entries()) {
    const cells = before?.columns.get(column.name)?.cells ?? [];
    columns.set(column.name, columnModel(module, table, column, { table: place, column: i }, cells));
  }
  return {
    module,
    name: table.name,
    at: table.at,
    rowCount: table.rowCount,
    columns,
    order: [...columns.keys()],
    broken: table.broken ?? false,
  };
}

function columnModel(module: Module, table: Table, column: TableColumn, place: Place, before: readonly unknown[]): ColumnModel {
  const uncertain = column.cells.some((cell) => cell.bounds !== null);
  const cells = column.cells.map((cell, row) => {
    if (cell.bounds === null || typeof cell.value !== 'number') return cell.value;
    const { halfWidth } = cell.bounds;
    const order = orderOf(place, row);
    const known = before[row];
    if (known instanceof Dual && isSame(known.inputs[0]!, order, cell.value, halfWidth)) return known;
    const name = `${table.name}.${column.name}[${row + 1}]`;
    return new Input(name, { module, cell: -1 }, order, cell.value, limitsSpread(-halfWidth, halfWidth)).current;
  });
  const display = column.type.kind === 'number' && column.type.unit.text !== '' ? column.type.unit : null;
  const texts = column.cells.map((cell) => cell.text);
  return { name: column.name, type: typeOf(column), display, uncertain, cells, texts, item: null, broken: column.broken ?? false };
}

function isSame({ offset, nominal, spread }: Input, order: number, value: number, halfWidth: number): boolean {
  return offset === order && Object.is(nominal, value) && spread.limits?.high === halfWidth;
}

/** A column by the number of its table and its own in it. */
interface Place {
  readonly table: number;
  readonly column: number;
}

/** Cells by table, row and column, wherever the tables stand: text in front of one moves no sum. */
function orderOf({ table, column }: Place, row: number): number {
  return (table * (MAX_ROWS + 1) + row) * MAX_COLUMNS + column;
}

function typeOf(column: TableColumn): Type {
  if (column.broken) return UNKNOWN;
  switch (column.type.kind) {
    case 'text':
      return TEXT;
    case 'date':
      return DATE;
    case 'number':
      return typeOfUnit(column.type.unit.text === '' ? null : column.type.unit);
  }
}

/** The table with computed columns; a column of data keeps its name against a computed one (reported where that stands). */
export function addColumns(table: TableModel, computed: ReadonlyMap<string, Item>): TableModel {
  const columns = new Map(table.columns);
  for (const [name, item] of computed) {
    if (!columns.has(name))
      columns.set(name, { name, type: UNKNOWN, display: null, uncertain: false, cells: null, texts: null, item, broken: false });
  }
  return { ...table, columns };
}

/** Brings a model that others hold up to the table as it was read anew. */
export function renewTable(model: TableModel, table: Table, place: number): void {
  const { module, name } = model;
  Object.assign(model, addColumns(tableModel(module, table, place, model), module.columns.get(name) ?? new Map()));
}
