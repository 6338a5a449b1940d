// Results of entries and computed columns.

import type * as ast from '../language/ast.ts';
import type { Checked } from '../language/checked.ts';
import { isInput } from '../language/checker/entries.ts';
import type { ChoiceFound } from '../language/compiler/choices.ts';
import type { Run } from '../language/compiler/frame.ts';
import { rowLabel } from '../language/compiler/row-conditions.ts';
import { Fault } from '../language/fault.ts';
import type { Item } from '../language/program.ts';
import { elementOf } from '../language/type.ts';
import type { Dual, Uncertain } from '../language/uncertainty/dual.ts';
import { evaluateRaw } from './evaluate-item.ts';
import type { ChoiceReport, ColumnResult, EntryResult, Missing, Shown } from './result.ts';
import type { Base } from './result-base.ts';
import { spreadOf } from './shifting.ts';
import { type ShowOptions, show, showQuantity, unitFor } from './shown.ts';
import { writtenNumber, writtenNumbers } from './written.ts';

export function entryResult(item: Item, statement: ast.Entry, base: Base, run: Run, digits: number): EntryResult {
  const { checked } = item;
  const plan = checked?.plan;
  const value = item.slot.value;
  const missing = missingOf(item, value);
  const shown =
    missing === null && plan?.kind === 'value'
      ? show(value, plan.value.type, plan.value.display, { digits, ...asWritten(plan.value, value), spread: spreadAgain(item) })
      : null;
  const outer = plan?.kind === 'value' ? bodyOf(plan.value) : null;
  const role = isInput(statement) ? 'input' : outer?.kind === 'choice' ? 'choice' : outer?.kind === 'root' ? 'root' : 'computed';
  return {
    kind: 'entry',
    cell: base.cell,
    problems: base.problems,
    reads: base.reads,
    statement,
    name: statement.name.name,
    role,
    value: shown,
    missing,
    choice: role === 'choice' && run.choice !== null ? choiceReport(run.choice) : null,
  };
}

function asWritten(node: Checked, value: unknown): Pick<ShowOptions, 'written' | 'writtenElements'> {
  return Array.isArray(value) ? { writtenElements: writtenNumbers(node, value) } : { written: writtenNumber(node, value) };
}

/** The uncertainty of an item's value, or of one of its elements, by evaluating the item again with shifted inputs. */
export function spreadAgain(item: Item) {
  return (x: Dual, element: number | null) =>
    spreadOf(item, x, (run) => {
      const value = evaluateRaw(item, run);
      return (element === null ? value : (value as readonly unknown[])[element]) as Uncertain;
    });
}

function bodyOf(node: Checked): Checked {
  return node.kind === 'lets' ? bodyOf(node.body) : node;
}

/** Why there is no value; null where there is one. */
export function missingOf(item: Item, value: unknown): Missing | null {
  if (!(value instanceof Fault) && item.checked !== null && !item.checked.failed) return null;
  const own = [...(item.checked?.problems ?? []), ...item.runProblems].some((p) => p.severity === 'error') || item.statement.broken;
  if (own) return { kind: 'error' };
  const reads = (item.checked?.reads ?? []).filter((read) => read.slot.value instanceof Fault || read.checked?.failed);
  const because = [...reads.map((read) => read.label), ...(item.checked?.lost ?? [])];
  if (because.length === 0 && value instanceof Fault && value.needs !== null && value.needs !== item.label) because.push(value.needs);
  return because.length === 0 ? { kind: 'error' } : { kind: 'not calculated', because };
}

function choiceReport(found: ChoiceFound): ChoiceReport {
  const { table, row, ruledOut, ties, undecided } = found;
  const next =
    undecided === null
      ? null
      : { nextRow: undecided === -1 ? null : undecided, nextText: undecided === -1 ? null : rowLabel(table, undecided) };
  return { table: table.name, row, rows: table.rowCount, ruledOut, ties, undecided: next };
}

export function columnResult(item: Item, statement: ast.ComputedColumn, base: Base, digits: number): ColumnResult {
  const { checked } = item;
  const cells = item.slot.value;
  const missing = missingOf(item, cells);
  const names = { table: statement.table.name, column: statement.column.name };
  if (missing !== null || checked?.plan.kind !== 'column' || !Array.isArray(cells)) {
    return { ...base, ...names, kind: 'column', statement, unit: null, values: [], labels: [], missing };
  }
  const type = elementOf(checked.signature.type);
  const sound = cells.filter((cell) => !(cell instanceof Fault));
  const unit = unitFor(type, checked.signature.display, sound);
  const { value, table } = checked.plan;
  const values = cells.map((cell: unknown, row): Shown | null => {
    if (cell instanceof Fault) return null;
    const options = { digits, written: writtenNumber(value, cell, row), spread: spreadAgain(item) };
    return type.is === 'quantity' ? showQuantity(cell as Uncertain, unit, options, row) : show(cell, type, unit, options);
  });
  const labels = cells.map((_, row) => rowLabel(table, row));
  return { ...base, ...names, kind: 'column', statement, unit, values, labels, missing: null };
}
