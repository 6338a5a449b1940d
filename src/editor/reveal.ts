// Shows a place of a sheet: its notebook comes to the front, the cell into view, and the cursor goes there.
import * as vscode from 'vscode';
import { span } from '../text/span.ts';
import { locationInFile } from './places.ts';
import type { Session } from './session.ts';
import type { Sessions } from './sessions.ts';
import { isSheet } from './sheet-documents.ts';

/** Shows a place in a cell. */
export async function reveal({ uri, range }: vscode.Location): Promise<void> {
  await vscode.commands.executeCommand('vscode.open', uri, { selection: range });
}

/** Opens the sheet at `uri` in front; undefined where that is no sheet. */
export async function showSheet(uri: vscode.Uri, sessions: Sessions): Promise<Session | undefined> {
  const notebook = await vscode.workspace.openNotebookDocument(uri);
  if (!isSheet(notebook)) return undefined;
  await vscode.window.showNotebookDocument(notebook);
  return sessions.of(notebook);
}

/** Shows a line (from 1) of the sheet at `uri`. */
export async function revealLine(uri: vscode.Uri, line: number, sessions: Sessions): Promise<void> {
  const session = await showSheet(uri, sessions);
  await session?.update();
  const laid = session?.answer?.laid;
  if (!laid) return;
  const start = laid.sheet.lines.starts[line - 1] ?? 0;
  const location = locationInFile(laid, span(start, start));
  if (location) await reveal(location);
}
