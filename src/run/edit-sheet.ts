// After an edit of a sheet's text or of a file that it reads: only what depends on it is checked, evaluated and shown again.
import type { Ground, Item } from '../language/program.ts';
import { sameTable } from '../sheet/same-table.ts';
import { calcCells } from '../sheet/sheet.ts';
import { editCell } from './edit-cell.ts';
import { modulesRead } from './library.ts';
import { type Loaded, renewUses, reread } from './load.ts';
import { type OpenSheet, openSheet, outsideProblems, runLoaded } from './open-sheet.ts';
import { countsTooMany, recheck, reevaluate } from './reach.ts';
import { renewTable } from './table-model.ts';

/**
 * Gives the sheet another text, and its files as they are now. The numbers of the cells whose result may be another one; null: all,
 * since the sheet was run anew.
 */
export function editSheet(open: OpenSheet, text: string): ReadonlySet<number> | null {
  const touched = editAround(open, text);
  if (touched === null) {
    Object.assign(open, openSheet(text, open.files));
    return null;
  }
  for (const { number, text: code } of calcCells(open.loaded.sheet)) for (const other of editCell(open, number, code)) touched.add(other);
  return touched;
}

/** Takes over what stands outside the blocks. The numbers of the cells that it reaches; null where all has to be run anew. */
function editAround(open: OpenSheet, text: string): Set<number> | null {
  const { loaded, files } = open;
  const used = renewUses(loaded, files);
  const next = used && reread(used, text, files);
  if (next === null || outline(next) !== outline(loaded)) return null;
  const changed = next.tables.filter((table, place) => !sameTable(table, loaded.tables[place]!));
  const gone = loaded.uses.filter((one) => !next.uses.includes(one));
  if (changed.length + gone.length > 0 && open.circular) return null;
  open.loaded = next;
  const { tables } = next.module;
  for (const table of next.tables) tables.get(table.name)!.at = table.at;
  if (changed.length + gone.length === 0) return new Set();
  for (const table of changed) renewTable(tables.get(table.name)!, table, next.tables.indexOf(table));
  const users = gone.length === 0 ? [] : takeOverUses(open, gone);
  const grounds = [...changed.map(({ name }) => tables.get(name)!), ...gone.map(({ module }) => module)];
  const checked = users && recheck(open, standingOn(open, new Set<Ground>(grounds)));
  if (checked === null || checked === 'circle') return null;
  return new Set([...users!, ...reevaluate(open, checked, changed.map(({ name }) => name))]); // biome-ignore format: one line
}

/** Runs the sheets that have come in the place of `gone`. The numbers of the cells that use any; null where that takes a new run. */
function takeOverUses({ loaded, cells, world }: OpenSheet, gone: readonly Loaded[]): readonly number[] | null {
  for (const used of loaded.uses) if (used.cells.flat().some(({ checked }) => checked === null)) runLoaded(world, used);
  if (loaded.uses.some((used) => used.cells.flat().some(({ checked }) => countsTooMany(checked)))) return null;
  // As this sheet sees them, with its own columns, tables are made anew when they are met again.
  const { tables } = loaded.module;
  for (const [name, { module }] of tables) if (gone.some((one) => one.module === module)) tables.delete(name);
  return cells.flatMap((cell, number) => {
    const uses = cell.items.filter(({ statement }) => statement.kind === 'use');
    if (uses.length === 0) return [];
    cell.outside = outsideProblems(cell.items, loaded.parsed[number]!.problems, loaded);
    for (const item of uses) cell.results.delete(item);
    cell.result = null;
    return number;
  });
}

/** What can't change without a new run: how many blocks there are, what the tables are called, how numbers are shown. */
function outline({ sheet, tables }: Loaded): string {
  const { digits, sources } = sheet.frontMatter;
  return JSON.stringify([calcCells(sheet).length, digits, sources, tables.map(({ name }) => name)]);
}

/** The items that were checked against one of these; bodies of functions that were checked for rows of them are forgotten. */
function standingOn({ loaded, cells }: OpenSheet, changed: ReadonlySet<Ground>): readonly Item[] {
  const isOn = ({ grounds }: { readonly grounds: readonly Ground[] }) => grounds.some((ground) => changed.has(ground));
  const own = cells.flatMap((cell) => cell.items);
  for (const { instances } of [...own, ...[...loaded.uses, ...modulesRead()].flatMap((one) => one.cells.flat())])
    for (const [key, { found }] of instances ?? []) if (isOn(found)) instances!.delete(key);
  return own.filter(({ checked }) => checked !== null && isOn(checked));
}
