// The values of a computed column, row by row.
import type { ColumnResult, Shown } from '../../run/result.ts';
import type { EntryChange } from '../comparison.ts';
import { matchRows, matchRowsByNumber } from './rows.ts';
import type { Pair } from './side.ts';
import { largest, valueChange } from './values.ts';

/** What changed in a computed column; the whole column's value is null where nothing did. */
export function columnChange(pair: Pair, old: ColumnResult | null, now: ColumnResult | null): Pick<EntryChange, 'value' | 'cells'> {
  const [before, after] = [old?.values ?? [], now?.values ?? []];
  const texts = { old: old && listText(before), new: now && listText(after), absolute: null };
  if (old === null || now === null) return { value: { ...texts, relative: null }, cells: [] };
  const tables = { old: pair.old.tables.get(old.table), new: pair.new.tables.get(now.table) };
  const { pairs: rows } =
    tables.old && tables.new
      ? matchRows(tables.old, tables.new)
      : matchRowsByNumber(tables.new ?? tables.old ?? null, before.length, after.length);
  const both = rows.flatMap((row) =>
    row.old === null || row.new === null ? [] : [{ row: row.label, old: before[row.old] ?? null, new: after[row.new] ?? null }],
  );
  const cells = both.flatMap(({ row, old: was, new: is }) => {
    const value = valueChange(was, is);
    return value === null ? [] : [{ row, value }];
  });
  if (cells.length === 0 && before.length === after.length) return { value: null, cells };
  const relative = largest(
    both.map((row) => row.old),
    both.map((row) => row.new),
  );
  return { value: { ...texts, relative }, cells };
}

/** The first values, as a results block records a list. */
function listText(values: readonly (Shown | null)[]): string {
  const shown = values.slice(0, 8).map((value) => value?.short ?? '–');
  return `[${shown.join(', ')}${values.length > 8 ? `, … (${values.length} values)` : ''}]`;
}
