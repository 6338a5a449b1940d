// Tables that changed, cell by cell.
import { printText } from '../../language/print.ts';
import type { Cell, Table, TableColumn } from '../../sheet/table.ts';
import { differenceFromSI, differenceUnit } from '../../units/quantity.ts';
import type { TableChange, ValueChange } from '../comparison.ts';
import { pairByName } from './pairing.ts';
import { matchRows, type RowPair } from './rows.ts';
import { changeOf, oneLine, type Pair, type Side, textsOf } from './side.ts';
import { cellMeaning, cellText, headText } from './table-meaning.ts';
import { differenceText } from './values.ts';

/** So many changed cells are kept of a table. */
const MOST_CELLS = 5000;

export function compareTables(pair: Pair): readonly TableChange[] {
  const { old, new: now, renames } = pair;
  return pairByName(old.evaluation.tables, now.evaluation.tables, ({ name }) => name, renames).flatMap(([before, after]) => {
    const change = tableChange(pair, before, after);
    return change === null ? [] : [change];
  });
}

function tableChange(pair: Pair, old: Table | null, now: Table | null): TableChange | null {
  const either = (now ?? old)!;
  const head = {
    change: changeOf(old, now),
    line: { old: old && lineOf(pair.old, old), new: now && lineOf(pair.new, now) },
    name: either.name,
    oldName: old && now && old.name !== now.name ? old.name : null,
    caption: textsOf(old && oneLine(old.caption), now && oneLine(now.caption)),
    source: textsOf(old && sourceOf(old), now && sourceOf(now)),
    path: textsOf(old?.path ?? null, now?.path ?? null),
  };
  if (old === null || now === null) return { ...head, columns: [], rows: [], cells: [], cellCount: 0, reordered: false };
  const { pairs, reordered } = matchRows(old, now);
  const columns = matchColumns(old, now, pairs);
  const cells = columns.flatMap(([before, after]) => (before && after ? changedCells(before, after, pairs) : []));
  const change: TableChange = {
    ...head,
    columns: columns.flatMap(columnChange),
    rows: pairs.flatMap((row) => rowChange(row, old, now)),
    cells: cells.slice(0, MOST_CELLS),
    cellCount: cells.length,
    reordered,
  };
  const { oldName, caption, source, path } = head;
  const same = [oldName, caption, source, path].every((one) => one === null) && !reordered && cells.length === 0;
  return same && change.columns.length === 0 && change.rows.length === 0 ? null : change;
}

type ColumnPair = readonly [TableColumn | null, TableColumn | null];

/** By name; a column that is gone and one that came with the same cells are one column under another name. */
function matchColumns(old: Table, now: Table, rows: readonly RowPair[]): readonly ColumnPair[] {
  // The first of several with one name counts.
  const [before, after] = [old, now].map(({ columns }) => new Map(columns.map((column) => [column.name, column] as const).reverse()));
  const both = rows.filter((row) => row.old !== null && row.new !== null);
  const cellsOf = ({ type, cells }: TableColumn, side: 'old' | 'new') =>
    JSON.stringify([type.kind, ...both.map((row) => cellMeaning(cells[row[side]!]!))]);
  const gone = new Set(old.columns.filter(({ name }) => !after!.has(name)));
  const alike = new Map<string, TableColumn[]>();
  for (const column of both.length > 0 ? [...gone].reverse() : []) {
    const key = cellsOf(column, 'old');
    const others = alike.get(key);
    if (others === undefined) alike.set(key, [column]);
    else others.push(column);
  }
  const pairs = now.columns.map((column): ColumnPair => {
    const named = before!.get(column.name);
    const moved = named ?? alike.get(cellsOf(column, 'new'))?.pop();
    if (moved) gone.delete(moved);
    return [moved ?? null, column];
  });
  return [...pairs, ...[...gone].map((column): ColumnPair => [column, null])];
}

function columnChange([old, now]: ColumnPair): TableChange['columns'] {
  const head = textsOf(old && headText(old), now && headText(now));
  if (head === null) return [];
  const renamed = old && now && old.name !== now.name ? old.name : null;
  return [{ name: (now ?? old)!.name, oldName: renamed, head }];
}

function rowChange({ old: i, new: j, label }: RowPair, old: Table, now: Table): TableChange['rows'] {
  if (i !== null && j !== null) return [];
  const [table, row] = j === null ? [old, i!] : [now, j];
  const text = table.columns.map((column) => cellText(column.cells[row]!, column) ?? '–').join(', ');
  return [{ change: j === null ? 'removed' : 'added', row: label, text }];
}

function changedCells(old: TableColumn, now: TableColumn, rows: readonly RowPair[]): TableChange['cells'] {
  return rows.flatMap((row) => {
    if (row.old === null || row.new === null || sameCell(old, now, row)) return [];
    return [{ row: row.label, column: now.name, value: cellChange(old, old.cells[row.old]!, now, now.cells[row.new]!) }];
  });
}

function sameCell(old: TableColumn, now: TableColumn, row: RowPair): boolean {
  return old.type.kind === now.type.kind && cellMeaning(old.cells[row.old!]!) === cellMeaning(now.cells[row.new!]!);
}

function cellChange(oldColumn: TableColumn, old: Cell, column: TableColumn, now: Cell): ValueChange {
  const texts = { old: cellText(old, oldColumn), new: cellText(now, column) };
  const none = { ...texts, absolute: null, relative: null };
  if (typeof old.value !== 'number' || typeof now.value !== 'number' || old.value === now.value) return none;
  const by = now.value - old.value;
  if (column.type.kind === 'date' && oldColumn.type.kind === 'date')
    return { ...texts, absolute: differenceText(by, ' d'), relative: null };
  if (column.type.kind !== 'number' || oldColumn.type.kind !== 'number') return none;
  const { unit } = column.type;
  if (unit.dimension !== oldColumn.type.unit.dimension) return none;
  const difference = differenceUnit(unit);
  const relative = old.value === 0 || unit.point || unit.text === '%' ? null : by / Math.abs(old.value);
  return { ...texts, absolute: differenceText(differenceFromSI(by, difference), difference), relative };
}

function sourceOf({ source }: Table): string | null {
  return source && `${source.kind} ${printText(oneLine(source.text))}`;
}

function lineOf(side: Side, { at }: Table): number {
  return side.lineAt(at.start);
}
