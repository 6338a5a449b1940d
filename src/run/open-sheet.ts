// A sheet that has been run and can be edited: modules, items, who reads whom, and the results so far.
import type { World } from '../language/checker/context.ts';
import type { Run } from '../language/compiler/frame.ts';
import type { Item } from '../language/program.ts';
import type { Problem } from '../text/problem.ts';
import { checkItems } from './check-items.ts';
import type { SheetFiles } from './files.ts';
import { type Loaded, loadSheet, reloadSheet } from './load.ts';
import type { ParsedCell } from './module.ts';
import type { CellResult, StatementResult } from './result.ts';
import { runItem } from './run-item.ts';
import { statementResult } from './statement-result.ts';
import { problemsOfUse } from './used-problems.ts';
import { makeWorld } from './world.ts';
import { writtenText } from './written.ts';

export interface OpenSheet {
  readonly files: SheetFiles;
  world: World;
  loaded: Loaded;
  /** By calc cell. */
  cells: OpenCell[];
  /** Who reads an item directly. */
  readers: Map<Item, Set<Item>>;
  /** Whether definitions go in a circle somewhere: then any edit is a new run. */
  circular: boolean;
}

export interface OpenCell {
  code: string;
  items: readonly Item[];
  /** Problems of the cell's text and names, by item; those of no item under null. */
  outside: ReadonlyMap<Item | null, readonly Problem[]>;
  /** The last run of each item. */
  readonly runs: Map<Item, Run>;
  /** Results made of them so far. */
  readonly results: Map<Item, StatementResult>;
  /** The assembled result; null where something in the cell has changed since. */
  result: CellResult | null;
}

/** Loads, checks and runs a sheet. */
export function openSheet(text: string, files: SheetFiles): OpenSheet {
  const open: OpenSheet = { files, world: makeWorld(), loaded: loadSheet(text, files), cells: [], readers: new Map(), circular: false };
  runAll(open);
  return open;
}

/** Runs the whole sheet anew with other code in one cell. All cells may show something new. */
export function reopen(open: OpenSheet, number: number, cell: ParsedCell): ReadonlySet<number> {
  const parsed = open.loaded.parsed.map((p, i) => (i === number ? cell : p));
  open.loaded = reloadSheet(open.loaded, parsed, open.files);
  open.world = makeWorld();
  open.readers = new Map();
  runAll(open);
  return new Set(open.cells.keys());
}

function runAll(open: OpenSheet): void {
  const { loaded, world } = open;
  for (const used of loaded.uses) runLoaded(world, used);
  open.cells = loaded.cells.map((items, number) => {
    const { code, problems } = loaded.parsed[number]!;
    return { code, items, outside: outsideProblems(items, problems, loaded), runs: new Map(), results: new Map(), result: null };
  });
  const items = loaded.cells.flat();
  checkItems(world, items, () => loaded.sheet.frontMatter.sources === 'required');
  for (const item of items) noteReads(open, item);
  open.circular = items.some((i) => i.checked?.problems.some((p) => p.code === 'circle' || p.code === 'recursion'));
  for (const item of evaluationOrder(items, (i) => i.module === loaded.module || isNewLibraryItem(i))) evaluateOne(open, item);
}

/** Library items are run when they are first read, and keep their value. */
function isNewLibraryItem(item: Item): boolean {
  return item.module.kind === 'library' && item.slot.value === undefined && item.checked?.plan.kind !== 'nothing';
}

/** A used sheet is checked and run once; its errors are told where it is used. */
export function runLoaded(world: World, used: Loaded): void {
  const items = used.cells.flat();
  checkItems(world, items, () => false);
  for (const item of evaluationOrder(items, () => true)) runItem(item);
}

/** Runs one item; its result is made when it is asked for. What it reads has been run. */
export function evaluateOne(open: OpenSheet, item: Item): void {
  const run = runItem(item);
  if (item.module !== open.loaded.module) return;
  item.slot.written = writtenText(item);
  const cell = open.cells[item.cell]!;
  cell.runs.set(item, run);
  cell.results.delete(item);
  cell.result = null;
}

/** The result of an item of the sheet as its last run left it. */
export function resultOfItem(open: OpenSheet, item: Item): StatementResult {
  const cell = open.cells[item.cell]!;
  const known = cell.results.get(item);
  if (known !== undefined) return known;
  const made = statementResult(item, cell.outside.get(item) ?? [], cell.runs.get(item)!, open.loaded.sheet.frontMatter.digits);
  cell.results.set(item, made);
  return made;
}

/** Those of `items` and of what they read that are `wanted`, each behind what it reads. No recursion, however long the chain. */
export function evaluationOrder(items: Iterable<Item>, wanted: (item: Item) => boolean): readonly Item[] {
  const order: Item[] = [];
  const seen = new Set<Item>();
  const stack: { readonly item: Item; next: number }[] = [];
  const begin = (item: Item) => {
    if (seen.has(item) || !wanted(item)) return;
    seen.add(item);
    stack.push({ item, next: 0 });
  };
  for (const start of items) {
    begin(start);
    while (stack.length > 0) {
      const top = stack[stack.length - 1]!;
      const read = top.item.checked?.reads[top.next++];
      if (read !== undefined) begin(read);
      else {
        order.push(top.item);
        stack.pop();
      }
    }
  }
  return order;
}

export function noteReads(sheet: OpenSheet, item: Item): void {
  for (const read of item.checked?.reads ?? []) {
    const readers = sheet.readers.get(read) ?? new Set();
    sheet.readers.set(read, readers.add(item));
  }
}

export function forgetReads(sheet: OpenSheet, item: Item): void {
  for (const read of item.checked?.reads ?? []) {
    const readers = sheet.readers.get(read);
    if (readers?.delete(item) && readers.size === 0) sheet.readers.delete(read);
  }
}

/** Syntax and name problems by the item they stand in; what stands in none goes to null. */
export function outsideProblems(items: readonly Item[], syntax: readonly Problem[], loaded: Loaded): Map<Item | null, Problem[]> {
  const outside = new Map<Item | null, Problem[]>();
  const put = (item: Item | null, problem: Problem) => {
    const known = outside.get(item);
    if (known === undefined) outside.set(item, [problem]);
    else known.push(problem);
  };
  let next = 0;
  for (const problem of [...syntax].sort((a, b) => a.at.start - b.at.start)) {
    while (next < items.length && items[next]!.statement.at.end < problem.at.start) next++;
    const item = items[next];
    put(
      item !== undefined && item.statement.at.start <= problem.at.end && problem.at.start >= item.statement.at.start ? item : null,
      problem,
    );
  }
  for (const item of items) {
    for (const problem of loaded.problems.get(item) ?? []) put(item, problem);
    if (item.statement.kind === 'use') for (const problem of problemsOfUse(loaded, item.statement)) put(item, problem);
  }
  return outside;
}
