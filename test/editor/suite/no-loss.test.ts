// Nothing that was written is lost, whoever else is at the file.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { block, closeAll, edit, openSheet, readFile, resultSaying, sheetOf } from '../support/sheet.ts';
import { available, miss, target } from '../support/ui.ts';

describe('what was written in a sheet', () => {
  afterEach(closeAll);

  it('is the same in two editors of one sheet', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await vscode.commands.executeCommand('workbench.action.splitEditor');
    await edit(block(notebook, 0), '2 A', '3 A');
    await resultSaying(notebook, 0, 'a = 3 A');
    const shown = vscode.window.visibleNotebookEditors.filter((editor) => editor.notebook.uri.toString() === notebook.uri.toString());
    assert.equal(shown.length, 2);
    assert.ok(shown.every((editor) => editor.notebook === notebook));
    assert.ok(await notebook.save());
    assert.equal(await readFile(notebook.uri), sheetOf('a = 3 A'));
  });

  it('stays in the editor when something else changes the file meanwhile', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'));
    await edit(block(notebook, 0), '2 A', '3 A');
    await resultSaying(notebook, 1, 'b = 6.000 A');
    await vscode.workspace.fs.writeFile(notebook.uri, new TextEncoder().encode(sheetOf('a = 70 A', 'b = 2 * a')));
    await edit(block(notebook, 1), '2 * a', '3 * a');
    await resultSaying(notebook, 1, 'b = 9.000 A');
    assert.equal(notebook.isDirty, true);
    assert.equal(block(notebook, 0).document.getText(), 'a = 3 A');
    assert.equal(await readFile(notebook.uri), sheetOf('a = 70 A', 'b = 2 * a'), 'the file keeps what the other wrote');
  });

  it('is open to reading and writing where the sheet has 5 MB of prose', async () => {
    const prose = 'The drum of the kiln (invented) starts on line, unloaded, about eleven times an hour in the season.\n'.repeat(52_000);
    const notebook = await openSheet(`${prose}\n${sheetOf('a = 2 A')}`);
    await resultSaying(notebook, 0, 'a = 2 A');
    if (available()) await miss(target.workbench('.statusbar-item:has-text("is being opened")'));
    await edit(block(notebook, 0), '2 A', '3 A');
    await resultSaying(notebook, 0, 'a = 3 A');
    assert.ok(await notebook.save());
    assert.ok((await readFile(notebook.uri)) === `${prose}\n${sheetOf('a = 3 A')}`, 'the file has the edit, and all else as it was');
  }).timeout(240_000);
});
