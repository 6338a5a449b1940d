// A workspace that is not trusted: everything that only reads and calculates works.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { block, closeAll, edit, openSheet, readFile, resultSaying, sheetOf } from '../support/sheet.ts';
import { screenshot } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

describe('in a workspace that is not trusted', () => {
  afterEach(closeAll);

  it('a sheet is alive', async () => {
    assert.equal(vscode.workspace.isTrusted, false);
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'));
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await edit(block(notebook, 0), '2 A', '3 A');
    await resultSaying(notebook, 1, 'b = 6.000 A');
    await screenshot('not trusted');
  });

  it('problems are shown and results are saved', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a\nc = x_1'));
    const { document } = block(notebook, 1);
    await waitFor('the error is reported', () =>
      vscode.languages.getDiagnostics(document.uri).some(({ range }) => document.getText(range) === 'x_1'),
    );
    await edit(block(notebook, 0), '2 A', '3 A');
    await notebook.save();
    assert.match(await readFile(notebook.uri), /\| b \| 6\.000 A \|/);
  });
});
