// The ledger's row for a requirement.
import { gauge } from '../gauge.ts';
import { statusMark } from '../mark.ts';
import { symbol } from '../math/symbol.ts';
import type { FormulaParts, RequirementRow, SidesView, StatusView } from '../model.ts';
import { type Child, type ElementNode, element, textOf } from '../node.ts';
import { besideRecorded, cell, formulaCells, head, links, sourceCell, unfolding } from './parts.ts';

/** What the words of the notation ask for. */
export const FORCE = { shall: 'Requirement', should: 'Recommendation' } as const;

export function requirementRow(row: RequirementRow): ElementNode {
  return element(
    'tr',
    { role: 'row', class: `aw-requirement aw-is-${row.status.replace(' ', '-')}`, 'data-key': row.key },
    head(element('span', { class: 'aw-force' }, row.force), row),
    ...formulaCells(row.condition, 'Condition'),
    cell('result', null, [
      ...besideRecorded(row.was, [
        unfolding(row.key, [status(row.status)], row.sides ? sides(row.sides, row.condition.putIn) : row.missing, [
          row.rows.length > 0 && eachRow(row),
          links('Depends on', row.reads),
        ]),
      ]),
      row.forEach &&
        element('div', { class: 'aw-remark' }, ...named(row.forEach), row.rows[0] ? `; the worst is ${row.rows[0].label}` : null),
      row.throughout && element('div', { class: 'aw-remark' }, ...named(row.throughout)),
    ]),
    cell('source', 'Reason', [...sourceCell(row.source, row.because), row.concession && concession(row.concession)]),
  );
}

/** Words of the notation with the names in them typeset. */
function named(text: string): Child[] {
  return text
    .split(/(?<![\p{L}\p{N}])(\p{L}[\p{L}\p{N}]*_[\p{L}\p{N}_]*)/u)
    .map((piece, i) => (i % 2 === 1 ? element('math', {}, symbol(piece)) : piece));
}

/** The status: its mark and its word. */
export function status(of: StatusView): ElementNode {
  return element('span', { class: `aw-status aw-${of === 'not calculated' ? 'none' : of}` }, statusMark(of), ' ', of);
}

// The sides are not said again where the values put in say nothing else.
function sides(of: SidesView, putIn: FormulaParts | null): Child {
  const bare = (text: string) => text.replace(/[\s\u00A0]/g, '');
  const said = putIn !== null && bare(putIn.map(textOf).join('')) === bare(`${of.left.text}${of.relation}${of.right.text}`);
  return element(
    'div',
    { class: 'aw-sides' },
    !said && element('div', { class: 'aw-comparison' }, `${of.left.text} ${of.relation}\u00A0${of.right.text}`),
    of.margin !== '' &&
      element(
        'div',
        { class: 'aw-margin' },
        of.margin,
        of.uncertainty && [element('span', { class: 'aw-coverage aw-apart' }, of.uncertainty.replaceAll(' ', '\u00A0'))],
      ),
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
      element(
        'td',
        {},
        status(r.status),
        r.sides && element('div', {}, `${r.sides.left.text} ${r.sides.relation}\u00A0${r.sides.right.text}`),
        r.sides && r.sides.margin !== '' && element('div', { class: 'aw-coverage' }, r.sides.margin),
      ),
    ),
  );
  return element(
    'table',
    { class: 'aw-budget aw-eachrow' },
    element('caption', {}, 'Row by row, worst first'),
    element('thead', {}, element('tr', {}, element('th', { scope: 'col' }, 'Row'), element('th', { scope: 'col' }, 'Decision'))),
    element('tbody', {}, ...lines),
  );
}
