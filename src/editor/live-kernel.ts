// Keeps the results under the cells: whatever answer a sheet has is shown at once, and only outputs that changed are touched.
import * as vscode from 'vscode';
import type { CellView } from '../view/model.ts';
import { sentences } from '../view/sentence.ts';
import { toView } from '../view/to-view.ts';
import { isSheet, notebookType } from './notebook-document.ts';
import type { Answer, Session } from './session.ts';
import type { Sessions } from './sessions.ts';

/** The form in which the renderer takes the results of a cell: a `CellView`. */
export const ledgerMime = 'application/vnd.ampwright.ledger+json';

const id = 'ampwright.live';

/** Registers the controller that writes the outputs, and selects it wherever a sheet is shown. */
export function liveKernel(sessions: Sessions, extension: string): vscode.Disposable {
  const controller = vscode.notebooks.createNotebookController(id, notebookType, 'Live results');
  controller.supportedLanguages = [notebookType];
  controller.supportsExecutionOrder = false;
  controller.description = 'Results follow the text; there is nothing to run';
  const shown = new Map<vscode.NotebookDocument, Shown>();

  const show = async (session: Session) => {
    const of = shown.get(session.notebook);
    if (of && session.answer) await of.show(session.answer);
  };
  controller.executeHandler = async (cells, notebook) => {
    const session = sessions.of(notebook);
    if (session) await session.show();
    await shown.get(notebook)?.again(cells);
  };
  // A controller that was never selected may not write outputs, and a sole one is only suggested.
  const select = (editors: readonly vscode.NotebookEditor[]) => {
    for (const notebookEditor of editors) {
      if (!isSheet(notebookEditor.notebook) || shown.has(notebookEditor.notebook)) continue;
      void vscode.commands.executeCommand('notebook.selectKernel', { notebookEditor, id, extension });
    }
  };
  const listeners = vscode.Disposable.from(
    controller,
    controller.onDidChangeSelectedNotebooks(({ notebook, selected }) => {
      if (!selected) return void shown.delete(notebook);
      shown.set(notebook, shownOutputs(controller));
      const session = sessions.of(notebook);
      if (session) void show(session);
    }),
    vscode.window.onDidChangeVisibleNotebookEditors(select),
    vscode.workspace.onDidChangeNotebookDocument(({ notebook, cellChanges }) => {
      const cleared = cellChanges.flatMap(({ cell, outputs }) => (outputs?.length === 0 ? [cell] : []));
      if (cleared.length > 0) void shown.get(notebook)?.cleared(cleared);
    }),
    sessions.onDidAnswer((session) => void show(session)),
    sessions.onDidClose(({ notebook }) => void shown.delete(notebook)),
  );
  select(vscode.window.visibleNotebookEditors);
  return listeners;
}

/** The outputs of one notebook, as we wrote them last. */
interface Shown {
  /** Brings the outputs up to the answer. */
  show(answer: Answer): Promise<void>;
  /** Writes the outputs of these cells anew, as when someone runs them. */
  again(cells: readonly vscode.NotebookCell[]): Promise<void>;
  /** Brings back what someone cleared. */
  cleared(cells: readonly vscode.NotebookCell[]): Promise<void>;
}

function shownOutputs(controller: vscode.NotebookController): Shown {
  const written = new WeakMap<vscode.NotebookCell, string>();
  let latest: Answer | null = null;
  /** Numbers of the calc cells that are to be looked at; null: all. */
  let stale: ReadonlySet<number> | null = null;
  let busy: Promise<void> | null = null;

  async function write(): Promise<void> {
    if (!latest) return;
    const results = resultsByCell(latest, stale);
    stale = new Set();
    const changed = [...results].filter(([cell, result]) => cell.index >= 0 && (written.get(cell) ?? '') !== (result?.json ?? ''));
    if (changed.length === 0) return;
    // One execution may write the outputs of other cells too, and is much faster than one each.
    const execution = controller.createNotebookCellExecution(changed[0]![0]);
    execution.start();
    await Promise.all(
      changed.map(([cell, result]) => {
        written.set(cell, result?.json ?? '');
        const output = cell.outputs[0];
        // In its old output the new result replaces the old one without a flash.
        if (result && output) return execution.replaceOutputItems(items(result.view), output);
        return execution.replaceOutput(result ? new vscode.NotebookCellOutput(items(result.view)) : [], cell);
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
      stale = stale && answer.changed && new Set([...stale, ...answer.changed]);
      await update();
    },
    again: anew,
    cleared: (cells) => anew(cells.filter((cell) => cell.outputs.length === 0 && written.get(cell))),
  };
}

interface Result {
  readonly view: CellView;
  readonly json: string;
}

/** What each of the blocks with these numbers is to show, null where it shows nothing; for all, also the cells that are no blocks. */
function resultsByCell({ result, laid }: Answer, numbers: ReadonlySet<number> | null): ReadonlyMap<vscode.NotebookCell, Result | null> {
  const results = new Map<vscode.NotebookCell, Result | null>(numbers ? [] : laid.snapshot.cells.map((cell) => [cell, null]));
  for (const view of toView(result, numbers ? { cells: numbers } : {}).cells) {
    const cell = laid.blocks[view.cell];
    if (cell) results.set(cell, view.rows.length + view.problems.length > 0 ? { view, json: JSON.stringify(view) } : null);
  }
  return results;
}

function items(view: CellView): vscode.NotebookCellOutputItem[] {
  return [vscode.NotebookCellOutputItem.json(view, ledgerMime), vscode.NotebookCellOutputItem.text(sentences(view), 'text/plain')];
}
