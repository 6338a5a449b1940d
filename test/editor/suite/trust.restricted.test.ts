// A workspace that is not trusted: everything that only reads and calculates works.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { answer, pick } from '../support/picking.ts';
import { block, closeAll, edit, openSheet, readFile, resultSaying, sheetOf } from '../support/sheet.ts';
import { atTheScreen, click, hover, miss, press, screenshot, see, target } from '../support/ui.ts';
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

atTheScreen().describe('the commands in a workspace that is not trusted', () => {
  const notice = (text: string) => target.workbench(`.notification-toast:has-text("${text}")`);
  const toolbar = (title: string) => target.workbench(`.notebook-toolbar-container .action-label[aria-label^="${title}"]`);
  const plate = sheetOf('a = 2 A from plate "M-12"', 'b = 2 * a');

  afterEach(async function () {
    await closeAll.call(this);
    await vscode.commands.executeCommand('notifications.clearAll');
  });

  it('offer no comparison, since that asks git', async () => {
    const notebook = await openSheet(plate);
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await hover(target.workbench('.notebookOverlay .notebook-toolbar-container'));
    await see(toolbar('Sign'));
    await miss(toolbar('Compare'));
    await vscode.commands.executeCommand('workbench.action.quickOpen', '>Ampwright: ');
    await see(target.workbench('.quick-input-list .monaco-list-row:has-text("Sign Sheet")'));
    await miss(target.workbench('.quick-input-list .monaco-list-row:has-text("Compare Sheet")'));
    await screenshot('commands, not trusted');
    await press('Escape');
  });

  it('say why, where a key of one’s own asks for a comparison all the same', async () => {
    await openSheet(plate);
    void vscode.commands.executeCommand('ampwright.compare');
    await see(notice('git is asked in trusted workspaces only'));
  });

  it('sign a sheet', async () => {
    const notebook = await openSheet(plate);
    const signed = vscode.commands.executeCommand('ampwright.sign');
    await pick('Sign: As What', 'prep', 'prepared');
    await answer('Sign: Who (prepared)', 'R. Osei');
    await signed;
    assert.match(await readFile(notebook.uri), /^signatures:[\s\S]*name: R\. Osei/m);
  });

  it('export a page that says why it has no change history', async () => {
    const notebook = await openSheet(plate, 'not-trusted.ampwright.md');
    void vscode.commands.executeCommand('ampwright.export');
    await pick('Export Sheet', 'html', 'Page for an Audit');
    await click(target.workbench('.quick-input-widget .monaco-button:has-text("OK")'));
    await see(notice('Exported not-trusted.html'));
    assert.match(
      await readFile(vscode.Uri.joinPath(notebook.uri, '../not-trusted.html')),
      /the workspace was not trusted, and git was not asked/,
    );
  });
});
