// A sheet that has been run and can be edited: modules, items, who reads whom, and the results so far.
import type { World } from '../language/checker/context.ts';
import type { Run } from '../language/compiler/frame.ts';
import type { Item } from '../language/program.ts';
import type { Problem } from '../text/problem.ts';
import { checkItems } from './check-items.ts';
import type { SheetFiles } from './files.ts';
import { type Loaded, loadSheet } from './load.ts';
import { useProblem } from './problems.ts';
import type { CellResult, StatementResult } from './result.ts';
import { runItem } from './run-item.ts';
import { statementResult } from './statement-result.ts';
import { makeWorld } from './world.ts';

export interface OpenSheet {
  readonly files: SheetFiles;
  readonly world: World;
  readonly loaded: Loaded;
  /** By calc cell. */
  readonly cells: OpenCell[];
  /** Who reads an item directly. */
  readonly readers: Map<Item, Set<Item>>;
}

export interface OpenCell {
  code: string;
  items: readonly Item[];
  /** Problems of the cell's text and names, by item; those of no item under null. */
  outside: ReadonlyMap<Item | null, readonly Problem[]>;
  results: Map<Item, StatementResult>;
  /** The assembled result; null where something in the cell has changed since. */
  result: CellResult | null;
}

/** Loads, checks and runs a sheet. */
export function openSheet(text: string, files: SheetFiles): OpenSheet {
  const loaded = loadSheet(text, files);
  const world = makeWorld();
  const sheet: OpenSheet = { files, world, loaded, cells: [], readers: new Map() };
  for (const used of loaded.uses) runLoaded(world, used);
  loaded.cells.forEach((items, number) => {
    const { code, problems } = loaded.parsed[number]!;
    const outside = outsideProblems(items, problems, loaded);
    sheet.cells.push({ code, items, outside, results: new Map(), result: null });
  });
  const items = loaded.cells.flat();
  checkItems(world, items, () => loaded.sheet.frontMatter.sources === 'required');
  for (const item of items) noteReads(sheet, item);
  evaluate(sheet, items);
  return sheet;
}

/** A used sheet is checked and run once; its errors are told where it is used. */
function runLoaded(world: World, used: Loaded): void {
  const items = used.cells.flat();
  checkItems(world, items, () => false);
  for (const item of evaluationOrder(items, () => true)) runItem(item);
}

/** Runs items in the order of their dependencies and keeps their results; library items that they read are run when first read. */
export function evaluate(sheet: OpenSheet, items: readonly Item[]): void {
  const wanted = new Set(items);
  const order = evaluationOrder(items, (item) => wanted.has(item) || (item.module.kind === 'library' && item.slot.value === undefined));
  const runs = new Map<Item, Run>();
  for (const item of order) runs.set(item, runItem(item));
  const { digits } = sheet.loaded.sheet.frontMatter;
  for (const item of items) {
    const cell = sheet.cells[item.cell]!;
    cell.results.set(item, statementResult(item, cell.outside.get(item) ?? [], runs.get(item)!, digits));
    cell.result = null;
  }
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
  for (const read of item.checked?.reads ?? []) sheet.readers.get(read)?.delete(item);
}

/** Syntax and name problems by the item they stand in; what stands in none goes to null. */
export function outsideProblems(items: readonly Item[], syntax: readonly Problem[], loaded: Loaded): Map<Item | null, Problem[]> {
  const outside = new Map<Item | null, Problem[]>();
  const put = (item: Item | null, problem: Problem) => outside.set(item, [...(outside.get(item) ?? []), problem]);
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
    if (item.statement.kind !== 'use') continue;
    for (const problem of loaded.useProblems.get(item.statement) ?? []) put(item, problem);
    const path = item.statement.path.value;
    const used = loaded.uses.find((u) => u.path.endsWith(path.replace(/^(\.\.?\/)+/, '')));
    const errors = used === undefined ? [] : errorsOf(used);
    if (errors.length > 0)
      put(item, useProblem('use-errors', item.statement.path.at, { path, count: errors.length, first: errors[0]!.message }));
  }
  return outside;
}

/** The errors of a used sheet. */
export function errorsOf(used: Loaded): readonly Problem[] {
  const items = used.cells.flat();
  const found = [
    ...used.sheet.problems,
    ...used.parsed.flatMap((cell) => cell.problems),
    ...items.flatMap((item) => [...(item.checked?.problems ?? []), ...item.runProblems]),
  ];
  return found.filter((p) => p.severity === 'error');
}
