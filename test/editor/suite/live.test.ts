// A sheet is alive: results stand under its cells as soon as it opens and follow every edit, with nothing to run.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { block, closeAll, edit, openSheet, plainResult, resultSaying, sheetOf } from '../support/sheet.ts';
import { atTheScreen, click, press, target, typeText } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

describe('an open sheet', () => {
  afterEach(closeAll);

  it('shows its results with no run command, no execution counter and no dirty mark', async () => {
    const notebook = await openSheet(sheetOf('U_n = 400 V\nI_n = 34 A', 'S: kVA = sqrt(3) * U_n * I_n'));
    await resultSaying(notebook, 0, 'U_n = 400 V');
    await resultSaying(notebook, 1, 'S = 23.56 kVA');
    assert.equal(notebook.isDirty, false);
    assert.deepEqual(
      notebook.getCells().map((cell) => cell.executionSummary?.executionOrder),
      notebook.getCells().map(() => undefined),
    );
  });

  it('follows an edit, and leaves alone the outputs that it does not change', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A\nb = 3 A', 'c = a + 1 A', 'd = 2 * b'));
    await resultSaying(notebook, 1, 'c = 3.000 A');
    await resultSaying(notebook, 2, 'd = 6.000 A');
    const untouched = block(notebook, 2).outputs[0];
    await edit(block(notebook, 0), 'a = 2 A', 'a = 4 A');
    await resultSaying(notebook, 1, 'c = 5.000 A');
    assert.equal(block(notebook, 2).outputs[0], untouched);
    assert.equal(notebook.isDirty, true);
  });

  atTheScreen().it('follows what is typed', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await click(target.workbench('.notebookOverlay .cell-editor-part .view-line'));
    await press('Control+End');
    await typeText('\nb = 2 * a');
    await resultSaying(notebook, 0, 'b = 4.000 A');
  });

  it('says of a name without a value why there is none, and keeps the other results', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'c = a + x\nd = 2 * a'));
    assert.doesNotMatch(await resultSaying(notebook, 1, 'd = 4.000 A'), /c = /);
  });

  it('follows cells that are added, moved and removed', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'));
    await resultSaying(notebook, 1, 'b = 4.000 A');
    const change = new vscode.WorkspaceEdit();
    const added = new vscode.NotebookCellData(vscode.NotebookCellKind.Code, 'c = 3 * a', 'ampwright');
    change.set(notebook.uri, [vscode.NotebookEdit.insertCells(0, [added])]);
    await vscode.workspace.applyEdit(change);
    await resultSaying(notebook, 0, 'c = 6.000 A');
    const removal = new vscode.WorkspaceEdit();
    const defining = block(notebook, 1).index;
    removal.set(notebook.uri, [vscode.NotebookEdit.deleteCells(new vscode.NotebookRange(defining, defining + 1))]);
    await vscode.workspace.applyEdit(removal);
    await waitFor('c loses its value', () => !plainResult(block(notebook, 0)).includes('c = 6.000 A'));
  });

  it('takes results away with the code that gave them', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await edit(block(notebook, 0), 'a = 2 A', '');
    await waitFor('the output goes', () => block(notebook, 0).outputs.length === 0);
  });

  it('has its results back after “Clear All Outputs” and after “Run All”', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    const first = block(notebook, 0).outputs[0];
    await vscode.commands.executeCommand('notebook.clearAllCellsOutputs');
    await waitFor('a new output comes', () => block(notebook, 0).outputs[0] && block(notebook, 0).outputs[0] !== first);
    await resultSaying(notebook, 0, 'a = 2 A');
    await vscode.commands.executeCommand('notebook.execute');
    await resultSaying(notebook, 0, 'a = 2 A');
    assert.equal(block(notebook, 0).executionSummary?.success, undefined);
    assert.equal(notebook.isDirty, false);
  });

  atTheScreen().it('says what is wrong with a line that stays unfinished', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await click(target.workbench('.notebookOverlay .cell-editor-part .view-line'));
    await press('Control+End');
    await typeText('\nb = 2 *');
    await resultSaying(notebook, 0, 'error, line 2');
    await typeText(' a');
    await resultSaying(notebook, 0, 'b = 4.000 A');
  });

  atTheScreen().it('goes back with undo and forth with redo', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await click(target.workbench('.notebookOverlay .cell-editor-part .view-line'));
    await press('Control+End');
    await typeText('\nb = 5 A');
    await resultSaying(notebook, 0, 'b = 5 A');
    await press('Control+z');
    await waitFor('b goes', () => !plainResult(block(notebook, 0)).includes('b = 5 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await press('Control+Shift+z');
    await resultSaying(notebook, 0, 'b = 5 A');
  });
});
