// Words in a plot: what each trace is, what is marked, what a limit stands for; kept apart where they would collide.
import type { CurveRow, PointView } from '../model.ts';
import { type ElementNode, element } from '../node.ts';
import type { Axis } from './axis.ts';
import type { Frame } from './frame.ts';

const LINE = 14;

/** All labels of a plot. */
export function labels(view: CurveRow, x: Axis, y: Axis, frame: Frame): ElementNode[] {
  return [...traceLabels(view, y, frame), ...limitLabels(view, x, y, frame), ...markLabels(view, x, y, frame)];
}

// Beside the end of each trace; a single trace needs none, the axis names it.
function traceLabels(view: CurveRow, y: Axis, frame: Frame): ElementNode[] {
  if (view.traces.length < 2) return [];
  const ends = view.traces.flatMap((t) => {
    const last = lastOf(t.points);
    return last === null || t.label === '' ? [] : [{ text: t.label, at: y.at(last.y) }];
  });
  return apart(ends).map((l) => element('text', { class: 'aw-plotlabel', x: frame.right + 6, y: l.at + 4 }, l.text));
}

/** Labels moved down so that none stands on another. */
export function apart<T extends { readonly at: number }>(of: readonly T[]): T[] {
  let free = Number.NEGATIVE_INFINITY;
  return [...of]
    .sort((a, b) => a.at - b.at)
    .map((label) => {
      const at = Math.max(label.at, free);
      free = at + LINE;
      return { ...label, at };
    });
}

function lastOf(points: readonly PointView[]): { readonly x: number; readonly y: number } | null {
  const known = points.filter((p) => p.y !== null);
  return (known.at(-1) as { x: number; y: number } | undefined) ?? null;
}

// Above the limit's right end, inside the frame.
function limitLabels(view: CurveRow, x: Axis, y: Axis, frame: Frame): ElementNode[] {
  return view.limits.flatMap((limit) => {
    const last = lastOf(limit.points);
    if (last === null || limit.label === '') return [];
    return [
      element(
        'text',
        { class: 'aw-plotlabel aw-limitlabel', x: Math.min(x.at(last.x), frame.right) - 4, y: y.at(last.y) - 6, 'text-anchor': 'end' },
        limit.label,
      ),
    ];
  });
}

function markLabels(view: CurveRow, x: Axis, y: Axis, frame: Frame): ElementNode[] {
  return view.marks.map((mark) => {
    const at = x.at(mark.x);
    const right = at > (frame.left + frame.right) / 2;
    const heights = mark.y.flatMap((v) => (v === null ? [] : [y.at(v)]));
    const top = Math.max(frame.top + 12, Math.min(frame.bottom - 8, ...heights) - 10);
    return element(
      'text',
      { class: 'aw-plotlabel', x: right ? at - 8 : at + 8, y: top, 'text-anchor': right ? 'end' : 'start' },
      mark.label || mark.text,
    );
  });
}
