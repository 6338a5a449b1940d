// The results of a calc cell as a ledger with ruled columns, for the editor and the page alike.
import { columnRow, entryRow } from './ledger/entry.ts';
import { extendedTable } from './ledger/extended.ts';
import { curveRow, tabulationRow } from './ledger/figure.ts';
import { problems, wide } from './ledger/parts.ts';
import { actionRow, functionRow, instrumentRow, unreadableRow, useRow } from './ledger/record.ts';
import { outdated, recordedElse } from './ledger/recorded.ts';
import { requirementRow } from './ledger/requirement.ts';
import type { CellView, RowView } from './model.ts';
import { type ElementNode, element } from './node.ts';

const HEADS = ['Quantity', 'Formula', 'Values put in', 'Result', 'Source or reason'] as const;

/** The ledger of one cell. */
export function ledger(view: CellView): ElementNode {
  const rows = view.rows.flatMap((row) => [
    rowElement(row),
    ...(row.kind === 'column' && row.extended ? [wide('extended', null, extendedTable(row.extended))] : []),
    ...(row.problems.length > 0 ? [wide('problemrow', null, problems(row.problems))] : []),
  ]);
  return element(
    'div',
    { class: `aw-ledger${view.current ? '' : ' aw-outdated'}` },
    !view.current && outdated(),
    recordedElse(view),
    view.problems.length > 0 && problems(view.problems),
    rows.length > 0 && table(view, rows),
  );
}

function table(view: CellView, rows: readonly ElementNode[]): ElementNode {
  return element(
    'table',
    { class: 'aw-table', role: 'table' },
    element('caption', { class: 'aw-unseen' }, `Results of block ${view.cell + 1}`),
    element(
      'thead',
      { role: 'rowgroup' },
      element('tr', { role: 'row' }, ...HEADS.map((head) => element('th', { scope: 'col', role: 'columnheader' }, head))),
    ),
    element('tbody', { role: 'rowgroup' }, ...rows),
  );
}

function rowElement(row: RowView): ElementNode {
  switch (row.kind) {
    case 'entry':
      return entryRow(row);
    case 'column':
      return columnRow(row);
    case 'function':
      return functionRow(row);
    case 'requirement':
      return requirementRow(row);
    case 'curve':
      return curveRow(row);
    case 'tabulation':
      return tabulationRow(row);
    case 'instrument':
      return instrumentRow(row);
    case 'action':
      return actionRow(row);
    case 'use':
      return useRow(row);
    case 'unreadable':
      return unreadableRow(row);
    default:
      return row satisfies never;
  }
}
