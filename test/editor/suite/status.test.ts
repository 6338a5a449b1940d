// How a sheet stands, at a glance: the status bar, the line below each block, the way to the worst requirement.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { block, closeAll, edit, openSheet, resultSaying, sheetOf } from '../support/sheet.ts';
import { atTheScreen, click, hover, miss, read, screenshot, see, target, theme } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const item = target.workbench('#ampwright\\.ampwright\\.ampwright\\.sheet, [id="ampwright.ampwright.sheet"]');

/** What the cursor is on, in the cell that has it. */
const selected = (): string | undefined => {
  const editor = vscode.window.activeTextEditor;
  return editor && editor.document.languageId === 'ampwright' ? editor.document.getText(editor.selection) : undefined;
};

const sheet = sheetOf(
  'I_n = 34.4 A    from plate "M-12"\nshall I_n <= 40 A',
  'U_s = 110 V    from plate "coil"\nshall I_n <= 34 A because "the contactor"\nshould U_s >= 115 V',
);

describe('the status of an open sheet', () => {
  afterEach(closeAll);

  it('leads to the worst requirement, wherever it stands', async () => {
    const notebook = await openSheet(sheet);
    await resultSaying(notebook, 1, 'fails');
    await vscode.commands.executeCommand('ampwright.goToWorst');
    await waitFor('the failing requirement is selected', () => selected()?.startsWith('shall I_n <= 34 A'));
  });

  it('leads to the worst requirement of one block', async () => {
    const notebook = await openSheet(sheet);
    await resultSaying(notebook, 1, 'fails');
    await vscode.commands.executeCommand('ampwright.goToWorst', 0);
    await waitFor('the only requirement of the block is selected', () => selected() === 'shall I_n <= 40 A');
  });

  atTheScreen().it('stands below no block where the user does not want it', async () => {
    const setting = (on: boolean | undefined) =>
      vscode.workspace.getConfiguration('ampwright').update('statusBelowBlocks', on, vscode.ConfigurationTarget.Global);
    const notebook = await openSheet(sheet);
    await resultSaying(notebook, 1, 'fails');
    await see(target.workbench('.cell-status-item:has-text("1 holds")'));
    try {
      await setting(false);
      await miss(target.workbench('.cell-status-item:has-text("1 holds")'));
      await waitFor('the status bar still tells', async () => (await read(item)).includes('1 holds · 2 fail'));
    } finally {
      await setting(undefined);
    }
    await see(target.workbench('.cell-status-item:has-text("1 holds")'));
  });

  atTheScreen().it('stands in the status bar and below each block, and a click leads to the worst', async () => {
    const notebook = await openSheet(sheet);
    await resultSaying(notebook, 1, 'fails');
    await waitFor('the status bar tells', async () => (await read(item)).includes('1 holds · 2 fail'));
    await see(target.workbench('.cell-status-item:has-text("1 holds")'));
    await see(target.workbench('.cell-status-item:has-text("2 fail")'));
    await hover(item);
    await see(target.workbench('.monaco-hover:has-text("shall I_n <= 34 A")'));
    await screenshot('status');
    await click(item);
    await waitFor('the failing requirement is selected', () => selected()?.startsWith('shall I_n <= 34 A'));
    await edit(block(notebook, 1), '34 A', '35 A');
    await waitFor('the status bar follows', async () => (await read(item)).includes('2 hold · 1 fails'));
    assert.equal(notebook.isDirty, true);
    await theme('dark');
    await screenshot('status dark');
    await theme('light');
  });
});
