// Which documents of the editor are sheets.
import * as vscode from 'vscode';

/** The type under which package.json declares the notebook; also the language of its calc cells. */
export const notebookType = 'ampwright';

/** How the name of a sheet's file ends. */
export const SHEET_ENDING = '.ampwright.md';

export const isSheet = (notebook: vscode.NotebookDocument): boolean => notebook.notebookType === notebookType;

/** Whether a document is a sheet's file that is opened as text: not a cell of a notebook, nor another revision of the file. */
export function isSheetText({ uri }: vscode.TextDocument): boolean {
  const here = vscode.workspace.workspaceFolders?.[0]?.uri.scheme;
  return uri.path.endsWith(SHEET_ENDING) && (uri.scheme === 'file' || uri.scheme === here);
}
