// Keeps the results under the cells: whatever answer a sheet has is shown at once, and only outputs that changed are touched.
import * as vscode from 'vscode';
import { recordedResults } from './recorded-results.ts';
import type { Session } from './session.ts';
import type { Sessions } from './sessions.ts';
import { isSheet, notebookType } from './sheet-documents.ts';
import { type ShownOutputs, shownOutputs } from './shown-outputs.ts';

const id = 'ampwright.live';

/** Registers the controller that writes the outputs, and selects it wherever a sheet is shown. */
export function liveKernel(sessions: Sessions, extension: string): vscode.Disposable {
  const controller = vscode.notebooks.createNotebookController(id, notebookType, 'Live results');
  controller.supportedLanguages = [notebookType];
  controller.supportsExecutionOrder = false;
  controller.description = 'Results follow the text; there is nothing to run';
  const shown = new Map<vscode.NotebookDocument, ShownOutputs>();
  const recorded = recordedResults((notebook) => void shown.get(notebook)?.all());

  const show = async (session: Session) => {
    const of = shown.get(session.notebook);
    if (of && session.answer) await of.show(session.answer);
  };
  controller.executeHandler = async (cells, notebook) => {
    await sessions.of(notebook)?.show();
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
    recorded,
    controller.onDidChangeSelectedNotebooks(({ notebook, selected }) => {
      if (!selected) return void shown.delete(notebook);
      shown.set(notebook, shownOutputs(notebook, controller, recorded));
      const session = sessions.of(notebook);
      if (session) void show(session);
    }),
    vscode.window.onDidChangeVisibleNotebookEditors(select),
    vscode.window.onDidChangeNotebookEditorVisibleRanges(({ notebookEditor: { notebook } }) => void shown.get(notebook)?.inView()),
    vscode.workspace.onDidChangeNotebookDocument(({ notebook, cellChanges }) => {
      const cleared = cellChanges.flatMap(({ cell, outputs }) => (outputs?.length === 0 ? [cell] : []));
      if (cleared.length > 0) void shown.get(notebook)?.cleared(cleared);
    }),
    sessions.onDidAnswer((session) => void show(session)),
    sessions.onDidFallBehind(({ notebook }) => void shown.get(notebook)?.fallBehind()),
    sessions.onDidClose(({ notebook }) => void shown.delete(notebook)),
  );
  select(vscode.window.visibleNotebookEditors);
  return listeners;
}
