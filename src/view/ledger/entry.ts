// The ledger's row for an entry, and for a computed column.
import type { BudgetView, ChoiceView, ColumnRow, EntryRow } from '../model.ts';
import { type Child, type ElementNode, element } from '../node.ts';
import {
  anchor,
  besideRecorded,
  cell,
  formula,
  formulaCell,
  formulaCells,
  head,
  label,
  link,
  links,
  MISSING,
  sourceCell,
  unbroken,
  unfolding,
  value,
} from './parts.ts';

export function entryRow(row: EntryRow): ElementNode {
  const result = row.value ? value(row.value) : [MISSING];
  const given = row.role === 'input';
  return element(
    'tr',
    { role: 'row', class: `aw-entry aw-role-${row.role}`, id: anchor(row.name), 'data-key': row.key },
    head(link(row.name, row.symbol), row),
    ...(given
      ? [cell('formula', 'Given as', row.formula ? [formula(row.formula.parts, 2)] : [], 2)]
      : row.formula
        ? formulaCells(row.formula, 'Formula')
        : [cell('formula', null, [], 2)]),
    cell('result', null, [
      ...besideRecorded(row.was, [
        unfolding(row.key, result, row.value ? row.value.remark : row.missing, [
          links('Depends on', row.reads),
          budget(row.budget),
          links('Used by', row.usedBy),
        ]),
      ]),
      row.choice && choice(row.choice),
    ]),
    originCell(row),
  );
}

// What ruled the other rows out, a line for each part of the condition.
function choice(of: ChoiceView): Child {
  const out = of.ruledOut.filter((r) => r.count > 0);
  const lines = out.map((r) => element('li', {}, `${r.count} by `, element('code', {}, r.condition)));
  const cells = of.cells.map((c) =>
    element('li', {}, element('math', {}, c.symbol), element('span', { class: 'aw-figure' }, ` ${c.value}`)),
  );
  return element(
    'div',
    { class: 'aw-choice' },
    cells.length > 0 && element('div', { class: 'aw-list' }, element('ul', {}, ...cells)),
    element('div', {}, `one of ${of.rows} in ${of.table}${of.ties > 1 ? `; ${of.ties} share the best value, the first was taken` : ''}`),
    lines.length > 0 && element('div', { class: 'aw-label' }, 'Ruled out'),
    lines.length > 0 && element('ul', {}, ...lines),
    of.undecided && element('div', { class: 'aw-remark' }, of.undecided),
  );
}

function budget(of: readonly BudgetView[]): Child {
  if (of.length === 0) return null;
  const rows = of.map((line) =>
    element(
      'tr',
      {},
      element('th', { scope: 'row' }, label(line.input)),
      element('td', {}, line.contribution),
      element('td', {}, share(line.part), ' ', line.share),
    ),
  );
  return element(
    'table',
    { class: 'aw-budget' },
    element('caption', {}, 'Uncertainty budget'),
    element('thead', {}, element('tr', {}, ...['Input', 'Contri\u00ADbution', 'Share'].map((h) => element('th', { scope: 'col' }, h)))),
    element('tbody', {}, ...rows),
  );
}

function share(part: number): ElementNode {
  const width = Math.max(1, Math.round(part * 40));
  return element(
    'svg',
    { class: 'aw-share', viewBox: '0 0 40 8', width: 40, height: 8, 'aria-hidden': 'true' },
    element('rect', { class: 'aw-share-whole', x: 0, y: 0, width: 40, height: 8 }),
    element('rect', { class: 'aw-share-part', x: 0, y: 0, width, height: 8 }),
  );
}

export function columnRow(row: ColumnRow): ElementNode {
  const first = row.values.slice(0, FIRST).map((v, i) => element('li', {}, `${row.labels[i]} `, ...(v === null ? ['–'] : value(v))));
  const more = row.values.length - first.length;
  const summary: Child[] = row.missing
    ? [MISSING]
    : row.values.length === 0
      ? [element('span', { class: 'aw-missing' }, 'the table has no rows')]
      : [element('ul', { class: 'aw-first' }, ...first)];
  return element(
    'tr',
    { role: 'row', class: 'aw-entry aw-column', id: anchor(`${row.table}.${row.column}`), 'data-key': row.key },
    head(link(`${row.table}.${row.column}`, row.symbol), row),
    cell('formula', 'Formula for each row', formulaCell(row.formula, 2), 2),
    cell('result', null, [
      ...summary,
      row.missing && element('div', { class: 'aw-remark' }, row.missing),
      more > 0 && element('div', { class: 'aw-remark' }, `and ${more} more in the table below`),
      row.reads.length > 0 && unfolding(row.key, [element('span', { class: 'aw-label' }, 'Depends on')], null, [links('', row.reads)]),
    ]),
    originCell(row),
  );
}

// Rows whose values stand in the column's own row; the table below has them all.
const FIRST = 3;

/** Source and reason, and what a reading was taken with. */
function originCell({ source, because, reading }: EntryRow | ColumnRow): ElementNode {
  return cell('source', 'Source', [
    ...sourceCell(source, because),
    reading && element('div', { class: 'aw-reading' }, ...unbroken(reading)),
  ]);
}
