// A sheet is alive: results stand under its cells as soon as it opens and follow every edit, with nothing to run.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { clickInto } from '../support/cell-text.ts';
import { block, closeAll, edit, openSheet, plainResult, resultSaying, sheetOf, writeFile } from '../support/sheet.ts';
import { atTheScreen, press, typeText } from '../support/ui.ts';
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

  it('follows an edit of a table and of prose, and leaves alone the outputs that it does not change', async () => {
    const table =
      '# Motors\n\nOf the survey.\n\nTable motors — survey, invented\n\n| name | I / A |\n| --- | --: |\n| M1 | 3 |\n| M2 | 5 |\n';
    const notebook = await openSheet(`${table}\n${sheetOf('motors.D = 2 * I', 'S = sum(motors.I)', 'b = 3 A')}`);
    await resultSaying(notebook, 0, '10.00 A');
    await resultSaying(notebook, 1, 'S = 8.000 A');
    await resultSaying(notebook, 2, 'b = 3 A');
    const outputs = () => [0, 1, 2].map((number) => block(notebook, number).outputs[0]);
    const untouched = outputs();
    await edit(notebook.cellAt(0), '| M2 | 5 |', '| M2 | 6 |');
    await resultSaying(notebook, 0, '12.00 A');
    await resultSaying(notebook, 1, 'S = 9.000 A');
    assert.equal(outputs()[2], untouched[2]);
    const before = outputs();
    // What is wrong with prose is told anew, and no output is touched.
    await edit(notebook.cellAt(0), 'survey.', 'survey, see [there](#nowhere).');
    const wrong = () => vscode.languages.getDiagnostics(notebook.cellAt(0).document.uri);
    const place = () => wrong().find(({ message }) => message.includes('nowhere'))?.range.start.line;
    await waitFor('the link is told of', () => place() === 2);
    await edit(notebook.cellAt(0), '# Motors\n', '# Motors\n\n');
    await waitFor('it is told a line further down', () => place() === 3);
    assert.deepEqual(outputs(), before);
  });

  it('follows a CSV file, and leaves alone the outputs that it does not change', async () => {
    const file = await writeFile('losses.csv', 'n,L / W\n1,3\n2,4\n');
    const notebook = await openSheet(`Table losses — [read](losses.csv)\n\n${sheetOf('S = sum(losses.L)', 'b = 3 A')}`);
    await resultSaying(notebook, 0, 'S = 7.000 W');
    await resultSaying(notebook, 1, 'b = 3 A');
    const untouched = block(notebook, 1).outputs[0];
    await vscode.workspace.fs.writeFile(file, new TextEncoder().encode('n,L / W\n1,3\n2,5\n3,1\n'));
    await resultSaying(notebook, 0, 'S = 9.000 W');
    assert.equal(block(notebook, 1).outputs[0], untouched);
  });

  atTheScreen().it('follows what is typed', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await clickInto('a = 2 A');
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
    await clickInto('a = 2 A');
    await press('Control+End');
    await typeText('\nb = 2 *');
    await resultSaying(notebook, 0, 'error, line 2');
    await typeText(' a');
    await resultSaying(notebook, 0, 'b = 4.000 A');
  });

  atTheScreen().it('goes back with undo and forth with redo', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await clickInto('a = 2 A');
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
