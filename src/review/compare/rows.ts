// Which row of a table is which in another version of it: by the column that names the rows, else by what stands in them.
import { diffArrays } from 'diff';
import type { Table, TableColumn } from '../../sheet/table.ts';
import { cellMeaning } from './table-meaning.ts';

/** A row on both sides, or on one (the other index is null). `label` is what the row is called. */
export interface RowPair {
  readonly old: number | null;
  readonly new: number | null;
  readonly label: string;
}

export interface MatchedRows {
  /** In the order of the new table; rows that are gone stand where they stood, as far as that can be told. */
  readonly pairs: readonly RowPair[];
  readonly reordered: boolean;
}

/** More edits than this are not looked for: rows then pair up by their number. */
const MOST_EDITS = 1000;

/** Pairs the rows of two versions of a table, by what names them, else by what stands in them. */
export function matchRows(old: Table, now: Table): MatchedRows {
  const of = known.get(old) ?? new WeakMap<Table, MatchedRows>();
  known.set(old, of);
  const naming = of.has(now) ? null : namingColumns(old, now);
  const matched = of.get(now) ?? (naming ? byName(naming, labels(old, old.rowCount), labels(now, now.rowCount)) : byContent(old, now));
  of.set(now, matched);
  return matched;
}

/** Each computed column asks for the rows of its table. */
const known = new WeakMap<Table, WeakMap<Table, MatchedRows>>();

/** Pairs so many rows by their number; `table` names them. */
export function matchRowsByNumber(table: Table | null, oldCount: number, newCount: number): MatchedRows {
  return { pairs: byNumber(oldCount, newCount, 0, 0, labels(table, Math.max(oldCount, newCount))), reordered: false };
}

/** The first column on both sides whose cells are all there and all different, as keys of the rows. */
function namingColumns(old: Table, now: Table): readonly [readonly string[], readonly string[]] | null {
  const key = ({ name, type }: TableColumn) => `${type.kind} ${name}`;
  const byKey = new Map(old.columns.map((column) => [key(column), column] as const).reverse());
  for (const column of now.columns) {
    const before = byKey.get(key(column));
    const [olds, news] = [before && uniqueKeys(before), uniqueKeys(column)];
    if (olds && news) return [olds, news];
  }
  return null;
}

function uniqueKeys({ cells }: TableColumn): readonly string[] | null {
  const keys = cells.map(cellMeaning);
  return cells.every(({ value }) => value !== null && value !== undefined && value !== '') && new Set(keys).size === keys.length
    ? keys
    : null;
}

function byName(
  [olds, news]: readonly [readonly string[], readonly string[]],
  oldLabels: readonly string[],
  newLabels: readonly string[],
): MatchedRows {
  const oldRows = new Map(olds.map((key, i) => [key, i]));
  const kept = new Set(news);
  const pairs = news.map((key, i): RowPair => ({ old: oldRows.get(key) ?? null, new: i, label: newLabels[i]! }));
  const gone = olds.flatMap((key, i): RowPair[] => (kept.has(key) ? [] : [{ old: i, new: null, label: oldLabels[i]! }]));
  const order = pairs.flatMap((pair) => (pair.old === null ? [] : [pair.old]));
  return { pairs: [...pairs, ...gone], reordered: order.some((row, i) => i > 0 && row < order[i - 1]!) };
}

/** Rows that read alike belong together; between them, rows pair up in their order. */
function byContent(old: Table, now: Table): MatchedRows {
  const [olds, news] = [rowTexts(old), rowTexts(now)];
  const parts = diffArrays([...olds], [...news], { maxEditLength: MOST_EDITS });
  if (parts === undefined) return matchRowsByNumber(now, olds.length, news.length);
  const names = labels(now, Math.max(olds.length, news.length));
  const pairs: RowPair[] = [];
  let [i, j] = [0, 0];
  let removed = 0;
  const settle = (added: number) => {
    pairs.push(...byNumber(removed, added, i - removed, j, names));
    removed = 0;
    j += added;
  };
  for (const part of parts) {
    const count = part.value.length;
    if (part.removed) {
      removed += count;
      i += count;
    } else if (part.added) settle(count);
    else {
      settle(0);
      pairs.push(...byNumber(count, count, i, j, names));
      i += count;
      j += count;
    }
  }
  settle(0);
  return { pairs, reordered: false };
}

function byNumber(oldCount: number, newCount: number, oldFrom: number, newFrom: number, names: readonly string[]): readonly RowPair[] {
  return Array.from({ length: Math.max(oldCount, newCount) }, (_, k) => ({
    old: k < oldCount ? oldFrom + k : null,
    new: k < newCount ? newFrom + k : null,
    label: (k < newCount ? names[newFrom + k] : undefined) ?? `row ${oldFrom + k + 1}`,
  }));
}

function rowTexts({ columns, rowCount }: Table): readonly string[] {
  return Array.from({ length: rowCount }, (_, row) => JSON.stringify(columns.map(({ cells }) => cellMeaning(cells[row]!))));
}

/** What rows are called: by the first column of texts, as in the results, else by their number. */
function labels(table: Table | null, count: number): readonly string[] {
  const naming = table?.columns.find(({ type }) => type.kind === 'text') ?? table?.columns.find((column) => uniqueKeys(column) !== null);
  return Array.from({ length: count }, (_, row) => naming?.cells[row]?.text || `row ${row + 1}`);
}
