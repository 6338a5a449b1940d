// A table of the library in full, with its caption and source.
import type { Table, TableColumn } from '../../sheet/table.ts';
import { writeHead } from '../../sheet/table-head.ts';
import { element, escapeText, toHtml } from '../../view/node.ts';
import { tablePlace } from './places.ts';

export function dataTable(of: Table): string {
  const place = tablePlace(of.name);
  const rows = Array.from({ length: of.rowCount }, (_, row) =>
    element('tr', {}, ...of.columns.map((c) => element('td', { class: isNumeric(c) ? 'aw-number' : null }, c.cells[row]?.text ?? ''))),
  );
  const heads = of.columns.map((c) => element('th', { scope: 'col', class: isNumeric(c) ? 'aw-number' : null }, headOf(c)));
  const table = element('table', {}, element('thead', {}, element('tr', {}, ...heads)), element('tbody', {}, ...rows));
  const source = of.source ? `<br><span class="aw-kind">${of.source.kind}</span> ${escapeText(of.source.text)}` : '';
  return `<section class="aw-tablesection" id="${place}" aria-labelledby="${place}-caption">
<p id="${place}-caption">Table <code>${escapeText(of.name)}</code>: ${escapeText(of.caption)}${source}</p>
${toHtml(element('div', { class: 'aw-scroll', tabindex: '0', role: 'group', 'aria-label': `Table ${of.name}` }, table))}
</section>`;
}

function isNumeric({ type }: TableColumn): boolean {
  return type.kind === 'number';
}

function headOf({ name, type }: TableColumn): string {
  return type.kind === 'text'
    ? name
    : type.kind === 'date'
      ? writeHead(name, 'date')
      : type.unit.text === ''
        ? name
        : writeHead(name, type.unit.text);
}
