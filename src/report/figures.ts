// Figures of results for other programs: unrounded, in the unit that they are shown in.
import type { Entry } from '../language/ast.ts';
import type { Shown, Sides } from '../run/result.ts';
import { dateText } from '../text/date.ts';
import { differenceFromSI, differenceUnit } from '../units/quantity.ts';

/** A value as JSON has it: a number in its unit, a list as an array, texts and dates as texts. */
export type Figure = number | string | boolean | null | readonly Figure[];

/** The value, unrounded. */
export function jsonValue(shown: Shown): Figure {
  switch (shown.kind) {
    case 'quantity':
      return shown.value;
    case 'list':
      return shown.items.map(jsonValue);
    case 'yesno':
      return shown.value;
    case 'date':
      return dateText(shown.days);
    case 'text':
    case 'row':
      return shown.short;
    case 'table':
      return shown.table;
    default:
      return shown satisfies never;
  }
}

/** The unit's spelling in the notation; null for a plain number and for what has no unit. */
export function unitOf(shown: Shown): string | null {
  const unit = shown.kind === 'quantity' || shown.kind === 'list' ? shown.unit : null;
  return unit === null || unit.text === '' ? null : unit.text;
}

/** The expanded uncertainty in the unit of the value (of a difference where that is a point); null where exact; of a list, one an element. */
export function uncertaintyOf(shown: Shown): Figure {
  if (shown.kind === 'list') {
    const each = shown.items.map(uncertaintyOf);
    return each.every((u) => u === null) ? null : each;
  }
  if (shown.kind !== 'quantity' || shown.uncertainty === null) return null;
  return differenceFromSI(shown.uncertainty.expanded, shown.uncertainty.unit);
}

/** The slack in the unit of the sides, negative where the requirement fails on the best values; null where there is none. */
export function marginOf(sides: Sides): number | null {
  return sides.margin === '' || !Number.isFinite(sides.slack) ? null : inDifferences(sides.slack, sides.left);
}

/** U of the slack in the unit of the sides; null where both are exact. */
export function slackUncertaintyOf(sides: Sides): number | null {
  return sides.expanded > 0 ? inDifferences(sides.expanded, sides.left) : null;
}

function inDifferences(si: number, side: Shown): number {
  const unit = side.kind === 'quantity' ? side.unit : null;
  return differenceFromSI(si, unit && differenceUnit(unit));
}

/** Where an entry comes from, in the notation: `plate "M-12"`, `by DMM_7 on 2026-10-02`; null where it does not say. */
export function sourceText({ clauses, reading }: Entry): string | null {
  const by = reading && `by ${reading.instrument.name}${reading.on === null ? '' : ` on ${dateText(reading.on.days)}`}`;
  const from = clauses.source && `${clauses.source.kind} "${clauses.source.text.value}"`;
  return [from, by].filter((part) => part !== null).join(' ') || null;
}
