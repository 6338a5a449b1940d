// Which values are shown as they were written: literals, cells, plain look-ups, counts and rounded values (F1).

import type { Checked, Display } from '../language/checked.ts';
import { RowValue } from '../language/compiler/values.ts';
import type { ColumnModel, Item } from '../language/program.ts';
import { countText, textWithPlaces } from '../units/number-text.ts';
import { fromSI } from '../units/quantity.ts';

/**
 * The number's text in the display unit, or null where it is computed. `value` is what the node came to (over a range of operation not
 * what is written), `row` the row that it was worked out for.
 */
export function writtenNumber(node: Checked, value: unknown, row: number | null = null): string | null {
  if (typeof value !== 'number') return null;
  switch (node.kind) {
    case 'constant':
      if (node.written === null || node.written === 'pi' || node.value !== value) return null;
      return value === 0 ? node.written.replace(/^-/, '') : node.written;
    case 'lets':
      return writtenNumber(node.body, value, row);
    case 'entry': {
      const plan = node.item.checked?.plan;
      return plan?.kind === 'value' && sameDisplay(plan.value.display, node.display) ? writtenNumber(plan.value, value) : null;
    }
    case 'cell':
      return cellText(node.column, node.display, value, node.row.kind === 'local' ? row : rowOf(node.row));
    case 'lookUp':
      return cellText(node.column, node.display, value, null);
    case 'builtin':
      return roundedText(node, value);
    default:
      return null;
  }
}

/** The texts that an item's value was written in, as one; null where it is computed. */
export function writtenText({ checked, slot: { value } }: Item): string | null {
  if (checked?.plan.kind !== 'value') return null;
  return Array.isArray(value) ? writtenNumbers(checked.plan.value, value).join(' ') : writtenNumber(checked.plan.value, value);
}

/** The same for the elements of a list. */
export function writtenNumbers(node: Checked, values: readonly unknown[]): readonly (string | null)[] {
  switch (node.kind) {
    case 'lets':
      return writtenNumbers(node.body, values);
    case 'list':
      return node.items.map((item, i) => (sameDisplay(item.display, node.display) ? writtenNumber(item, values[i]) : null));
    case 'entry': {
      const plan = node.item.checked?.plan;
      return plan?.kind === 'value' && sameDisplay(plan.value.display, node.display) ? writtenNumbers(plan.value, values) : [];
    }
    case 'column':
      return sameDisplay(node.column.display, node.display) ? (node.column.texts ?? []) : [];
    case 'cells': {
      const { cells, texts, display } = node.column;
      if (cells === null || texts === null || !sameDisplay(display, node.display)) return [];
      const byValue = new Map(cells.map((cell, i) => [cell, texts[i]!]));
      return values.map((value) => byValue.get(value) ?? null);
    }
    case 'builtin':
      return values.map((value) => (typeof value === 'number' ? roundedText(node, value) : null));
    default:
      return [];
  }
}

export function sameDisplay(a: Display, b: Display): boolean {
  if (a === b) return true;
  return a !== null && b !== null && a !== 'auto' && b !== 'auto' && a.text === b.text;
}

function rowOf(row: Checked): number | null {
  const value = row.kind === 'entry' ? row.item.slot.value : null;
  return value instanceof RowValue ? value.index : null;
}

function cellText(column: ColumnModel, display: Display, value: number, row: number | null): string | null {
  if (column.texts === null || column.cells === null || !sameDisplay(column.display, display)) return null;
  const place = row ?? column.cells.indexOf(value);
  return column.cells[place] === value ? (column.texts[place] ?? null) : null;
}

function roundedText(node: Extract<Checked, { kind: 'builtin' }>, value: number): string | null {
  const { name } = node.builtin;
  if (name === 'count') return countText(value);
  if (name !== 'round' && name !== 'ceil' && name !== 'floor') return null;
  const step = node.args[1];
  const unit = node.display === 'auto' ? null : node.display;
  if (step === undefined) return unit === null ? countText(value) : null;
  if (step.kind !== 'constant' || step.written === null || !sameDisplay(step.display, node.display)) return null;
  return textWithPlaces(fromSI(value, unit), step.written.split('.')[1]?.length ?? 0);
}
