// Sheets for the tests in the editor: written into the workspace, opened, edited, and read back from their file.
import * as vscode from 'vscode';
import { available, pictureOfFailure, settle } from './ui.ts';
import { waitFor } from './wait.ts';

const folder = () => vscode.workspace.workspaceFolders![0]!.uri;
let count = 0;

/** Writes a file into the workspace and returns its place. */
export async function writeFile(name: string, content: string | Uint8Array): Promise<vscode.Uri> {
  const uri = vscode.Uri.joinPath(folder(), name);
  await vscode.workspace.fs.writeFile(uri, typeof content === 'string' ? new TextEncoder().encode(content) : content);
  return uri;
}

export const readFile = async (uri: vscode.Uri): Promise<string> =>
  new TextDecoder('utf-8', { ignoreBOM: true }).decode(await vscode.workspace.fs.readFile(uri));

/** A sheet with these calc blocks, each below a heading. */
export const sheetOf = (...blocks: readonly string[]): string =>
  blocks.map((code, i) => `# Part ${i + 1}\n\n\`\`\`ampwright\n${code}\n\`\`\`\n`).join('\n');

/** Writes a sheet of its own name and opens it in the editor, as a click in the explorer does. */
export async function openSheet(text: string, name = `sheet-${++count}.ampwright.md`): Promise<vscode.NotebookDocument> {
  const uri = await writeFile(name, text);
  await vscode.commands.executeCommand('vscode.open', uri);
  const editor = await waitFor(`${name} opens`, () => {
    const active = vscode.window.activeNotebookEditor;
    return active?.notebook.uri.toString() === uri.toString() ? active : undefined;
  });
  return editor.notebook;
}

/** The calc cell with a number, from 0. */
export function block(notebook: vscode.NotebookDocument, number: number): vscode.NotebookCell {
  const blocks = notebook.getCells().filter((cell) => cell.document.languageId === 'ampwright');
  const found = blocks[number];
  if (!found) throw new Error(`The sheet has ${blocks.length} calc cells, none with number ${number}.`);
  return found;
}

/** What an output says in plain text; empty where the cell has none. */
export function plainResult(cell: vscode.NotebookCell): string {
  const item = cell.outputs.flatMap((output) => output.items).find(({ mime }) => mime === 'text/plain');
  return item ? new TextDecoder().decode(item.data) : '';
}

/** Waits until the results of a block say something, and returns them. */
export const resultSaying = (notebook: vscode.NotebookDocument, number: number, words: string): Promise<string> => {
  const text = () => plainResult(block(notebook, number));
  return waitFor(
    `the results of block ${number} say “${words}”`,
    () => text().includes(words) && text(),
    () => `They say “${text()}”.`,
  );
};

/** Replaces the one place where a cell says `before`. */
export async function edit(cell: vscode.NotebookCell, before: string, after: string): Promise<void> {
  const { document } = cell;
  const start = document.getText().indexOf(before);
  if (start < 0) throw new Error(`The cell does not say “${before}”.`);
  const range = new vscode.Range(document.positionAt(start), document.positionAt(start + before.length));
  const change = new vscode.WorkspaceEdit();
  change.replace(document.uri, range, after);
  if (!(await vscode.workspace.applyEdit(change))) throw new Error('The editor refused the edit.');
}

/** For behind each test: closes all editors without saving. */
export async function closeAll(this: Mocha.Context): Promise<void> {
  await pictureOfFailure(this);
  // A frame of outputs that is closed while it loads keeps its service worker busy, for which the next one waits for minutes.
  if (available()) await settle();
  const notebooks = () => vscode.workspace.notebookDocuments.filter((notebook) => notebook.isDirty);
  for (const notebook of notebooks()) {
    await vscode.window.showNotebookDocument(notebook);
    await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor');
  }
  for (const command of ['workbench.action.closeAllEditors', 'workbench.action.closePanel', 'notifications.clearAll'])
    await vscode.commands.executeCommand(command);
}
