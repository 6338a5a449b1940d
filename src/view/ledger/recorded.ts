// What stands above a ledger that is not current, or that differs from what the file has recorded.
import { differenceMark } from '../mark.ts';
import type { CellView, RowView } from '../model.ts';
import { type Child, type ElementNode, element } from '../node.ts';

/** Told above results that no longer belong to the text. */
export function outdated(): ElementNode {
  return notice([
    element('strong', {}, 'Not current.'),
    ' The sheet has changed since these results were made. Run it to bring them up to date.',
  ]);
}

/** Told above results of which the file has recorded others: how many, and what is recorded of statements that are gone. */
export function recordedElse(view: CellView): Child {
  const count = view.rows.reduce((sum, row) => sum + differing(row), 0);
  if (count + view.gone.length === 0) return null;
  const gone = view.gone.map(({ result, text }) => element('li', {}, element('code', {}, result), text === '' ? null : ` ${text}`));
  return notice([
    element('strong', {}, 'Recorded otherwise.'),
    ` ${summary(count, view.gone.length)} Saving records what stands here now.`,
    gone.length > 0 && element('ul', { 'aria-label': 'Recorded, and no longer in the sheet' }, ...gone),
  ]);
}

function summary(differ: number, gone: number): string {
  const count = (n: number, one: string, many: string) => (n === 1 ? `1 ${one}` : `${n} ${many}`);
  return [
    differ > 0 && `${count(differ, 'result differs', 'results differ')} from what the file has recorded.`,
    gone > 0 && `${count(gone, 'recorded result is', 'recorded results are')} no longer in the sheet.`,
  ]
    .filter((part) => part !== false)
    .join(' ');
}

/** How many results of a row differ from what is recorded. */
function differing(row: RowView): number {
  if (row.kind === 'column' || row.kind === 'tabulation') return row.were.filter((was) => was !== null).length;
  return row.was === null ? 0 : 1;
}

function notice(words: readonly Child[]): ElementNode {
  return element('div', { class: 'aw-notice', role: 'note' }, differenceMark(), element('div', {}, ...words));
}
