// The small scale of a requirement: where the value lies against its limit, and how far its uncertainty reaches.
import type { GaugeView } from './model.ts';
import { type ElementNode, element } from './node.ts';

const WIDTH = 150;
const HEIGHT = 40;
const AXIS = 26;
const EDGE = 6;

/** The drawing; its words say the same for a reader who does not see it. */
export function gauge(view: GaugeView): ElementNode {
  const range = rangeOf(view);
  const at = (value: number) => round(EDGE + ((value - range.from) / (range.to - range.from)) * (WIDTH - 2 * EDGE));
  const limit = at(view.limit);
  const value = at(view.value);
  const out = view.allowed === 'below' ? { x: limit, width: WIDTH - EDGE - limit } : { x: EDGE, width: limit - EDGE };
  const side = view.value === view.limit ? 'at' : view.value < view.limit ? 'below' : 'above';
  const anchor = limit < 40 ? 'start' : limit > WIDTH - 40 ? 'end' : 'middle';
  return element(
    'svg',
    {
      class: 'aw-gauge',
      viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
      width: WIDTH,
      height: HEIGHT,
      role: 'img',
      'aria-label': `${view.valueText}, ${side} the limit ${view.limitText}`,
    },
    element('rect', { class: 'aw-gauge-out', x: out.x, y: AXIS - 8, width: Math.max(0, round(out.width)), height: 16 }),
    element('line', { class: 'aw-gauge-axis', x1: EDGE, y1: AXIS, x2: WIDTH - EDGE, y2: AXIS }),
    range.zero !== null && element('line', { class: 'aw-gauge-axis', x1: at(range.zero), y1: AXIS - 4, x2: at(range.zero), y2: AXIS + 4 }),
    range.zero === null && element('path', { class: 'aw-gauge-break', d: `M${EDGE + 5} ${AXIS + 4}l3-8M${EDGE + 9} ${AXIS + 4}l3-8` }),
    view.width > 0 && band(at(view.value - view.width), at(view.value + view.width)),
    element('line', { class: 'aw-gauge-limit', x1: limit, y1: AXIS - 11, x2: limit, y2: AXIS + 11 }),
    element('polygon', {
      class: 'aw-gauge-value',
      points: `${value},${AXIS - 6} ${round(value + 3.5)},${AXIS} ${value},${AXIS + 6} ${round(value - 3.5)},${AXIS}`,
    }),
    element('text', { class: 'aw-gauge-text', x: limit, y: 11, 'text-anchor': anchor }, view.limitText),
  );
}

function band(from: number, to: number): ElementNode {
  const width = Math.max(1, round(to - from));
  return element('rect', { class: 'aw-gauge-band', x: from, y: AXIS - 9, width, height: 18 });
}

interface Range {
  readonly from: number;
  readonly to: number;
  /** Where 0 stands, or null where the scale shows only the neighbourhood of the limit. */
  readonly zero: number | null;
}

/** From 0 where that leaves the margin to be seen, else the neighbourhood of value and limit. */
function rangeOf({ value, limit, width, fromZero }: GaugeView): Range {
  const low = Math.min(value - width, limit);
  const high = Math.max(value + width, limit);
  const largest = Math.max(Math.abs(low), Math.abs(high));
  const visible = Math.max(Math.abs(value - limit), width) >= 0.1 * largest;
  if (fromZero && visible && largest > 0) return { from: Math.min(0, low * 1.15), to: Math.max(0, high * 1.15), zero: 0 };
  const spread = high - low || Math.abs(limit) * 0.1 || 1;
  return { from: low - spread * 0.6, to: high + spread * 0.6, zero: null };
}

function round(x: number): number {
  return Math.round(x * 10) / 10;
}
