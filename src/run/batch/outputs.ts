// The columns that a row gets: every calculated entry in one unit for all rows, with its uncertainty where it has one.

import { rowLabel } from '../../language/compiler/row-conditions.ts';
import type { RowValue } from '../../language/compiler/values.ts';
import { Fault } from '../../language/fault.ts';
import { print } from '../../language/print.ts';
import type { Item } from '../../language/program.ts';
import { elementOf, type Type } from '../../language/type.ts';
import { best, Dual, type Uncertain } from '../../language/uncertainty/dual.ts';
import { dateText } from '../../text/date.ts';
import { withoutEnd } from '../../text/without-end.ts';
import { shortest } from '../../units/number-text.ts';
import { differenceFromSI, differenceUnit, fromSI } from '../../units/quantity.ts';
import { unitOf } from '../../units/read-unit.ts';
import type { Unit } from '../../units/unit.ts';
import { spreadAgain } from '../entry-result.ts';
import { unitFor } from '../shown.ts';
import { headText } from './columns.ts';
import type { RequirementStep } from './steps.ts';

/** A cell of the results: a number unrounded in the column's unit, a text, or nothing. */
export type Field = number | string | null;

export interface OutputColumn {
  readonly head: string;
  /** The cell, as the slots are now. */
  readonly field: () => Field;
}

/** The columns of an entry. Where its unit goes by size, the sheet's own value settles it for all rows. */
export function entryColumns(item: Item): readonly OutputColumn[] {
  const { type, display, uncertain } = item.checked!.signature;
  const { slot, label } = item;
  const unit = unitFor(elementOf(type), display, [slot.value].flat());
  const value = { head: headText(label, type, unit), field: () => fieldOf(slot.value, type, unit) };
  return uncertain && (type.is === 'quantity' || type.is === 'date') ? [value, uncertaintyColumn(item, type, unit)] : [value];
}

const DAY = unitOf('d');

/** The expanded uncertainty U, as results show it behind ±; 0 where the value is exact. */
function uncertaintyColumn(item: Item, type: Type, unit: Unit | null): OutputColumn {
  const { slot, label } = item;
  const spread = spreadAgain(item);
  const width = type.is === 'date' ? null : unit && differenceUnit(unit);
  const head = headText(`U_of_${label}`, { ...type, is: 'quantity' } as Type, type.is === 'date' ? DAY : width);
  const field = () => {
    const { value } = slot;
    if (typeof value === 'number') return 0;
    return value instanceof Dual ? differenceFromSI(spread(value, null).combined.expanded, width) : null;
  };
  return { head, field };
}

function fieldOf(value: unknown, type: Type, unit: Unit | null): Field {
  if (type.is === 'quantity') {
    if (typeof value === 'number') return fromSI(value, unit);
    return value instanceof Dual ? fromSI(value.value, unit) : null;
  }
  if (value instanceof Fault || value === undefined) return null;
  switch (type.is) {
    case 'date':
      return dateText(best(value as Uncertain));
    case 'text':
      return value as string;
    case 'yesno':
      return value === true ? 'yes' : 'no';
    case 'row': {
      const { table, index } = value as RowValue;
      return rowLabel(table, index);
    }
    case 'list':
      return `[${(value as readonly unknown[]).map((element) => elementText(fieldOf(element, type.of, unit), unit)).join(', ')}]`;
    default:
      return null;
  }
}

/** An element of a list, as the notation writes it. */
function elementText(field: Field, unit: Unit | null): string {
  if (typeof field !== 'number') return field ?? '–';
  return unit === null || unit.text === '' ? shortest(field) : `${shortest(field)} ${unit.text}`;
}

/** The status of every requirement, under a name that reads back as a table's: `shall_I_n_at_most_K_I_AC3`. */
export function requirementColumns(requirements: readonly RequirementStep[]): readonly OutputColumn[] {
  const used = new Map<string, number>();
  return requirements.map(({ item, status }) => {
    const name = nameOf(item);
    const times = (used.get(name) ?? 0) + 1;
    used.set(name, times);
    return { head: times === 1 ? name : `${name}_${times}`, field: status };
  });
}

const WORDS: readonly (readonly [RegExp, string])[] = [
  [/<=|≤/g, ' at most '],
  [/>=|≥/g, ' at least '],
  [/==/g, ' equals '],
  [/!=|≠/g, ' differs from '],
  [/</g, ' below '],
  [/>/g, ' above '],
];

function nameOf({ statement }: Item): string {
  if (statement.kind !== 'requirement') return '';
  const { force, condition, forEach } = statement;
  const text = `${force} ${print(condition)}${forEach === null ? '' : ` for each ${forEach.table.name}`}`;
  const inWords = WORDS.reduce((said, [sign, words]) => said.replace(sign, words), text);
  return withoutEnd(inWords.replace(/[^\p{L}\p{N}_]+/gu, '_'), '_');
}
