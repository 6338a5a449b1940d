// A sheet that is edited in two editors at once, as cells and as text: each has its own unsaved changes, and the user is told before one is lost.
import * as vscode from 'vscode';
import { isSheet, isSheetText } from '../sheet-documents.ts';

/** Tells of it once, until one of the two has been saved or put back. */
export function twoEditors(): vscode.Disposable {
  const told = new Set<string>();
  const look = (uri: vscode.Uri) => {
    const key = uri.toString();
    const same = (other: { readonly uri: vscode.Uri; readonly isDirty: boolean }) => other.uri.toString() === key && other.isDirty;
    const both =
      vscode.workspace.notebookDocuments.some((one) => isSheet(one) && same(one)) &&
      vscode.workspace.textDocuments.some((one) => isSheetText(one) && same(one));
    if (!both) return void told.delete(key);
    if (told.has(key)) return;
    told.add(key);
    const name = key.slice(key.lastIndexOf('/') + 1);
    void vscode.window.showWarningMessage(
      `${decodeURIComponent(name)} has unsaved changes as cells and as text. Save one of the two only.`,
    );
  };
  return vscode.Disposable.from(
    vscode.workspace.onDidChangeTextDocument(({ document }) => {
      if (isSheetText(document)) look(document.uri);
    }),
    vscode.workspace.onDidChangeNotebookDocument(({ notebook }) => {
      if (isSheet(notebook)) look(notebook.uri);
    }),
    vscode.workspace.onDidSaveNotebookDocument(({ uri }) => told.delete(uri.toString())),
    vscode.workspace.onDidSaveTextDocument(({ uri }) => told.delete(uri.toString())),
  );
}
