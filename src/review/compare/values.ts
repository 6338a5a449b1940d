// The change of a value: both texts, the difference and what it is of the old value.
import type { Shown } from '../../run/result.ts';
import { numberText, percentText } from '../../units/number-text.ts';
import { differenceFromSI, differenceUnit } from '../../units/quantity.ts';
import { PLAIN_UNIT, type Unit } from '../../units/unit.ts';
import type { ValueChange } from '../comparison.ts';

type Quantity = Extract<Shown, { kind: 'quantity' }>;

/** As comparisons in the notation have it (grammar P4): what differs by less is the same value, calculated in another order. */
const TOLERANCE = 1e-9;
const DIGITS = 3;
const PARTS: ReadonlySet<string> = new Set(['%', 'ppm']);

/** The change from one value to another; null where they are the same. A side without value is null. */
export function valueChange(old: Shown | null, now: Shown | null): ValueChange | null {
  if (sameValue(old, now)) return null;
  const texts = { old: old?.text ?? null, new: now?.text ?? null };
  if (old?.kind === 'quantity' && now?.kind === 'quantity') return { ...texts, ...difference(old, now) };
  if (old?.kind === 'date' && now?.kind === 'date')
    return { ...texts, absolute: differenceText(now.days - old.days, ' d'), relative: null };
  if (old?.kind === 'list' && now?.kind === 'list') return { ...texts, absolute: null, relative: largest(old.items, now.items) };
  return { ...texts, absolute: null, relative: null };
}

/** Of pairs of values, the largest relative change; null where none has one. */
export function largest(old: readonly (Shown | null)[], now: readonly (Shown | null)[]): number | null {
  const changes = now.map((its, i) => valueChange(old[i] ?? null, its)?.relative ?? 0);
  const most = changes.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);
  return most === 0 ? null : most;
}

export function sameValue(old: Shown | null, now: Shown | null): boolean {
  if (old === null || now === null) return old === now;
  if (old.kind === 'quantity' && now.kind === 'quantity') {
    return isOfOneKind(old, now) && near(old.si, now.si) && near(old.uncertainty?.expanded ?? 0, now.uncertainty?.expanded ?? 0);
  }
  if (old.kind === 'list' && now.kind === 'list') {
    return old.count === now.count && old.items.every((item, i) => sameValue(item, now.items[i] ?? null));
  }
  return old.kind === now.kind && old.text === now.text;
}

function difference(old: Quantity, now: Quantity): Pick<ValueChange, 'absolute' | 'relative'> {
  if (!isOfOneKind(old, now) || near(old.si, now.si)) return { absolute: null, relative: null };
  const by = now.si - old.si;
  const unit = now.unit && differenceUnit(now.unit);
  const relative = old.si === 0 || old.unit?.point || PARTS.has(unit?.text ?? '') ? null : by / Math.abs(old.si);
  return { absolute: differenceText(differenceFromSI(by, unit), unit), relative };
}

/** One dimension, both points or both not, and no watts that became volt-amperes. */
function isOfOneKind(old: Quantity, now: Quantity): boolean {
  const [a, b] = [old.unit ?? PLAIN_UNIT, now.unit ?? PLAIN_UNIT];
  return a.dimension === b.dimension && a.point === b.point && (a.power ?? b.power) === (b.power ?? a.power);
}

/** Whether two numbers are one value (grammar P4). */
export function near(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= TOLERANCE * Math.max(Math.abs(a), Math.abs(b));
}

/** `+1.20 A`. A difference of percentages is one of points, so that nobody takes it for a relative change. */
export function differenceText(value: number, unit: Unit | string | null): string {
  const sign = value < 0 ? '' : '+';
  const text = typeof unit === 'string' || unit === null ? (unit ?? '') : unit.text === '%' ? ' points' : unit.text && ` ${unit.text}`;
  return `${sign}${numberText(value, DIGITS)}${text}`;
}

/** A relative change in percent, two digits: `+3.6 %`. */
export function percentChange(fraction: number): string {
  return `${fraction < 0 ? '' : '+'}${percentText(fraction)} %`;
}
