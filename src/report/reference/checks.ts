// The checks of a library sheet: what each requirement compares, how it came out, and the publication that it is checked against.
import { status } from '../../view/ledger/requirement.ts';
import type { RequirementRow } from '../../view/model.ts';
import { type ElementNode, element } from '../../view/node.ts';
import { table } from '../registers/register.ts';

/** One line a check; the same results as on any sheet. */
export function checksTable(rows: readonly RequirementRow[]): ElementNode {
  const lines = rows.map((row) => [
    row.because,
    element('code', {}, row.condition.written),
    [status(row.status), row.sides && element('div', {}, `${row.sides.left.text} ${row.sides.relation}\u00A0${row.sides.right.text}`)],
  ]);
  return element('div', { class: 'aw-checks' }, table(['Published value, or why', 'Check', 'Result'], lines));
}
