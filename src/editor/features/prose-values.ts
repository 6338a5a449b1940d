// Values in prose: links to an entry are brought up to date in the editor just before the sheet is saved.
import * as vscode from 'vscode';
import { recorded } from '../../run/record.ts';
import { sheetEdits } from '../../sheet/write-sheet.ts';
import { lay, snapshot } from '../laid.ts';
import { currentText } from '../notebook-document.ts';
import { locationInFile } from '../places.ts';
import type { Session } from '../session.ts';
import type { Sessions } from '../sessions.ts';

/** Without this the file would have the values and the open editor would not: saving does not read the file again. */
export function proseValues(sessions: Sessions): vscode.Disposable {
  return vscode.workspace.onWillSaveNotebookDocument((event) => {
    const session = sessions.of(event.notebook);
    if (session) event.waitUntil(refreshed(session));
  });
}

async function refreshed(session: Session): Promise<vscode.WorkspaceEdit> {
  const { notebook } = session;
  const { starts } = currentText(notebook);
  const cells = snapshot(notebook);
  const evaluation = await session.evaluate();
  const laid = lay(evaluation.sheet, starts, cells);
  const change = new vscode.WorkspaceEdit();
  for (const { at, text } of sheetEdits(evaluation.sheet, { valueText: recorded(evaluation).valueText })) {
    const location = locationInFile(laid, at);
    if (location) change.replace(location.uri, location.range, text);
  }
  return change;
}
