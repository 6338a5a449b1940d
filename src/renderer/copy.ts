// Copying rows of the ledger gives a sentence for each, instead of the letters of its columns and formulas one by one.
import type { CellView } from '../view/model.ts';
import { rowSentences } from '../view/sentence.ts';

/** Puts the sentences of the selected rows on the clipboard; what is selected within one cell of the table is copied as it is. */
export function copySentences(event: ClipboardEvent, into: HTMLElement, view: CellView | null): void {
  const selection = into.ownerDocument.getSelection();
  if (view === null || selection === null || selection.isCollapsed || selection.rangeCount === 0 || event.clipboardData === null) return;
  const range = selection.getRangeAt(0);
  const cells = [...into.querySelectorAll('.aw-table > tbody > tr > *')].filter((cell) => range.intersectsNode(cell));
  if (cells.length < 2) return;
  const keys = new Set(cells.map((cell) => cell.parentElement!.getAttribute('data-key')));
  const rows = view.rows.filter((row) => keys.has(row.key));
  if (rows.length === 0) return;
  event.clipboardData.setData('text/plain', rows.flatMap(rowSentences).join('\n'));
  event.preventDefault();
}
