// Words in a plot: what each trace is, what is marked, what a limit stands for; kept apart where they would collide.
import type { CurveRow, PointView } from '../model.ts';
import { type ElementNode, element } from '../node.ts';
import type { Axis } from './axis.ts';
import { type Frame, LETTER, LINE } from './frame.ts';

/** Whether the traces of a plot of this width are named in a key below it, since in a small drawing words would lie on the curves. */
export function hasKey({ traces }: CurveRow, width: number): boolean {
  return width < 480 && traces.length > 1;
}

/** All labels of a plot. */
export function labels(view: CurveRow, x: Axis, y: Axis, frame: Frame): ElementNode[] {
  return [...traceLabels(view, y, frame), ...limitLabels(view, x, y, frame), ...markLabels(view, x, frame)];
}

// Beside the end of each trace, or above it where there is no room; a single trace needs none, the axis names it.
function traceLabels(view: CurveRow, y: Axis, frame: Frame): ElementNode[] {
  if (view.traces.length < 2 || hasKey(view, frame.width)) return [];
  const ends = view.traces.flatMap((t) => {
    const last = lastOf(t.points);
    return last === null || t.label === '' ? [] : [{ text: t.label, at: y.at(last.y) }];
  });
  const beside = frame.width - frame.right > Math.max(...ends.map((l) => l.text.length)) * LETTER;
  const place = (at: number) => (beside ? { x: frame.right + 6, y: at + 4 } : { x: frame.right - 4, y: at - 5, 'text-anchor': 'end' });
  return apart(ends).map((l) => element('text', { class: 'aw-plotlabel', ...place(l.at) }, l.text));
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

// Above the frame at the mark's line, where no trace runs; neighbours on two lines in turn.
function markLabels(view: CurveRow, x: Axis, frame: Frame): ElementNode[] {
  const rows = Math.min(view.marks.length, 2);
  return view.marks.map((mark, i) => {
    const at = x.at(mark.x);
    const anchor = at > (frame.left + frame.right) / 2 ? 'end' : 'start';
    const y = frame.top - 5 - (rows - 1 - (i % rows)) * LINE;
    return element(
      'text',
      { class: 'aw-plotlabel', x: at + (anchor === 'end' ? 3 : -3), y, 'text-anchor': anchor },
      mark.label || mark.text,
    );
  });
}
