// The results that a sheet's file had recorded when it was opened: shown beside the present ones where they differ, until it is saved.
import * as vscode from 'vscode';
import { resultRows } from '../run/record.ts';
import { type ResultRow, sameResults } from '../sheet/results-block.ts';
import { calcCells } from '../sheet/sheet.ts';
import type { Answer } from './session.ts';

export interface RecordedResults extends vscode.Disposable {
  /** The rows that the file held when it was read, of the blocks whose results were others even then; by number of the block. */
  of(answer: Answer): ReadonlyMap<number, readonly ResultRow[]>;
}

/** `settled` is called when a sheet has been saved, so that its file records what it shows. */
export function recordedResults(settled: (notebook: vscode.NotebookDocument) => void): RecordedResults {
  // A cell keeps the layout of the file that it was read from. Once that file has been written over, what it recorded is gone.
  const replaced = new WeakSet<object>();
  const stale = new WeakMap<object, boolean>();
  const layoutOf = (cell: vscode.NotebookCell | undefined) => (cell?.metadata as { readonly layout?: object } | undefined)?.layout;
  const saved = vscode.workspace.onDidSaveNotebookDocument((notebook) => {
    for (const cell of notebook.getCells()) {
      const layout = layoutOf(cell);
      if (layout) replaced.add(layout);
    }
    settled(notebook);
  });
  return {
    of({ laid, result }) {
      const rows = calcCells(laid.sheet).flatMap(({ number, results }) => {
        const layout = layoutOf(laid.blocks[number]);
        const now = result.cells[number];
        if (!layout || !now || !results?.rows) return [];
        // What an edit changes is seen as it is typed; what was another result before any edit is worth a word.
        if (!stale.has(layout)) stale.set(layout, !sameResults(results.rows, resultRows(now)));
        return stale.get(layout) && !replaced.has(layout) ? [[number, results.rows] as const] : [];
      });
      return new Map(rows);
    },
    dispose: () => saved.dispose(),
  };
}
