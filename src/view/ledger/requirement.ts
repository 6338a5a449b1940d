// The ledger's row for a requirement.
import { gauge } from '../gauge.ts';
import { statusMark } from '../mark.ts';
import type { RequirementRow, SidesView, StatusView } from '../model.ts';
import { type Child, type ElementNode, element } from '../node.ts';
import { cell, formulaCell, head, links, putInCell, sourceCell, unfolding } from './parts.ts';

/** What the words of the notation ask for. */
export const FORCE = { shall: 'Requirement', should: 'Recommendation' } as const;

export function requirementRow(row: RequirementRow): ElementNode {
  const putIn = row.condition.putIn;
  const formulas =
    putIn === null
      ? [cell('formula', 'Condition', formulaCell(row.condition), 2)]
      : [cell('formula', 'Condition', formulaCell(row.condition)), cell('putin', 'Values put in', putInCell(row.condition))];
  return element(
    'tr',
    { role: 'row', class: `aw-requirement aw-is-${row.status.replace(' ', '-')}`, 'data-key': row.key },
    head(element('span', { class: 'aw-force' }, row.force), row),
    ...formulas,
    cell('result', null, [
      unfolding(
        row.key,
        [status(row.status), row.missing && row.status === 'not calculated' && element('div', { class: 'aw-missing' }, row.missing)],
        [row.rows.length > 0 && eachRow(row), links('Depends on', row.reads)],
      ),
      row.sides && sides(row.sides),
      row.forEach && element('div', { class: 'aw-remark' }, row.forEach),
      row.throughout && element('div', { class: 'aw-remark' }, row.throughout),
    ]),
    cell('source', 'Reason', [...sourceCell(row.source, row.because), row.concession && concession(row.concession)]),
  );
}

/** The status: its mark and its word. */
export function status(of: StatusView): ElementNode {
  return element('span', { class: `aw-status aw-${of === 'not calculated' ? 'none' : of}` }, statusMark(of), ' ', of);
}

function sides(of: SidesView): Child {
  return element(
    'div',
    { class: 'aw-sides' },
    element('div', { class: 'aw-comparison' }, `${of.left.text} ${of.relation}\u00A0${of.right.text}`),
    of.margin !== '' &&
      element('div', { class: 'aw-margin' }, of.margin, of.uncertainty && element('span', { class: 'aw-coverage' }, `, ${of.uncertainty}`)),
    of.gauge && gauge(of.gauge),
  );
}

function concession(of: NonNullable<RequirementRow['concession']>): ElementNode {
  return element(
    'div',
    { class: 'aw-concession' },
    element('span', { class: 'aw-label' }, 'Concession'),
    element('div', {}, `accepted by ${of.by} until ${of.until}: ${of.because}`),
  );
}

function eachRow(row: RequirementRow): ElementNode {
  const lines = row.rows.map((r) =>
    element(
      'tr',
      {},
      element('th', { scope: 'row' }, r.label),
      element('td', {}, status(r.status)),
      element('td', {}, r.sides && `${r.sides.left.text} ${r.sides.relation}\u00A0${r.sides.right.text}`),
      element('td', {}, r.sides?.margin ?? ''),
    ),
  );
  return element(
    'table',
    { class: 'aw-budget aw-each' },
    element('caption', {}, 'Row by row, worst first'),
    element('thead', {}, element('tr', {}, ...['Row', 'Status', 'Sides', 'Margin'].map((h) => element('th', { scope: 'col' }, h)))),
    element('tbody', {}, ...lines),
  );
}
