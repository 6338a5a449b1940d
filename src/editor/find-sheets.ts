// The sheets of the workspace.
import * as vscode from 'vscode';
import { SHEET_ENDING } from './sheet-documents.ts';

/** Every sheet of the workspace, ordered by path; packages hold none of ours. */
export async function findSheets(token?: vscode.CancellationToken): Promise<readonly vscode.Uri[]> {
  const found = await vscode.workspace.findFiles(`**/*${SHEET_ENDING}`, '**/node_modules/**', undefined, token);
  return [...found].sort((a, b) => (a.path < b.path ? -1 : 1));
}
