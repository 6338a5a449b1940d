// How far a change reaches: what is to be checked again, and what then has to be evaluated since something that it reads has moved.
import type { CheckedStatement } from '../language/checked.ts';
import { RowValue } from '../language/compiler/values.ts';
import { Fault } from '../language/fault.ts';
import type { Item } from '../language/program.ts';
import { typeKey } from '../language/type.ts';
import { Dual } from '../language/uncertainty/dual.ts';
import { checkItems } from './check-items.ts';
import { evaluateOne, evaluationOrder, forgetReads, noteReads, type OpenSheet } from './open-sheet.ts';

/**
 * Checks the items again, and who reads them where what they see has changed, each behind what it reads. All that were checked, or
 * that a circle was made.
 */
export function recheck(open: OpenSheet, changed: Iterable<Item>): ReadonlySet<Item> | 'circle' {
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
    item.instances = null;
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
export function countsTooMany(checked: CheckedStatement | null): boolean {
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

/**
 * Evaluates what was checked again, and on from there whatever reads a value that has changed. The cells that show something new;
 * `reshaped` are names of tables whose data have changed.
 */
export function reevaluate(open: OpenSheet, checked: ReadonlySet<Item>, reshaped: Iterable<string> = []): Set<number> {
  const reach = downstream(open, checked);
  const moved = new Set<Item>();
  const touched = new Set<number>();
  const tables = new Set(reshaped);
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
