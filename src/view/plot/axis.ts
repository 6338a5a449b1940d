// Axes of a plot: scales, readable ticks and their numbers.
import { nice, ticks } from 'd3-array';

/** One axis: where a number lies, and the numbers written beside it. */
export interface Axis {
  readonly at: (value: number) => number;
  readonly ticks: readonly Tick[];
}

export interface Tick {
  readonly at: number;
  /** '' for a tick without a number. */
  readonly text: string;
}

/** A linear axis from `low` to `high` between the pixels `start` and `end`; `rounded` widens it to whole ticks. */
export function linearAxis(low: number, high: number, start: number, end: number, count: number, rounded: boolean): Axis {
  const [from, to] = rounded ? nice(low, high, count) : [low, high];
  const at = (value: number) => tenth(start + between(value, from, to) * (end - start));
  const values = ticks(from, to, count);
  const step = values.length > 1 ? Math.abs(values[1]! - values[0]!) : 1;
  return { at, ticks: values.map((v) => ({ at: at(v), text: tickText(v, step) })) };
}

/** A logarithmic axis; numbers stand at the decades, and at 2 and 5 where there are few of them. */
export function logAxis(low: number, high: number, start: number, end: number): Axis {
  const [from, to] = [Math.log10(low), Math.log10(high)];
  const at = (value: number) => tenth(start + between(Math.log10(value), from, to) * (end - start));
  const decades = Array.from({ length: Math.floor(to) - Math.floor(from) + 1 }, (_, i) => Math.floor(from) + i);
  const digits = decades.length > 12 ? [1] : [1, 2, 3, 4, 5, 6, 7, 8, 9];
  const values = decades.flatMap((decade) => digits.map((digit) => ({ digit, value: Number(`${digit}e${decade}`) })));
  const numbered = (digit: number) => digit === 1 || (to - from < 2.5 && (digit === 2 || digit === 5));
  return {
    at,
    ticks: values
      .filter(({ value }) => value >= low && value <= high)
      .map(({ digit, value }) => ({ at: at(value), text: numbered(digit) ? tickText(value, value) : '' })),
  };
}

// 0 at `from`, 1 at `to`; halved before they are subtracted, since the largest numbers are too far apart.
function between(value: number, from: number, to: number): number {
  return from === to ? 0.5 : (value / 2 - from / 2) / (to / 2 - from / 2);
}

/** A tick's number, with as many places as the step between ticks has. */
export function tickText(value: number, step: number): string {
  const size = Math.max(Math.abs(value), Math.abs(step));
  if (size >= 1e6 || (value !== 0 && size < 1e-4)) return powerText(value);
  const places = Math.min(8, Math.max(0, -Math.floor(Math.log10(Math.abs(step)) + 1e-9)));
  return value
    .toFixed(places)
    .replace(/^-0(\.0*)?$/, '0$1')
    .replace('-', '−');
}

function powerText(value: number): string {
  if (value === 0) return '0';
  const [digits, power] = value.toExponential(2).split('e');
  const mantissa = String(Number(digits)).replace('-', '−');
  const raised = String(Number(power)).replace(/[-\d]/g, (c) => (c === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)]!));
  return mantissa === '1' ? `10${raised}` : `${mantissa}·10${raised}`;
}

function tenth(x: number): number {
  return Math.round(x * 10) / 10;
}
