// The Testing view: the requirements of every sheet of the workspace, evaluated without opening one.
import * as vscode from 'vscode';
import { block, closeAll, edit, openSheet, resultSaying, sheetOf, writeFile } from '../support/sheet.ts';
import { atTheScreen, click, miss, press, screenshot, see, target, theme } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const row = (text: string) => target.workbench(`.test-explorer .monaco-list-row:has-text("${text}")`);
const failed = (text: string) => target.workbench(`.test-explorer .monaco-list-row:has-text("${text}"):has(.codicon-testing-failed-icon)`);
const passed = (text: string) => target.workbench(`.test-explorer .monaco-list-row:has-text("${text}"):has(.codicon-testing-passed-icon)`);

atTheScreen().describe('the Testing view', () => {
  before(async () => {
    // What other tests left would push the rows looked for out of sight.
    for (const uri of await vscode.workspace.findFiles('**/*.ampwright.md')) await vscode.workspace.fs.delete(uri);
    // The workspace of the tests has no sheet when the editor starts; one that has starts the extension by that.
    await vscode.extensions.getExtension('ampwright.ampwright')!.activate();
    await writeFile('survey/poles.ampwright.md', sheetOf('I_n = 34.4 A from plate "M-12"', 'shall I_n <= 40 A\nshall I_n <= 34 A'));
    await writeFile('survey/coil.ampwright.md', sheetOf('U_s = 110 V from plate "coil"\nshall U_s >= 93.5 V\nshould U_s >= 115 V'));
  });
  afterEach(async function () {
    await vscode.commands.executeCommand('workbench.view.explorer');
    await closeAll.call(this);
  });

  it('has every sheet with its requirements, and a failed one shows both sides and jumps to its line', async () => {
    await vscode.commands.executeCommand('workbench.view.testing.focus');
    await see(row('poles'));
    await vscode.commands.executeCommand('testing.runAll');
    await see(failed('poles'));
    await see(passed('coil'));
    await click(row('poles'));
    await press('ArrowRight');
    await see(failed('shall I_n <= 34 A'));
    await see(passed('shall I_n <= 40 A'));
    await screenshot('testing');
    await click(failed('shall I_n <= 34 A'));
    await press('Enter');
    await waitFor('the sheet opens', () => vscode.window.activeNotebookEditor?.notebook.uri.path.endsWith('/poles.ampwright.md'));
    await screenshot('testing jumped');
    await waitFor('the cursor is at the requirement', () =>
      vscode.window.visibleTextEditors.some(
        ({ document, selection }) => document.languageId === 'ampwright' && document.lineAt(selection.active).text === 'shall I_n <= 34 A',
      ),
    );
    await theme('dark');
    await screenshot('testing dark');
    await theme('light');
  });

  it('follows an open sheet as it is edited', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A from plate "M-12"\nshall a <= 3 A'), 'survey/edited.ampwright.md');
    await resultSaying(notebook, 0, 'holds');
    await vscode.commands.executeCommand('workbench.view.testing.focus');
    await click(row('edited'));
    await press('ArrowRight');
    await see(row('shall a <= 3 A'));
    await edit(block(notebook, 0), '<= 3 A', '<= 1 A');
    await see(row('shall a <= 1 A'));
  });

  it('takes up a sheet that comes, and lets go of one that goes', async () => {
    await vscode.commands.executeCommand('workbench.view.testing.focus');
    await see(row('poles'));
    const uri = await writeFile('survey/arrived.ampwright.md', sheetOf('a = 2 A'));
    await see(row('arrived'));
    await vscode.workspace.fs.delete(uri);
    await miss(row('arrived'));
  });

  it('lets go of the sheets of a folder that goes', async () => {
    const uri = await writeFile('yard/crane.ampwright.md', sheetOf('a = 2 A'));
    await vscode.commands.executeCommand('workbench.view.testing.focus');
    await see(row('crane'));
    await vscode.workspace.fs.delete(vscode.Uri.joinPath(uri, '..'), { recursive: true });
    await miss(row('crane'));
  });
});
