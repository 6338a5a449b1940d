// The trade library as modules: read once, when a name is first asked for.
import type { Definition } from '../language/program.ts';
import { LIBRARY_SHEETS } from '../library/index.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import { calcCells, type Sheet } from '../sheet/sheet.ts';
import { type BuiltModule, buildModule, parseCell } from './module.ts';

export interface LibraryModule extends BuiltModule {
  readonly name: string;
  readonly sheet: Sheet;
}

interface Library {
  readonly modules: readonly LibraryModule[];
  /** What sheets see: functions and tables; entries of a library sheet are its examples and checks. */
  readonly names: ReadonlyMap<string, Definition>;
}

let loaded: Library | null = null;

export function library(): Library {
  loaded ??= load();
  return loaded;
}

function load(): Library {
  const names = new Map<string, Definition>();
  const modules = LIBRARY_SHEETS.map(({ name, text }) => {
    const sheet = readSheet(text);
    const cells = calcCells(sheet).map((cell) => parseCell(cell.text));
    return { name, sheet, ...buildModule('library', `${name}.ampwright.md`, cells, sheet.tables) };
  });
  for (const { module } of modules) {
    for (const [name, definition] of module.names) {
      if (definition.kind === 'table' || definition.item.statement.kind === 'function') names.set(name, definition);
    }
  }
  return { modules, names };
}
