// Values as text (F1, F2, F6): in their display unit, with U to two digits where there is one, literals as written.

import type { Display } from '../language/checked.ts';
import { rowLabel } from '../language/compiler/row-conditions.ts';
import type { RowValue } from '../language/compiler/values.ts';
import { printText } from '../language/print.ts';
import type { TableModel } from '../language/program.ts';
import { elementOf, type Type } from '../language/type.ts';
import type { Combined } from '../language/uncertainty/combine.ts';
import { combined } from '../language/uncertainty/combine.ts';
import { best, Dual, type Uncertain } from '../language/uncertainty/dual.ts';
import { dateText } from '../text/date.ts';
import { displayUnit } from '../units/display-unit.ts';
import { coverageText, numberText, uncertainText } from '../units/number-text.ts';
import { differenceFromSI, differenceUnit, fromSI } from '../units/quantity.ts';
import type { Unit } from '../units/unit.ts';
import type { Shown, ShownUncertainty } from './result.ts';

/** Elements of a list that are shown (F6). */
const LIST_SHOWN = 8;

export interface ShowOptions {
  /** Significant digits of computed values. */
  readonly digits: number;
  /** The number's text where it is shown as written (F1): of a literal, a cell, a count. */
  readonly written?: string | null;
  /** The same for the elements of a list. */
  readonly writtenElements?: readonly (string | null)[];
  /** How the uncertainty of a Dual is found; first order where left out. */
  readonly spread?: (x: Dual, element: number | null) => { readonly combined: Combined; readonly shifted: boolean };
}

/** A value of a type as it is shown. */
export function show(value: unknown, type: Type, display: Display, options: ShowOptions): Shown {
  if (Array.isArray(value)) return showList(value, elementOf(type), display, options);
  switch (type.is) {
    case 'quantity':
      return showQuantity(value as Uncertain, unitFor(type, display, [value]), options, null);
    case 'date': {
      const text = dateText(best(value as Uncertain));
      return { kind: 'date', days: best(value as Uncertain), text, short: text };
    }
    case 'text':
      return { kind: 'text', text: printText(value as string), short: value as string };
    case 'yesno':
      return { kind: 'yesno', value: value as boolean, text: value ? 'yes' : 'no', short: value ? 'yes' : 'no' };
    case 'row': {
      const row = value as RowValue;
      const text = rowLabel(row.table, row.index);
      return { kind: 'row', table: row.table.name, index: row.index, text, short: text };
    }
    case 'table': {
      const table = value as TableModel;
      const text = `${table.rowCount} rows`;
      return { kind: 'table', table: table.name, rows: table.rowCount, text, short: text };
    }
    default:
      return { kind: 'text', text: '', short: '' };
  }
}

/** The display unit of values; chosen by the greatest magnitude where none is given. */
export function unitFor(type: Type, display: Display, values: readonly unknown[]): Unit | null {
  if (display !== 'auto') return display;
  if (type.is !== 'quantity') return null;
  const magnitude = values.reduce<number>((m, v) => Math.max(m, v instanceof Dual || typeof v === 'number' ? Math.abs(best(v)) : 0), 0);
  const unit = displayUnit(type.dimension, type.power, type.point, magnitude);
  return unit.text === '' ? null : unit;
}

export function showQuantity(
  x: Uncertain,
  unit: Unit | null,
  options: ShowOptions,
  element: number | null,
): Extract<Shown, { kind: 'quantity' }> {
  const si = best(x);
  const value = fromSI(si, unit);
  const uncertainty = x instanceof Dual ? showUncertainty(x, value, unit, options, element) : null;
  const number = uncertainty?.value ?? options.written ?? numberText(value, options.digits);
  const short = unit === null ? number : `${number} ${unit.text}`;
  if (uncertainty === null) return { kind: 'quantity', si, value, unit, number, uncertainty: null, short, text: short };
  const { shown } = uncertainty;
  const half = shown.unit === null ? shown.number : `${shown.number} ${shown.unit.text}`;
  const coverage = shown.k === null ? '' : ` (k=${coverageText(shown.k)}${shown.nu === null ? '' : `, nu=${shown.nu}`})`;
  return { kind: 'quantity', si, value, unit, number, uncertainty: shown, short, text: `${short} ± ${half}${coverage}` };
}

function showUncertainty(
  x: Dual,
  value: number,
  unit: Unit | null,
  options: ShowOptions,
  element: number | null,
): { value: string; shown: ShownUncertainty } | null {
  const spread = options.spread?.(x, element) ?? { combined: combined(x), shifted: false };
  const { standard, expanded, k, nu } = spread.combined;
  if (!(expanded > 0)) return null;
  const difference = unit === null ? null : differenceUnit(unit);
  const texts = uncertainText(value, differenceFromSI(expanded, difference));
  return { value: texts.value, shown: { standard, expanded, k, nu, number: texts.U, unit: difference, shifted: spread.shifted } };
}

function showList(values: readonly unknown[], type: Type, display: Display, options: ShowOptions): Shown {
  const unit = unitFor(type, display, values);
  const items = values.map((v, i) =>
    type.is === 'quantity'
      ? showQuantity(v as Uncertain, unit, { ...options, written: options.writtenElements?.[i] ?? null }, i)
      : show(v, type, display, options),
  );
  const first = items.slice(0, LIST_SHOWN);
  const more = values.length > LIST_SHOWN ? `, … (${values.length} values)` : '';
  return {
    kind: 'list',
    count: values.length,
    items,
    unit,
    text: `[${first.map((i) => i.text).join(', ')}${more}]`,
    short: `[${first.map((i) => i.short).join(', ')}${more}]`,
  };
}
