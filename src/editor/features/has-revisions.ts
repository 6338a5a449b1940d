// Comparing is offered where the sheet in front lies in a git repository: elsewhere there are no revisions.
import * as vscode from 'vscode';
import { diskPath } from '../commands/context.ts';
import type { Desktop } from '../desktop.ts';
import { isSheet } from '../sheet-documents.ts';

export function hasRevisions(desktop: Desktop | null): vscode.Disposable {
  const look = () => {
    const notebook = vscode.window.activeNotebookEditor?.notebook;
    const path = notebook && isSheet(notebook) ? diskPath(notebook.uri) : null;
    void vscode.commands.executeCommand('setContext', 'ampwright.hasRevisions', path !== null && desktop?.inRepository(path) === true);
  };
  look();
  // A repository may be made while the sheet is open, in a terminal or another program.
  return vscode.Disposable.from(vscode.window.onDidChangeActiveNotebookEditor(look), vscode.window.onDidChangeWindowState(look));
}
