// A table with its computed columns, below the rows that compute them.
import type { ExtendedCell, ExtendedView } from '../extended-view.ts';
import { type Child, type ElementNode, element, textOf } from '../node.ts';

/** The whole table; a long or wide one scrolls in its own frame, with its heads and the names of its rows standing. */
export function extendedTable(view: ExtendedView): ElementNode {
  const title = `Table ${view.table}, ${view.rows} ${view.rows === 1 ? 'row' : 'rows'}${view.rows > view.lines.length ? `, the first ${view.lines.length}` : ''}`;
  const heads = view.heads.map((h) =>
    element(
      'th',
      { scope: 'col', class: h.computed ? 'aw-computed' : null },
      element('span', { role: 'math', 'aria-label': textOf(h.symbol) }, element('math', {}, h.symbol)),
      h.unit === '' ? null : ` / ${h.unit.includes('/') ? `(${h.unit})` : h.unit}`,
      h.computed && element('span', { class: 'aw-unseen' }, ', computed'),
    ),
  );
  const lines = view.lines.map((line) =>
    element(
      'tr',
      {},
      element('th', { scope: 'row' }, line.label),
      ...line.cells.map((c, i) => element('td', { class: view.heads[i]?.computed ? 'aw-computed' : null }, ...cellOf(c))),
    ),
  );
  return element(
    'div',
    { class: 'aw-datascroll', tabindex: 0, role: 'group', 'aria-label': title },
    element(
      'table',
      { class: 'aw-data aw-extended' },
      element('caption', {}, title, element('span', { class: 'aw-key' }, 'computed columns behind the double rule')),
      element('thead', {}, element('tr', {}, element('th', { scope: 'col' }, view.label), ...heads)),
      element('tbody', {}, ...lines),
    ),
  );
}

function cellOf({ text, was }: ExtendedCell): Child[] {
  const now = text ?? '–';
  if (was === null) return [now];
  return [
    element('div', { class: 'aw-was' }, element('span', { class: 'aw-label' }, 'Recorded'), was),
    element('span', { class: 'aw-label' }, 'Now '),
    now,
  ];
}
