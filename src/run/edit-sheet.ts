// After an edit of a sheet's text or of a file that it reads: only what depends on it is checked, evaluated and shown again.
import type { Ground, Item } from '../language/program.ts';
import { sameTable } from '../sheet/same-table.ts';
import { calcCells } from '../sheet/sheet.ts';
import { editCell } from './edit-cell.ts';
import { library } from './library.ts';
import { type Loaded, reread, usesChanged } from './load.ts';
import { type OpenSheet, openSheet } from './open-sheet.ts';
import { recheck, reevaluate } from './reach.ts';
import { renewTable } from './table-model.ts';

/**
 * Gives the sheet another text, and its files as they are now. The numbers of the cells whose result may be another one; null: all,
 * since the sheet was run anew.
 */
export function editSheet(open: OpenSheet, text: string): ReadonlySet<number> | null {
  const touched = usesChanged(open.loaded, open.files) ? null : editTables(open, reread(open.loaded, text, open.files));
  if (touched === null) {
    Object.assign(open, openSheet(text, open.files));
    return null;
  }
  for (const { number, text: code } of calcCells(open.loaded.sheet)) for (const other of editCell(open, number, code)) touched.add(other);
  return touched;
}

/** Takes over what stands outside the blocks. The numbers of the cells that it reaches; null where all has to be run anew. */
function editTables(open: OpenSheet, next: Loaded): Set<number> | null {
  const { loaded } = open;
  if (outline(next) !== outline(loaded)) return null;
  const changed = next.tables.filter((table, place) => !sameTable(table, loaded.tables[place]!));
  if (changed.length > 0 && open.circular) return null;
  open.loaded = next;
  const { tables } = loaded.module;
  for (const table of next.tables) tables.get(table.name)!.at = table.at;
  if (changed.length === 0) return new Set();
  for (const table of changed) renewTable(tables.get(table.name)!, table, next.tables.indexOf(table));
  const checked = recheck(open, standingOn(open, new Set(changed.map(({ name }) => tables.get(name)!))));
  return checked === 'circle' ? null : reevaluate(open, checked, changed.map(({ name }) => name)); // biome-ignore format: one line
}

/** What can't change without a new run: how many blocks there are, what the tables are called, how numbers are shown. */
function outline({ sheet, tables }: Loaded): string {
  const { digits, sources } = sheet.frontMatter;
  return JSON.stringify([calcCells(sheet).length, digits, sources, tables.map(({ name }) => name)]);
}

/** The items that were checked against one of these; bodies of functions that were checked for rows of them are forgotten. */
function standingOn({ loaded, cells }: OpenSheet, changed: ReadonlySet<Ground>): readonly Item[] {
  const isOn = ({ grounds }: { readonly grounds: ReadonlySet<Ground> }) => [...grounds].some((ground) => changed.has(ground));
  const own = cells.flatMap((cell) => cell.items);
  for (const { instances } of [...own, ...[...loaded.uses, ...library().modules].flatMap((one) => one.cells.flat())])
    for (const [key, instance] of instances) if (isOn(instance)) instances.delete(key);
  return own.filter(({ checked }) => checked !== null && isOn(checked));
}
