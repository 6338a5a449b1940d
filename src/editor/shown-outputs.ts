// The outputs of one notebook as they were written last, and what has to be written to bring them up to an answer.
import * as vscode from 'vscode';
import type { CellView } from '../view/model.ts';
import { sentences } from '../view/sentence.ts';
import { toView } from '../view/to-view.ts';
import type { RecordedResults } from './recorded-results.ts';
import type { Answer } from './session.ts';

/** The form in which the renderer takes the results of a cell: a `CellView`. */
const ledgerMime = 'application/vnd.ampwright.ledger+json';

export interface ShownOutputs {
  /** Brings the outputs up to the answer. */
  show(answer: Answer): Promise<void>;
  /** Marks all outputs as not current, since the text has gone on without them. */
  fallBehind(): Promise<void>;
  /** Looks at all outputs again. */
  all(): Promise<void>;
  /** Writes the outputs of these cells anew, as when someone runs them. */
  again(cells: readonly vscode.NotebookCell[]): Promise<void>;
  /** Brings back what someone cleared. */
  cleared(cells: readonly vscode.NotebookCell[]): Promise<void>;
}

interface Written {
  /** Null where nothing is shown. */
  readonly view: CellView | null;
  readonly json: string;
}

export function shownOutputs(controller: vscode.NotebookController, recorded: RecordedResults): ShownOutputs {
  const written = new WeakMap<vscode.NotebookCell, Written>();
  let latest: Answer | null = null;
  let outdated = false;
  /** Numbers of the calc cells that are to be looked at; null: all. */
  let stale: ReadonlySet<number> | null = null;
  let busy: Promise<void> | null = null;

  /** What each cell is to show: results of the latest answer, or those that are there, marked as not current. */
  function wanted(answer: Answer): ReadonlyMap<vscode.NotebookCell, CellView | null> {
    if (!outdated) return viewsByCell(answer, stale, recorded);
    const views = answer.laid.blocks.flatMap((cell) => {
      const view = cell && written.get(cell)?.view;
      return cell && view ? [[cell, { ...view, current: false }] as const] : [];
    });
    return new Map(views);
  }
  async function write(): Promise<void> {
    if (!latest) return;
    const changed = [...wanted(latest)].flatMap(([cell, view]) => {
      const json = view ? JSON.stringify(view) : '';
      return cell.index >= 0 && (written.get(cell)?.json ?? '') !== json ? [{ cell, view, json }] : [];
    });
    stale = new Set();
    if (changed.length === 0) return;
    // One execution may write the outputs of other cells too, and is much faster than one each.
    const execution = controller.createNotebookCellExecution(changed[0]!.cell);
    execution.start();
    await Promise.all(
      changed.map(({ cell, view, json }) => {
        written.set(cell, { view, json });
        const output = cell.outputs[0];
        // In its old output the new result replaces the old one without a flash.
        if (view && output) return execution.replaceOutputItems(items(view), output);
        return execution.replaceOutput(view ? new vscode.NotebookCellOutput(items(view)) : [], cell);
      }),
    );
    execution.end(undefined);
  }
  /** One at a time; what comes meanwhile is written together in the next. */
  async function update(): Promise<void> {
    while (busy) await busy;
    busy = write().finally(() => {
      busy = null;
    });
    await busy;
  }
  const anew = async (cells: readonly vscode.NotebookCell[]) => {
    for (const cell of cells) written.delete(cell);
    if (cells.length > 0) stale = null;
    await update();
  };
  return {
    async show(answer) {
      latest = answer;
      stale = outdated ? null : stale && answer.changed && new Set([...stale, ...answer.changed]);
      outdated = false;
      await update();
    },
    async fallBehind() {
      if (outdated) return;
      outdated = true;
      await update();
    },
    async all() {
      stale = null;
      await update();
    },
    again: anew,
    cleared: (cells) => anew(cells.filter((cell) => cell.outputs.length === 0 && written.get(cell)?.view)),
  };
}

/** What each of the blocks with these numbers is to show, null where it shows nothing; for all, also the cells that are no blocks. */
function viewsByCell(
  answer: Answer,
  numbers: ReadonlySet<number> | null,
  recorded: RecordedResults,
): ReadonlyMap<vscode.NotebookCell, CellView | null> {
  const { result, laid } = answer;
  const views = new Map<vscode.NotebookCell, CellView | null>(numbers ? [] : laid.snapshot.cells.map((cell) => [cell, null]));
  for (const view of toView(result, { ...(numbers ? { cells: numbers } : {}), recorded: recorded.of(answer) }).cells) {
    const cell = laid.blocks[view.cell];
    if (cell) views.set(cell, view.rows.length + view.problems.length + view.gone.length > 0 ? view : null);
  }
  return views;
}

function items(view: CellView): vscode.NotebookCellOutputItem[] {
  return [vscode.NotebookCellOutputItem.json(view, ledgerMime), vscode.NotebookCellOutputItem.text(sentences(view), 'text/plain')];
}
