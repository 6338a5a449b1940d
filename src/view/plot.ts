// A curve as SVG: axes headed `quantity / unit`, traces told apart by their dashes, marked points, limit lines.
import { symbolSpans } from './math/symbol.ts';
import type { CurveRow, PointView } from './model.ts';
import { type ElementNode, element, type ViewNode } from './node.ts';
import { type Axis, linearAxis, logAxis } from './plot/axis.ts';
import { type Frame, frameOf } from './plot/frame.ts';
import { labels } from './plot/labels.ts';

/** Where a plot of this width has its values, in pixels. */
export function axesOf(view: CurveRow, width: number): { readonly frame: Frame; readonly x: Axis; readonly y: Axis } {
  const frame = frameOf(view, width);
  return { frame, x: xAxis(view, frame), y: yAxis(view, frame) };
}

/** The drawing, `width` pixels wide. */
export function plot(view: CurveRow, width: number): ElementNode {
  const { frame, x, y } = axesOf(view, width);
  return element(
    'svg',
    { class: 'aw-plot', viewBox: `0 0 ${frame.width} ${frame.height}`, width: frame.width, height: frame.height, role: 'img' },
    element('title', {}, titleOf(view)),
    element('desc', {}, descriptionOf(view)),
    ...grid(x, y, frame),
    head(quantityOf(view), view.y.unit, 2, 13, 'start'),
    head(view.x.name, view.x.unit, frame.right, frame.height - 4, 'end'),
    ...view.limits.map((limit) => element('path', { class: 'aw-limit', d: pathOf(limit.points, x, y) })),
    ...view.traces.map((trace, i) => element('path', { class: `aw-trace aw-trace-${i % 4}`, d: pathOf(trace.points, x, y) })),
    ...view.marks.flatMap((mark) => marked(mark, x, y, frame)),
    ...labels(view, x, y, frame),
  );
}

function xAxis({ x }: CurveRow, frame: Frame): Axis {
  const count = Math.max(3, Math.floor((frame.right - frame.left) / 80));
  return x.log && x.from > 0
    ? logAxis(x.from, x.to, frame.left, frame.right)
    : linearAxis(x.from, x.to, frame.left, frame.right, count, false);
}

function yAxis(view: CurveRow, frame: Frame): Axis {
  const points = [...view.traces, ...view.limits].flatMap((t) => t.points.map((p) => p.y));
  const values = points.filter((y): y is number => y !== null && Number.isFinite(y));
  const low = values.length > 0 ? values.reduce((a, b) => Math.min(a, b)) : 0;
  const high = values.length > 0 ? values.reduce((a, b) => Math.max(a, b)) : 1;
  const fromZero = low > 0 && low < 0.4 * high ? 0 : low;
  const same = high === fromZero ? Math.abs(high) * 0.1 || 1 : 0;
  return linearAxis(fromZero - same, high + same, frame.bottom, frame.top, 5, true);
}

function grid(x: Axis, y: Axis, frame: Frame): ElementNode[] {
  return [
    ...y.ticks.map((t) => element('line', { class: 'aw-grid', x1: frame.left, y1: t.at, x2: frame.right, y2: t.at })),
    ...x.ticks.map((t) => element('line', { class: 'aw-grid', x1: t.at, y1: frame.top, x2: t.at, y2: frame.bottom })),
    element('path', { class: 'aw-axis', d: `M${frame.left} ${frame.top}V${frame.bottom}H${frame.right}` }),
    ...y.ticks.map((t) => element('text', { class: 'aw-tick', x: frame.left - 7, y: t.at + 4, 'text-anchor': 'end' }, t.text)),
    ...x.ticks.flatMap((t) =>
      t.text === '' ? [] : [element('text', { class: 'aw-tick', x: t.at, y: frame.bottom + 17, 'text-anchor': 'middle' }, t.text)],
    ),
  ];
}

/** What the vertical axis is of: what a single trace is called, else what is drawn. */
function quantityOf({ traces, y }: CurveRow): string {
  return (traces.length === 1 && traces[0]!.label) || y.title;
}

// Symbols in names and calls are typeset; whole words, and expressions with units in them, stay as they are.
function namesTypeset(text: string): readonly ViewNode[] {
  if (!/^[\p{L}\p{N}_(), .]*$/u.test(text) || /(?<![\p{L}\p{N}_])\p{N}/u.test(text)) return [text];
  return text.split(/([\p{L}_][\p{L}\p{N}_]*)/u).flatMap((piece, i): readonly ViewNode[] => {
    const symbolic = i % 2 === 1 && (piece.includes('_') || [...piece].length === 1);
    return symbolic ? symbolSpans(piece, 13) : piece === '' ? [] : [piece];
  });
}

/** An axis's head, `quantity / unit`. */
function head(title: string, unit: string, x: number, y: number, anchor: 'start' | 'end'): ElementNode {
  return element(
    'text',
    { class: 'aw-head', x, y, 'text-anchor': anchor },
    ...namesTypeset(title),
    unit === '' ? null : element('tspan', {}, ` / ${unit.includes('/') ? `(${unit})` : unit}`),
  );
}

// Straight lines from point to point; a point without a value leaves a gap.
function pathOf(points: readonly PointView[], x: Axis, y: Axis): string {
  let pen = 'M';
  const steps = points.map((p) => {
    if (p.y === null || !Number.isFinite(p.y)) {
      pen = 'M';
      return '';
    }
    const step = `${pen}${x.at(p.x)},${y.at(p.y)}`;
    pen = 'L';
    return step;
  });
  return steps.join('');
}

function marked(mark: CurveRow['marks'][number], x: Axis, y: Axis, frame: Frame): ElementNode[] {
  const at = x.at(mark.x);
  const heights = mark.y.flatMap((v) => (v === null ? [] : [y.at(v)]));
  return [
    element('line', { class: 'aw-drop', x1: at, y1: frame.bottom, x2: at, y2: frame.top }),
    ...heights.map((h) => element('polygon', { class: 'aw-point', points: `${at},${h - 5} ${at + 5},${h} ${at},${h + 5} ${at - 5},${h}` })),
  ];
}

function titleOf(view: CurveRow): string {
  const unit = view.x.unit === '' ? '' : ` ${view.x.unit}`;
  return `${view.y.title} over ${view.x.name} from ${view.x.from}${unit} to ${view.x.to}${unit}`;
}

/** What a reader should know of the drawing without seeing it. */
export function descriptionOf(view: CurveRow): string {
  const unit = view.y.unit === '' ? '' : ` ${view.y.unit}`;
  const ends = (points: readonly PointView[]) => {
    const known = points.filter((p) => p.y !== null);
    return known.length === 0 ? 'without values' : `from ${short(known[0]!.y!)}${unit} to ${short(known.at(-1)!.y!)}${unit}`;
  };
  const traces = view.traces.map((t) => `${t.label || view.y.title} goes ${ends(t.points)}.`);
  const limits = view.limits.map((l) => `Limit ${l.label} ${ends(l.points)}.`);
  const marks = view.marks.map(
    (m) => `${m.label || 'Mark'} at ${m.text}: ${m.y.map((v) => (v === null ? 'no value' : `${short(v)}${unit}`)).join(', ')}.`,
  );
  return [...traces, ...limits, ...marks].join(' ');
}

/** A number of the drawing's data, to four digits. */
export function short(value: number): string {
  return String(Number(value.toPrecision(4))).replace('-', '−');
}
