// Axes of a plot: scales, readable ticks and their numbers.
import { scaleLinear, scaleLog } from 'd3-scale';

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

/** A linear axis from `low` to `high` between the pixels `start` and `end`; `nice` rounds its ends to ticks. */
export function linearAxis(low: number, high: number, start: number, end: number, count: number, nice: boolean): Axis {
  const scale = scaleLinear().domain([low, high]).range([start, end]);
  if (nice) scale.nice(count);
  const values = scale.ticks(count);
  const step = values.length > 1 ? Math.abs(values[1]! - values[0]!) : 1;
  return { at: (v) => tenth(scale(v)), ticks: values.map((v) => ({ at: tenth(scale(v)), text: tickText(v, step) })) };
}

/** A logarithmic axis; numbers stand at the decades, and at 2 and 5 where there are few of them. */
export function logAxis(low: number, high: number, start: number, end: number, nice: boolean): Axis {
  const scale = scaleLog().domain([low, high]).range([start, end]);
  if (nice) scale.nice();
  const decades = Math.log10(high / low);
  const text = (v: number) => {
    const digit = Number(v.toExponential(0).split('e')[0]);
    return digit === 1 || (decades < 2.5 && (digit === 2 || digit === 5)) ? tickText(v, v) : '';
  };
  return { at: (v) => tenth(scale(v)), ticks: scale.ticks().map((v) => ({ at: tenth(scale(v)), text: text(v) })) };
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
