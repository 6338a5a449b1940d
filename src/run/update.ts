// After an edit of one calc cell: only what depends on it is checked, evaluated and shown again; equal to a fresh run.
import type * as ast from '../language/ast.ts';
import type { CheckedStatement } from '../language/checked.ts';
import { literalDimension } from '../language/checker/statements.ts';
import { RowValue } from '../language/compiler/values.ts';
import { Fault } from '../language/fault.ts';
import { parse } from '../language/parser.ts';
import type { Item } from '../language/program.ts';
import { typeKey } from '../language/type.ts';
import { Dual } from '../language/uncertainty/dual.ts';
import { calcCells } from '../sheet/sheet.ts';
import { findSymbol } from '../units/catalogue.ts';
import { checkItems } from './check-items.ts';
import { itemOf, labelOf, ownedName } from './module.ts';
import { evaluateOne, evaluationOrder, forgetReads, noteReads, type OpenSheet, openSheet, outsideProblems, reopen } from './open-sheet.ts';

/** Gives a calc cell new code. The numbers of the cells whose result is another one now. */
export function editCell(open: OpenSheet, number: number, code: string): ReadonlySet<number> {
  const cell = open.cells[number]!;
  if (cell.code === code) return new Set();
  const parsed = parse(code);
  const before = cell.items;
  const sameNames = definitions(before.map((i) => i.statement)) === definitions(parsed.statements);
  // Circles and double definitions point from one statement to places of others; what is wrong with a `use` was found when it was loaded.
  const misused = before.some(({ statement }) => statement.kind === 'use' && open.loaded.useProblems.get(statement)?.length);
  if (!sameNames || misused || open.circular || open.loaded.problems.size > 0) return reopen(open, number, { ...parsed, code });
  const { items, changed } = matchItems(open, number, cell.code, code, parsed.statements);
  for (const gone of before) if (!items.includes(gone)) forget(open, gone);
  open.loaded.parsed[number] = { ...parsed, code };
  open.loaded.cells[number] = items;
  cell.code = code;
  cell.items = items;
  cell.outside = outsideProblems(items, parsed.problems, open.loaded);
  cell.result = null;
  const checked = recheck(open, changed);
  if (checked === 'circle') return reopen(open, number, { ...parsed, code });
  const touched = reevaluate(open, new Set([...checked, ...items.filter((i) => !cell.runs.has(i))]));
  touched.add(number);
  return touched;
}

/** Gives the sheet another text. The numbers of the cells whose result may be another one now; null: all. */
export function editSheet(open: OpenSheet, text: string): ReadonlySet<number> | null {
  if (text === open.loaded.sheet.text && open.cells.every((cell, i) => cell.code === calcCells(open.loaded.sheet)[i]!.text))
    return new Set();
  Object.assign(open, openSheet(text, open.files));
  return null;
}

/**
 * What a cell defines, as one text: an edit that changes it is a new sheet. A name that is a unit as well counts with its dimension,
 * since it is warned of wherever the unit is joined to another (L4).
 */
function definitions(statements: readonly ast.Statement[]): string {
  return statements
    .flatMap((s) => {
      if (s.kind === 'use') return [`use ${s.path.value} ${s.names?.map((n) => n.name).join() ?? '*'}`];
      if (s.kind === 'column') return [`column ${labelOf(s)}`];
      const name = ownedName(s);
      if (name === null) return [];
      const unit = findSymbol(name.name) === undefined ? '' : (literalDimension(s)?.id ?? '');
      return [`${s.kind === 'function' || s.kind === 'instrument' ? s.kind : 'value'} ${name.name} ${unit}`];
    })
    .join('\n');
}

/** The cell's items after the edit: the same objects where the same thing is defined, with those that are to be checked again. */
function matchItems(open: OpenSheet, number: number, oldCode: string, code: string, statements: readonly ast.Statement[]) {
  const cell = open.cells[number]!;
  const known = new Map<string, Item[]>();
  for (const item of cell.items) known.set(keyOf(item.statement), [...(known.get(keyOf(item.statement)) ?? []), item]);
  const changed: Item[] = [];
  const items = statements.map((statement) => {
    const item = known.get(keyOf(statement))?.shift();
    if (item === undefined) {
      const made = itemOf(open.loaded.module, number, statement);
      changed.push(made);
      return made;
    }
    const text = (s: ast.Statement, of: string) => of.slice(s.at.start, s.at.end);
    const same = text(item.statement, oldCode) === text(statement, code);
    if (!same || item.statement.at.start !== statement.at.start || item.statement.broken !== statement.broken) changed.push(item);
    if (!same) item.made.length = 0;
    item.statement = statement;
    item.label = labelOf(statement);
    return item;
  });
  return { items, changed };
}

function keyOf(statement: ast.Statement): string {
  const name = ownedName(statement);
  return name === null ? `${statement.kind} ${labelOf(statement)}` : `name ${name.name}`;
}

function forget(open: OpenSheet, item: Item): void {
  forgetReads(open, item);
  open.readers.delete(item);
}

/**
 * Checks the items again, and who reads them where what they see has changed, each behind what it reads. All that were checked, or
 * that a circle was made.
 */
function recheck(open: OpenSheet, changed: readonly Item[]): ReadonlySet<Item> | 'circle' {
  const done = new Set<Item>();
  let batch: ReadonlySet<Item> = new Set(changed);
  while (batch.size > 0) {
    const different = checkAnew(open, batch, done);
    if (different === null) return 'circle';
    const visited = new Set(batch);
    const late = new Set<Item>();
    const reach = downstream(open, different);
    for (const item of evaluationOrder(reach, (i) => reach.has(i))) {
      if (visited.has(item)) continue;
      visited.add(item);
      if (!item.checked!.reads.some((read) => different.has(read))) continue;
      const own = checkAnew(open, [item], done);
      if (own === null) return 'circle';
      if (own.size === 0) continue;
      different.add(item);
      // What has come to read it only now, and was checked before it.
      for (const reader of open.readers.get(item) ?? []) if (visited.has(reader)) late.add(reader);
    }
    batch = late;
  }
  return done;
}

/** Checks the items; those that look different to their readers now, or null where a circle was made. */
function checkAnew(open: OpenSheet, items: Iterable<Item>, done: Set<Item>): Set<Item> | null {
  const before = new Map<Item, CheckedStatement | null>();
  for (const item of items) {
    before.set(item, item.checked);
    forgetReads(open, item);
    item.checked = null;
    item.evaluate = null;
    item.instances.clear();
    done.add(item);
  }
  checkItems(open.world, before.keys(), () => open.loaded.sheet.frontMatter.sources === 'required');
  const different = new Set<Item>();
  for (const [item, old] of before) {
    noteReads(open, item);
    if (isCircular(item.checked) || makesCircle(item, old) || countsTooMany(item.checked)) return null;
    if (looksDifferent(item, old)) different.add(item);
  }
  return different;
}

/** The items and all that read them, directly or not. */
function downstream(open: OpenSheet, items: Iterable<Item>): ReadonlySet<Item> {
  const reach = new Set(items);
  for (const item of reach) for (const reader of open.readers.get(item) ?? []) reach.add(reader);
  return reach;
}

function isCircular(checked: CheckedStatement | null): boolean {
  return checked?.problems.some((p) => p.code === 'circle' || p.code === 'recursion') ?? false;
}

/** Uses of functions are counted over all edits since the sheet was opened: the limit may be reached although the sheet keeps it. */
function countsTooMany(checked: CheckedStatement | null): boolean {
  return checked?.problems.some((p) => p.code === 'too-many-instances') ?? false;
}

/** Whether the item can be reached from what it has come to read. */
function makesCircle(item: Item, old: CheckedStatement | null): boolean {
  const seen = new Set<Item>();
  const stack = (item.checked?.reads ?? []).filter((read) => !old?.reads.includes(read));
  while (stack.length > 0) {
    const next = stack.pop()!;
    if (next === item) return true;
    if (seen.has(next)) continue;
    seen.add(next);
    for (const read of next.checked?.reads ?? []) stack.push(read);
  }
  return false;
}

/** A requirement looks into the conditions of the choices that it reads (D8). */
function isChoice({ plan }: CheckedStatement): boolean {
  return plan.kind === 'value' && plan.value.kind === 'choice';
}

/** Whether others must be checked again: functions, instruments and choices are seen whole, values by their type, unit and uncertainty. */
function looksDifferent(item: Item, old: CheckedStatement | null): boolean {
  const now = item.checked!;
  if (old === null || item.statement.kind === 'function' || item.statement.kind === 'instrument') return true;
  if (isChoice(old) || isChoice(now)) return true;
  const [a, b] = [old.signature, now.signature];
  const unit = (display: typeof a.display) => (display === null || display === 'auto' ? display : display.text);
  return (
    typeKey(a.type) !== typeKey(b.type) || unit(a.display) !== unit(b.display) || a.uncertain !== b.uncertain || old.failed !== now.failed
  );
}

/** Evaluates what was checked again, and on from there whatever reads a value that has changed. The cells that show something new. */
function reevaluate(open: OpenSheet, checked: ReadonlySet<Item>): Set<number> {
  const reach = downstream(open, checked);
  const moved = new Set<Item>();
  const touched = new Set<number>();
  const tables = new Set<string>();
  for (const item of evaluationOrder(reach, (i) => reach.has(i))) {
    if (!checked.has(item) && !isThroughout(item) && !item.checked?.reads.some((read) => moved.has(read))) continue;
    const { value, written } = item.slot;
    evaluateOne(open, item);
    const { slot } = item;
    if (!sameValue(value, slot.value) || written !== slot.written || slot.decisions !== undefined) moved.add(item);
    touched.add(item.cell);
    if (item.statement.kind === 'column') tables.add(item.statement.table.name);
  }
  for (const cell of tables.size === 0 ? [] : cellsWithRows(open, tables)) touched.add(cell);
  return touched;
}

/** A requirement over a range of operation goes by the formulas of what it reads, not by their values alone. */
function isThroughout({ checked }: Item): boolean {
  return checked?.plan.kind === 'requirement' && checked.plan.throughout.length > 0;
}

/** The cells with an entry that is a row of one of these tables: it is shown with all of the table's columns. */
function cellsWithRows(open: OpenSheet, tables: ReadonlySet<string>): readonly number[] {
  const isRow = ({ slot: { value } }: Item) => value instanceof RowValue && tables.has(value.table.name);
  return open.cells.flatMap((cell, number) => (cell.items.some(isRow) ? [number] : []));
}

/** Whether readers see the same. What is evaluated by shifting depends on formulas as well, not on values alone. */
function sameValue(a: unknown, b: unknown): boolean {
  if (a instanceof Dual && b instanceof Dual) {
    if (a.kink || b.kink || a.value !== b.value || a.inputs.length !== b.inputs.length) return false;
    return a.inputs.every((input, i) => input === b.inputs[i] && a.slopes[i] === b.slopes[i]);
  }
  if (Object.is(a, b)) return true;
  if (a instanceof RowValue && b instanceof RowValue) return a.table === b.table && a.index === b.index;
  if (Array.isArray(a) && Array.isArray(b)) return a.length === b.length && a.every((x, i) => sameValue(x, b[i]));
  return a instanceof Fault && b instanceof Fault;
}
