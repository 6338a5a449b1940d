// What of the extension is there from the editor's start: enough to notice the first sheet, with which the rest is loaded.
import * as vscode from 'vscode';
import { commandsAhead } from './commands-ahead.ts';
import type { Desktop } from './desktop.ts';
import type * as extension from './extension.ts';
import { libraryDocuments } from './library-documents.ts';
import { isSheetText, notebookType } from './sheet-documents.ts';

/** What the editor need not keep of a notebook: it follows from the sheet's text. */
const TRANSIENT: vscode.NotebookDocumentContentOptions = {
  transientOutputs: true,
  transientCellMetadata: { layout: true, inputCollapsed: true, outputCollapsed: true },
  transientDocumentMetadata: { file: true },
};

/** Loads the rest of the extension. */
export type Load = () => Promise<Pick<typeof extension, 'start'>>;

/**
 * Waits for a sheet, a command, or a look at the Testing view. Nothing that reads or calculates a sheet is imported here.
 * `desktop` is null in the browser's worker.
 */
export function waitForSheets(context: vscode.ExtensionContext, desktop: Desktop | null, load: Load): void {
  const tests = vscode.tests.createTestController('ampwright.requirements', 'Requirements of calc sheets');
  let started: Promise<vscode.NotebookSerializer> | null = null;
  const start = (): Promise<vscode.NotebookSerializer> => {
    started ??= load().then(
      (rest) => {
        waiting.dispose();
        return rest.start(context, { desktop, tests });
      },
      (error) => {
        // A file that could not be fetched may come the next time.
        started = null;
        throw error;
      },
    );
    return started;
  };
  tests.resolveHandler = async (item) => {
    await start();
    await tests.resolveHandler?.(item);
  };
  const startForText = (document: vscode.TextDocument) => {
    if (isSheetText(document)) void start();
  };
  const waiting = vscode.Disposable.from(commandsAhead(context, start), vscode.workspace.onDidOpenTextDocument(startForText));
  const serializer: vscode.NotebookSerializer = {
    deserializeNotebook: async (bytes, token) => (await start()).deserializeNotebook(bytes, token),
    serializeNotebook: async (data, token) => (await start()).serializeNotebook(data, token),
  };
  context.subscriptions.push(
    waiting,
    tests,
    libraryDocuments(context.extensionUri),
    vscode.workspace.registerNotebookSerializer(notebookType, serializer, TRANSIENT),
  );
  void vscode.commands.executeCommand('setContext', 'ampwright.active', true);
  void vscode.commands.executeCommand('setContext', 'ampwright.canUseGit', desktop !== null);
  vscode.workspace.textDocuments.forEach(startForText);
}
