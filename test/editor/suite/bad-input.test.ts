// What can be wrong with a file, or happen to it while it is open: the user is told in words, and nothing is lost.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { clickInto, line } from '../support/cell-text.ts';
import { block, closeAll, edit, openSheet, readFile, resultSaying, sheetOf, writeFile } from '../support/sheet.ts';
import { atTheScreen, click, press, read, screenshot, see, target, typeText } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const notice = (words: string) => target.workbench(`.notifications-toasts .notification-list-item:has-text("${words}")`);
const button = (words: string, label: string) =>
  target.workbench(`.notifications-toasts .notification-list-item:has-text("${words}") .monaco-button:has-text("${label}")`);

/** Puts the cursor before the last two characters of a line of a cell, its unit. */
async function beforeUnit(text: string): Promise<void> {
  await clickInto(text);
  await press('End');
  await press('ArrowLeft');
  await press('ArrowLeft');
}

atTheScreen().describe('the user is told, and nothing is lost,', () => {
  afterEach(closeAll);

  it('where something else has changed the file of a sheet with unsaved changes', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await beforeUnit('a = 2 A');
    await typeText('5');
    await resultSaying(notebook, 0, 'a = 25 A');
    const other = sheetOf('a = 70 A');
    await vscode.workspace.fs.writeFile(notebook.uri, new TextEncoder().encode(other));
    await press('Control+s');
    await see(notice('content of the file is newer'));
    await screenshot('changed on disk');
    assert.equal(await readFile(notebook.uri), other, 'the file keeps what the other wrote');
    assert.equal(block(notebook, 0).document.getText(), 'a = 25 A', 'the editor keeps what was typed');
    assert.equal(notebook.isDirty, true);
    await click(button('content of the file is newer', 'Overwrite'));
    await waitFor('it is saved', () => !notebook.isDirty);
    assert.equal(await readFile(notebook.uri), sheetOf('a = 25 A'));
  });

  it('where a merge has left its markers in a sheet', async () => {
    const text = `${sheetOf('a = 2 A', 'b = 2 * a')}\n<<<<<<< ours\nThe kiln drum.\n=======\nThe dust fan.\n>>>>>>> theirs\n`;
    const notebook = await openSheet(text);
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await see(line('<<<<<<< ours'));
    const conflict = notebook.getCells().find(({ document }) => document.languageId === 'plaintext')!;
    await waitFor('the problem stands at the markers', () =>
      vscode.languages.getDiagnostics(conflict.document.uri).some(({ message }) => message.includes('A merge left conflict markers here')),
    );
    await vscode.commands.executeCommand('workbench.actions.view.problems');
    await see(target.workbench('.markers-panel .monaco-list-row:has-text("A merge left conflict markers here")'));
    await screenshot('conflict markers');
    await waitFor('the status bar counts it', async () =>
      (await read(target.workbench('#ampwright\\.ampwright\\.ampwright\\.sheet, [id="ampwright.ampwright.sheet"]'))).includes('1 error'),
    );
    await beforeUnit('a = 2 A');
    await typeText('5');
    await resultSaying(notebook, 1, 'b = 50.00 A');
    await press('Control+s');
    await waitFor('it is saved', () => !notebook.isDirty);
    assert.equal(await readFile(notebook.uri), text.replace('a = 2 A', 'a = 25 A'), 'the edit, no results, all else as it was');
  });

  it('where a file is not UTF-8', async () => {
    const bytes = new Uint8Array([...new TextEncoder().encode('# K'), 0xfc, ...new TextEncoder().encode('hlung\n')]);
    const uri = await writeFile('latin-1.ampwright.md', bytes);
    await Promise.resolve(vscode.commands.executeCommand('vscode.open', uri)).catch(() => undefined);
    const said = target.workbench(
      '.monaco-editor-pane-placeholder:has-text("is not UTF-8"), .notification-list-item:has-text("is not UTF-8")',
    );
    assert.match(await read(said), /byte 4 \(line 1\) is not UTF-8; save it as UTF-8 first\. It stays as it is/);
    await screenshot('not UTF-8');
    assert.deepEqual([...(await vscode.workspace.fs.readFile(uri))], [...bytes]);
    // Others count the sheets of the workspace that can't be read.
    await vscode.workspace.fs.delete(uri);
  });

  it('where a sheet is edited as cells and as text at once', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await beforeUnit('a = 2 A');
    await typeText('5');
    await resultSaying(notebook, 0, 'a = 25 A');
    const options = { viewColumn: vscode.ViewColumn.Beside };
    await vscode.commands.executeCommand('vscode.openWith', notebook.uri, 'default', options);
    const text = await waitFor('the text is beside it', () => {
      const active = vscode.window.activeTextEditor;
      return active?.document.uri.toString() === notebook.uri.toString() && active;
    });
    assert.ok(text.document.getText() === sheetOf('a = 2 A'), 'the text is that of the file');
    await press('Control+End');
    await typeText('Noted.');
    await see(notice('has unsaved changes as cells and as text'));
    await screenshot('two editors');
    // The text is saved; the cells must not replace it unasked.
    await press('Control+s');
    await waitFor('the text is saved', () => !text.document.isDirty);
    await vscode.window.showNotebookDocument(notebook, { viewColumn: vscode.ViewColumn.One });
    assert.equal(block(notebook, 0).document.getText(), 'a = 25 A');
    await vscode.commands.executeCommand('workbench.action.focusFirstEditorGroup');
    await press('Control+s');
    await see(notice('content of the file is newer'));
    assert.equal(await readFile(notebook.uri), `${sheetOf('a = 2 A')}Noted.`);
    assert.equal(notebook.isDirty, true);
  });

  it('and what is saved as cells appears in the text beside them, and the other way round', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await vscode.commands.executeCommand('vscode.openWith', notebook.uri, 'default', { viewColumn: vscode.ViewColumn.Beside });
    const text = await waitFor('the text is beside it', () => {
      const active = vscode.window.activeTextEditor;
      return active?.document.uri.toString() === notebook.uri.toString() && active;
    });
    await edit(block(notebook, 0), '2 A', '3 A');
    assert.ok(await notebook.save());
    await waitFor('the text has it', () => text.document.getText() === sheetOf('a = 3 A'));
    const change = new vscode.WorkspaceEdit();
    const place = text.document.getText().indexOf('3 A');
    change.replace(text.document.uri, new vscode.Range(text.document.positionAt(place), text.document.positionAt(place + 1)), '8');
    assert.ok(await vscode.workspace.applyEdit(change));
    assert.ok(await text.document.save());
    await resultSaying(notebook, 0, 'a = 8 A');
    assert.equal(notebook.isDirty, false);
  });
});
