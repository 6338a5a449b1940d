// Loads a text as a module: its cells parsed, its tables read, the sheets that it uses loaded before it.

import type * as ast from '../language/ast.ts';
import { nameProblem } from '../language/problems/names.ts';
import { typeProblem } from '../language/problems/types.ts';
import type { Definition } from '../language/program.ts';
import { digest, type UsedFile } from '../sheet/digest.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import { calcCells, type Sheet } from '../sheet/sheet.ts';
import type { Table } from '../sheet/table.ts';
import type { Problem } from '../text/problem.ts';
import type { Span } from '../text/span.ts';
import { type FileAnswer, resolvePath, type SheetFiles, sameAnswer } from './files.ts';
import { type LinkedTable, linkedTables } from './linked-tables.ts';
import { type BuiltModule, buildModule, type ParsedCell, parseCell } from './module.ts';
import { useProblem } from './problems.ts';

/** How deep sheets may use each other (F10). */
const USE_DEPTH = 16;

/** A sheet ready to be checked. */
export interface Loaded extends BuiltModule {
  readonly sheet: Sheet;
  readonly path: string;
  readonly parsed: ParsedCell[];
  /** What its `use` statements found at each path. */
  readonly answers: ReadonlyMap<string, FileAnswer>;
  readonly linked: readonly LinkedTable[];
  /** All tables: of the sheet's text and of CSV files. */
  readonly tables: readonly Table[];
  /** What its own `use` statements bring, each once. */
  readonly brought: readonly Loaded[];
  /** What it uses, each once, deepest first. */
  readonly uses: readonly Loaded[];
  /** Problems of `use` statements, by the cell and the statement they stand in. */
  readonly useProblems: ReadonlyMap<ast.Use, readonly Problem[]>;
  /** Problems of CSV tables; those of the caption have their place in the sheet, those of cells in the CSV file. */
  readonly tableProblems: readonly { readonly problem: Problem; readonly path: string | null }[];
  /** Every file read by `use` or a table, with its digest. */
  readonly files: readonly UsedFile[];
}

interface Loading {
  readonly files: SheetFiles;
  /** Sheets being loaded, outermost first. */
  readonly open: readonly string[];
  readonly known: Map<string, Loaded>;
  readonly answers: Map<string, FileAnswer>;
  /** Numbers that modules had before, by path: they order sums. */
  readonly ids: ReadonlyMap<string, number>;
}

const loadingOf = (files: SheetFiles): Loading => ({ files, open: [], known: new Map(), answers: new Map(), ids: new Map() });

/** Loads a sheet from its text. */
export function loadSheet(text: string, files: SheetFiles): Loaded {
  return load('sheet', '', text, loadingOf(files));
}

/** The sheet with another text that has the same blocks, and its CSV files as they are now; what it uses stays. */
export function reread(loaded: Loaded, text: string, files: SheetFiles): Loaded {
  const sheet = text === loaded.sheet.text ? loaded.sheet : readSheet(text);
  return { ...loaded, ...textOf('sheet', sheet, linkedTables(sheet, loaded.path, files, loaded.linked), loaded.brought) };
}

/**
 * The sheet with the sheets that it uses as they are now; those that have not changed are the same objects. Null where a name has come
 * to mean another kind of thing: then all is to be loaded anew.
 */
export function renewUses(loaded: Loaded, files: SheetFiles): Loaded | null {
  const isOther = (path: string | null, answer: FileAnswer) => path !== null && !sameAnswer(files.read(path), answer);
  const isStale = ({ answers, linked }: Loaded) =>
    [...answers].some(([path, answer]) => isOther(path, answer)) || linked.some(({ path, answer }) => isOther(path, answer));
  const stale = loaded.uses.filter((used) => isStale(used) || isOther(used.path, used.sheet.text));
  if (stale.length === 0 && ![...loaded.answers].some(([path, answer]) => isOther(path, answer))) return loaded;
  // Whether sheets use each other in a circle, or too deep, depends on where one begins.
  const isKept = (used: Loaded) => !stale.includes(used) && !hasUseProblems(used);
  const kept = loaded.uses.filter((used) => [used, ...used.uses].every(isKept));
  const known = new Map(kept.map((used) => [used.path, used]));
  const ids = new Map(loaded.uses.map(({ path, module }) => [path, module.id]));
  const before = meanings(loaded);
  loaded.module.used.clear();
  const next = { ...loaded, ...loadUses(loaded, loaded.path, loaded.parsed, { ...loadingOf(files), known, ids }) };
  return before !== null && before === meanings(next) ? next : null;
}

const hasUseProblems = ({ useProblems }: Pick<Loaded, 'useProblems'>) => [...useProblems.values()].some((problems) => problems.length > 0);

/** What `use` brings: of which sheets, and what kind of thing each name means. Null where a `use` has problems. */
function meanings({ module, uses, useProblems }: Loaded): string | null {
  if (hasUseProblems({ useProblems })) return null;
  const kindOf = (definition: Definition) => (definition.kind === 'table' ? 'table' : definition.item.statement.kind);
  return JSON.stringify([uses.map(({ path }) => path), [...module.used].map(([name, definition]) => [name, kindOf(definition)])]);
}

/** The sheet with other code in one calc cell; everything else is as it was read. */
export function reloadSheet(loaded: Loaded, parsed: ParsedCell[], files: SheetFiles): Loaded {
  return assemble('sheet', '', loaded.sheet, parsed, loadingOf(files));
}

function load(kind: 'sheet' | 'used', path: string, text: string, loading: Loading): Loaded {
  const sheet = readSheet(text);
  const parsed = calcCells(sheet).map((cell) => parseCell(cell.text));
  return assemble(kind, path, sheet, parsed, loading);
}

function assemble(kind: 'sheet' | 'used', path: string, sheet: Sheet, parsed: ParsedCell[], loading: Loading): Loaded {
  const linked = linkedTables(sheet, path, loading.files);
  const built = buildModule(kind, path, parsed, allTables(sheet, linked), loading.ids.get(path));
  const used = loadUses(built, path, parsed, loading);
  return { ...built, ...textOf(kind, sheet, linked, used.brought), ...used, path, parsed };
}

/** Loads what the `use` statements of a module bring, and puts its names into the module. */
function loadUses(built: BuiltModule, path: string, parsed: readonly ParsedCell[], loading: Loading) {
  const brought: Loaded[] = [];
  const useProblems = new Map<ast.Use, Problem[]>();
  const statements = parsed.flatMap((cell) => cell.statements).filter((s) => s.kind === 'use');
  for (const statement of statements) {
    const problems: Problem[] = [];
    useProblems.set(statement, problems);
    const used = loadUsed(statement, path, loading, problems);
    if (used === null) continue;
    if (!brought.includes(used)) brought.push(used);
    bring(built, statement, used, problems);
  }
  return { brought, uses: [...new Set(brought.flatMap((u) => [...u.uses, u]))], useProblems, answers: loading.answers };
}

/** What there is to a sheet beside its blocks. */
function textOf(kind: 'sheet' | 'used', sheet: Sheet, linked: readonly LinkedTable[], brought: readonly Loaded[]) {
  const tables = allTables(sheet, linked);
  const tableProblems = [...linked.flatMap(({ problems }) => problems), ...sourceProblems(kind, sheet, tables)];
  return { sheet, linked, tables, tableProblems, files: filesRead(linked, brought) };
}

const allTables = (sheet: Sheet, linked: readonly LinkedTable[]) => [...sheet.tables, ...linked.map(({ table }) => table)];

function filesRead(linked: readonly LinkedTable[], brought: readonly Loaded[]): readonly UsedFile[] {
  const own = linked.flatMap(({ file }) => file ?? []);
  const used = brought.flatMap((u) => [...u.files, { path: u.path, digest: digestOf(u) }]);
  return [...new Map([...own, ...used].map((file) => [file.path, file])).values()];
}

const digests = new WeakMap<Loaded, string>();

function digestOf(used: Loaded): string {
  const found = digests.get(used) ?? digest(used.sheet.text, used.files);
  digests.set(used, found);
  return found;
}

/** A table without source is an input without source. */
function sourceProblems(kind: 'sheet' | 'used', sheet: Sheet, tables: readonly Table[]) {
  const code = kind === 'sheet' && sheet.frontMatter.sources === 'required' ? 'source-required' : 'no-source';
  const without = tables.filter((table) => table.source === null);
  return without.map(({ name, nameAt }) => ({ problem: typeProblem(code, nameAt, { name }), path: null }));
}

function loadUsed(statement: ast.Use, from: string, loading: Loading, problems: Problem[]): Loaded | null {
  const written = statement.path.value;
  const at = statement.path.at;
  if (statement.broken && written === '') return null;
  const path = resolvePath(from, written);
  if (path === null) return refuse(problems, at, written, 'a path is relative to the sheet, with "/" between folders');
  if (!path.endsWith('.ampwright.md')) return refuse(problems, at, written, 'a sheet is a file `*.ampwright.md`');
  const known = loading.known.get(path);
  if (known !== undefined) {
    loading.answers.set(path, known.sheet.text);
    return known;
  }
  const circle = loading.open.indexOf(path);
  if (circle !== -1) {
    problems.push(useProblem('use-circle', at, { paths: [...loading.open.slice(circle), path] }));
    return null;
  }
  if (loading.open.length >= USE_DEPTH) {
    problems.push(useProblem('use-depth', at, { limit: USE_DEPTH }));
    return null;
  }
  const text = loading.files.read(path);
  loading.answers.set(path, text);
  if (typeof text !== 'string') return refuse(problems, at, written, text.refused);
  const loaded = load('used', path, text, { ...loading, open: [...loading.open, path], answers: new Map() });
  loading.known.set(path, loaded);
  return loaded;
}

function refuse(problems: Problem[], at: Span, path: string, reason: string): null {
  problems.push(useProblem('use-refused', at, { path, reason }));
  return null;
}

/** Puts the used names into the module (N1): two sources for one name, and a name that is defined here too, are errors. */
function bring(built: BuiltModule, statement: ast.Use, used: Loaded, problems: Problem[]): void {
  const { module } = built;
  const names = statement.names ?? [...used.module.names.keys()].map((name) => ({ name, at: statement.path.at }));
  for (const { name, at } of names) {
    const definition = used.module.names.get(name);
    if (definition === undefined) {
      problems.push(useProblem('use-unknown', at, { name, path: statement.path.value }));
      continue;
    }
    const before = module.used.get(name);
    if (module.names.has(name)) {
      if (statement.names === null || module.names.get(name) !== definition)
        problems.push(nameProblem('used-and-defined', at, { name, path: statement.path.value }));
    } else if (before !== undefined && !sameDefinition(before, definition)) {
      problems.push(nameProblem('used-twice', at, { name, first: pathOf(before), second: used.path }));
    } else module.used.set(name, definition);
  }
}

function sameDefinition(a: Definition, b: Definition): boolean {
  return a.kind === 'table' ? b.kind === 'table' && a.table === b.table : b.kind === 'item' && a.item === b.item;
}

function pathOf(definition: Definition): string {
  return definition.kind === 'table' ? definition.table.module.path : definition.item.module.path;
}
