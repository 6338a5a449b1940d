// The ledger's rows for curves and tabulations, over all columns.
import type { CurveRow, TabulationRow } from '../model.ts';
import { type ElementNode, element } from '../node.ts';
import { hasKey } from '../plot/labels.ts';
import { plot, short } from '../plot.ts';
import { wide } from './parts.ts';

export function curveRow(row: CurveRow): ElementNode {
  if (row.missing !== null) return wide('curve', row.key, element('span', { class: 'aw-missing' }, `Curve not calculated: ${row.missing}`));
  return wide(
    'curve',
    row.key,
    element(
      'figure',
      { class: 'aw-figurebox', 'data-key': `figure ${row.key}` },
      ...PLOTS.map(({ name, width }) => element('div', { class: `aw-plot-${name}` }, plot(row, width), hasKey(row, width) && key(row))),
      row.description && element('figcaption', {}, row.description),
      element(
        'details',
        { class: 'aw-details aw-curvedata', 'data-key': row.key },
        element('summary', {}, 'Data of the curve'),
        dataTable(row),
      ),
    ),
  );
}

/** A curve is drawn twice; the room that there is decides which of them is seen. */
export const PLOTS = [
  { name: 'wide', width: 640 },
  { name: 'narrow', width: 320 },
] as const;

// What each trace is, beside a piece of its line.
function key({ traces }: CurveRow): ElementNode {
  const sample = (i: number) =>
    element(
      'svg',
      { class: 'aw-sample', viewBox: '0 0 34 10', width: 34, height: 10, 'aria-hidden': 'true' },
      element('path', { class: `aw-trace aw-trace-${i % 4}`, d: 'M1 5h32' }),
    );
  return element(
    'ul',
    { class: 'aw-tracekey', 'aria-label': 'Curves' },
    ...traces.map((t, i) => element('li', {}, sample(i), ' ', t.label)),
  );
}

function dataTable(row: CurveRow): ElementNode {
  const columns = [...row.traces, ...row.limits.filter((l) => l.points.length === row.traces[0]?.points.length)];
  const heads = [inUnit(row.x.name, row.x.unit), ...columns.map((c) => inUnit(c.label || row.y.title, row.y.unit))];
  const lines = (row.traces[0]?.points ?? []).map((p, i) => [short(p.x), ...columns.map((c) => number(c.points[i]?.y ?? null))]);
  return element(
    'div',
    { class: 'aw-datascroll', tabindex: 0, role: 'group', 'aria-label': 'Data of the curve' },
    table(heads, lines, null),
  );
}

function number(value: number | null): string {
  return value === null ? '–' : short(value);
}

export function tabulationRow(row: TabulationRow): ElementNode {
  if (row.missing !== null)
    return wide('tabulation', row.key, element('span', { class: 'aw-missing' }, `Tabulation not calculated: ${row.missing}`));
  const differs = row.were.some((was) => was !== null);
  const heads = [...row.heads.map((h) => inUnit(h.title, h.unit)), ...(differs ? ['Recorded'] : [])];
  return wide(
    'tabulation',
    row.key,
    table(
      heads,
      row.cells.map((line, i) => [...line.map((c) => c ?? '–'), ...(differs ? [row.were[i] ?? ''] : [])]),
      row.description,
    ),
  );
}

/** A column's head, `quantity / unit`. */
function inUnit(title: string, unit: string): string {
  return unit === '' ? title : `${title} / ${unit.includes('/') ? `(${unit})` : unit}`;
}

function table(heads: readonly string[], lines: readonly (readonly string[])[], caption: string | null): ElementNode {
  return element(
    'table',
    { class: 'aw-data' },
    caption && element('caption', {}, caption),
    element('thead', {}, element('tr', {}, ...heads.map((h) => element('th', { scope: 'col' }, h)))),
    element('tbody', {}, ...lines.map((cells) => element('tr', {}, ...cells.map((c) => element('td', {}, c))))),
  );
}
