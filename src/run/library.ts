// The trade library as modules: a sheet of it is read when a name that it defines is first asked for.
import type { Definition, Module } from '../language/program.ts';
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

/** How a function and a table begin in the sheets of the library, always at the margin. */
const HEAD = /^(?:(\w+)\(|Table (\w+) —)/gm;

let heads: ReadonlyMap<string, number> | null = null;
const read: (LibraryModule | undefined)[] = [];

/** The number of the sheet that defines a name. */
function definingSheet(name: string): number | undefined {
  heads ??= new Map(
    LIBRARY_SHEETS.flatMap(({ text }, number) =>
      Array.from(text.matchAll(HEAD), ([, called, table]) => [called ?? table!, number] as const),
    ),
  );
  return heads.get(name);
}

/** Whether the library defines the name; no sheet is read for it. */
export function inLibrary(name: string): boolean {
  return definingSheet(name) !== undefined;
}

/** The function or table of the library that has the name. */
export function libraryDefinition(name: string): Definition | undefined {
  const number = definingSheet(name);
  return number === undefined ? undefined : libraryModule(number).module.names.get(name);
}

/** The modules that have been read so far. */
export function modulesRead(): readonly LibraryModule[] {
  return read.filter((module) => module !== undefined);
}

/** The library's module with its sheet. */
export function moduleRead(module: Module): LibraryModule | undefined {
  return read.find((one) => one?.module === module);
}

let whole: Library | null = null;

/** The whole library: for lists of what there is. */
export function library(): Library {
  whole ??= readWhole();
  return whole;
}

/** Reads one more sheet of the library, ahead of lists of it; false where all have been read. */
export function readAhead(): boolean {
  const number = LIBRARY_SHEETS.findIndex((_, i) => read[i] === undefined);
  if (number >= 0) libraryModule(number);
  return number >= 0;
}

function readWhole(): Library {
  const modules = LIBRARY_SHEETS.map((_, number) => libraryModule(number));
  const names = new Map<string, Definition>();
  for (const { module } of modules) {
    for (const [name, definition] of module.names) {
      if (definition.kind === 'table' || definition.item.statement.kind === 'function') names.set(name, definition);
    }
  }
  return { modules, names };
}

function libraryModule(number: number): LibraryModule {
  read[number] ??= readModule(number);
  return read[number];
}

function readModule(number: number): LibraryModule {
  const { name, text } = LIBRARY_SHEETS[number]!;
  const sheet = readSheet(text);
  const cells = calcCells(sheet).map((cell) => parseCell(cell.text));
  return { name, sheet, ...buildModule('library', `${name}.ampwright.md`, cells, sheet.tables, FIRST_ID + number) };
}

// Behind all used sheets, in one order whichever is read first: the order of modules orders sums.
const FIRST_ID = 1_000_000_000;
