// One item a sheet: found when the Testing view asks, then kept up with what comes and goes.
import * as vscode from 'vscode';
import { findSheets } from '../find-sheets.ts';
import { SHEET_ENDING } from '../sheet-documents.ts';

export interface SheetItems extends vscode.Disposable {
  /** Finds the sheets of the workspace; from then on it is watched. */
  find(token?: vscode.CancellationToken): Promise<void>;
}

export function sheetItems(controller: vscode.TestController): SheetItems {
  let watching: vscode.Disposable | null = null;
  const add = (uri: vscode.Uri) => {
    if (!controller.items.get(uri.toString())) controller.items.add(sheetItem(controller, uri));
  };
  const changed = (uri: vscode.Uri) => {
    const item = controller.items.get(uri.toString());
    if (item && item.children.size > 0) controller.invalidateTestResults(item);
  };
  const watch = () => {
    const sheets = vscode.workspace.createFileSystemWatcher(`**/*${SHEET_ENDING}`);
    sheets.onDidCreate((uri) => /\/node_modules\//.test(uri.path) || add(uri));
    sheets.onDidDelete((uri) => controller.items.delete(uri.toString()));
    sheets.onDidChange(changed);
    // Of a folder that goes nothing is told but itself.
    const folders = vscode.workspace.createFileSystemWatcher('**', true, true);
    folders.onDidDelete((folder) => {
      for (const [id] of controller.items) if (id.startsWith(`${folder}/`)) controller.items.delete(id);
    });
    watching = vscode.Disposable.from(sheets, folders);
  };
  return {
    async find(token) {
      if (!watching) watch();
      const found = await findSheets(token);
      controller.items.replace(found.map((uri) => controller.items.get(uri.toString()) ?? sheetItem(controller, uri)));
    },
    dispose: () => watching?.dispose(),
  };
}

function sheetItem(controller: vscode.TestController, uri: vscode.Uri): vscode.TestItem {
  const path = vscode.workspace.asRelativePath(uri);
  const name = path.slice(path.lastIndexOf('/') + 1, -SHEET_ENDING.length);
  const item = controller.createTestItem(uri.toString(), name, uri);
  item.description = path.slice(0, Math.max(0, path.lastIndexOf('/')));
  item.sortText = path;
  item.canResolveChildren = true;
  return item;
}
