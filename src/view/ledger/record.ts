// The ledger's rows for what has no result of its own: functions, instruments, actions, used sheets, unreadable lines.
import type { ActionRow, FunctionRow, InstrumentRow, UnreadableRow, UseRow } from '../model.ts';
import { type Child, type ElementNode, element, textOf } from '../node.ts';
import { anchor, cell, formula, formulaCell, head, link, sourceCell } from './parts.ts';

export function functionRow(row: FunctionRow): ElementNode {
  const needs = row.needs.map((need) =>
    element('li', {}, formula(need.parts), need.because && element('span', { class: 'aw-quote' }, need.because)),
  );
  const parameters = row.parameters.map((p) =>
    element('li', {}, element('math', {}, p.symbol), element('span', { class: 'aw-figure' }, ` in ${p.unit}`)),
  );
  return element(
    'tr',
    { role: 'row', class: 'aw-function', id: anchor(row.name), 'data-key': row.key },
    head(
      element(
        'a',
        { class: 'aw-symbol', href: `#${anchor(row.name)}`, 'data-name': row.name, 'aria-label': textOf(row.head) },
        ...row.head,
      ),
      row,
    ),
    cell(
      'formula',
      'Formula',
      [
        ...formulaCell(row.formula, 2),
        needs.length > 0 &&
          element('div', { class: 'aw-list' }, element('div', { class: 'aw-label' }, 'Needs'), element('ul', {}, ...needs)),
      ],
      2,
    ),
    cell('result', null, [
      element('div', { class: 'aw-list' }, element('div', { class: 'aw-label' }, 'Takes'), element('ul', {}, ...parameters)),
      row.result && element('div', {}, element('span', { class: 'aw-label' }, 'Gives '), row.result),
    ]),
    cell('source', 'Source', sourceCell(row.source, row.because)),
  );
}

export function instrumentRow(row: InstrumentRow): ElementNode {
  const facts: Child[] = [
    row.serial && element('div', {}, `serial ${row.serial}`),
    row.calibrated && element('div', {}, `calibrated ${row.calibrated}`),
    row.due && element('div', {}, `due ${row.due}`),
  ];
  return element(
    'tr',
    { role: 'row', class: 'aw-record', id: anchor(row.name), 'data-key': row.key },
    head(link(row.name, row.symbol), row),
    cell('formula', 'Limits', row.bounds ? [formula(row.bounds)] : [], 2),
    cell('result', null, facts),
    cell('source', 'Source', sourceCell(row.source, row.because)),
  );
}

export function actionRow(row: ActionRow): ElementNode {
  return element(
    'tr',
    { role: 'row', class: 'aw-record', 'data-key': row.key },
    head(element('span', { class: 'aw-force' }, 'Action'), row),
    cell('formula', null, [row.text], 2),
    cell('result', null, [row.due && `due ${row.due}`]),
    cell('source', null, [row.by && `by ${row.by}`, ...sourceCell(row.source, row.because)]),
  );
}

export function useRow(row: UseRow): ElementNode {
  return element(
    'tr',
    { role: 'row', class: 'aw-record', 'data-key': row.key },
    head(element('span', { class: 'aw-force' }, 'Used sheet'), row),
    cell('formula', null, [row.path], 2),
    cell('result', null, [row.names === null ? 'everything in it' : row.names.join(', ')]),
    cell('source', null, sourceCell(row.source, row.because)),
  );
}

export function unreadableRow(row: UnreadableRow): ElementNode {
  return element(
    'tr',
    { role: 'row', class: 'aw-record aw-unreadable', id: row.name === null ? null : anchor(row.name), 'data-key': row.key },
    head(row.name ?? `Line ${row.line}`, row),
    cell('formula', null, [element('code', {}, row.written)], 2),
    cell('result', null, [element('span', { class: 'aw-missing' }, 'not read')]),
    cell('source', null, []),
  );
}
