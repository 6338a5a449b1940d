// What a writer does to cells with the editor's own commands: results stay those of the text, wherever it now stands.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { block, closeAll, edit, openSheet, plainResult, readFile, resultSaying, sheetOf } from '../support/sheet.ts';
import { atTheScreen } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const run = (command: string) => vscode.commands.executeCommand(command);

/** Selects a calc cell, as a click beside its text does. */
async function select(notebook: vscode.NotebookDocument, number: number): Promise<vscode.NotebookCell> {
  const cell = block(notebook, number);
  vscode.window.activeNotebookEditor!.selection = new vscode.NotebookRange(cell.index, cell.index + 1);
  await waitFor('the cell is selected', () => vscode.window.activeNotebookEditor?.selection.start === cell.index);
  return cell;
}

/** Puts the cursor into a calc cell, at the start of a line. */
async function cursorAt(notebook: vscode.NotebookDocument, number: number, line: number): Promise<void> {
  const cell = await select(notebook, number);
  await run('notebook.cell.edit');
  const editor = await waitFor('the cell has the cursor', () => {
    const active = vscode.window.activeTextEditor;
    return active?.document === cell.document && active;
  });
  const place = new vscode.Position(line, 0);
  editor.selection = new vscode.Selection(place, place);
  await waitFor('the cursor is there', () => editor.selection.active.isEqual(place));
}

const blocksOf = (notebook: vscode.NotebookDocument): string[] =>
  notebook.getCells().flatMap(({ document }) => (document.languageId === 'ampwright' ? [document.getText()] : []));

describe('the cells of a sheet', () => {
  afterEach(closeAll);

  atTheScreen().it('keep their results when one is split and joined again', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A\nb = 2 * a\nc = b + a'));
    await resultSaying(notebook, 0, 'c = 6.000 A');
    await cursorAt(notebook, 0, 1);
    await run('notebook.cell.split');
    await waitFor('there are two', () => blocksOf(notebook).length === 2);
    await resultSaying(notebook, 1, 'c = 6.000 A');
    await waitFor('the first shows its own alone', () => !plainResult(block(notebook, 0)).includes('c = '));
    await edit(block(notebook, 0), '2 A', '3 A');
    await resultSaying(notebook, 1, 'c = 9.000 A');
    await select(notebook, 0);
    await run('notebook.cell.joinBelow');
    await waitFor('there is one', () => blocksOf(notebook).length === 1);
    await resultSaying(notebook, 0, 'c = 9.000 A');
  });

  atTheScreen().it('keep their results when one is moved', async () => {
    const notebook = await openSheet('```ampwright\nb = 2 * a\n```\n\n```ampwright\na = 2 A\n```\n');
    await resultSaying(notebook, 0, 'b = 4.000 A');
    await select(notebook, 1);
    await run('notebook.cell.moveUp');
    await waitFor('the order is the other', () => blocksOf(notebook)[0] === 'a = 2 A');
    await resultSaying(notebook, 0, 'a = 2 A');
    await resultSaying(notebook, 1, 'b = 4.000 A');
    assert.ok(await notebook.save());
    assert.match(await readFile(notebook.uri), /a = 2 A[\s\S]*b = 2 \* a[\s\S]*\| b \| 4\.000 A \| \|/);
  });

  atTheScreen().it('lose the value of a name with the cell that gave it, and have it again after undo', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'));
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await select(notebook, 0);
    await run('notebook.cell.delete');
    await waitFor('b loses its value', () => !plainResult(block(notebook, 0)).includes('b = 4.000 A'));
    await run('undo');
    await waitFor('the cell is back', () => blocksOf(notebook).length === 2);
    await resultSaying(notebook, 1, 'b = 4.000 A');
  });
});
