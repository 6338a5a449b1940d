// Cells that are added, moved, deleted, split and joined with keys and mouse: after each step the results are those of the text as it then
// stands, undo leads back and redo forth again, and saving writes them down.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { clickInto, line, selectCell } from '../support/cell-text.ts';
import { byTitle } from '../support/picking.ts';
import { block, closeAll, openSheet, plainResult, readFile, resultSaying, sheetOf } from '../support/sheet.ts';
import { atTheScreen, click, hover, press, screenshot, target, typeText } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const blocksOf = (notebook: vscode.NotebookDocument): string[] =>
  notebook.getCells().flatMap(({ document }) => (document.languageId === 'ampwright' ? [document.getText()] : []));

/** Waits until the calc cells say exactly this. */
const blocksAre = (notebook: vscode.NotebookDocument, ...wanted: readonly string[]): Promise<unknown> =>
  waitFor(
    `the blocks say ${JSON.stringify(wanted)}`,
    () => JSON.stringify(blocksOf(notebook)) === JSON.stringify(wanted),
    () => `They say ${JSON.stringify(blocksOf(notebook))}.`,
  );

async function cursorBefore(text: string): Promise<void> {
  await clickInto(text);
  await press('Home');
  await waitFor('the cursor is there', () => {
    const editor = vscode.window.activeTextEditor;
    return editor?.document.lineAt(editor.selection.active).text === text && editor.selection.active.character === 0;
  });
}

async function save(notebook: vscode.NotebookDocument): Promise<string> {
  await press('Control+s');
  await waitFor('it is saved', () => !notebook.isDirty);
  return readFile(notebook.uri);
}

const recorded = (...rows: readonly string[]): string =>
  ['<!-- results -->', '| result | value | note |', '| :-- | --: | :-- |', ...rows, '<!-- end results -->'].join('\n');

atTheScreen().describe('by hand, a cell', () => {
  afterEach(closeAll);

  it('is added with a key and filled, undone, redone and saved', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await selectCell('a = 2 A');
    await press('Control+Enter');
    await blocksAre(notebook, 'a = 2 A', '');
    await waitFor('the cursor is in the new cell', () => vscode.window.activeTextEditor?.document.getText() === '');
    await typeText('b = 3 * a');
    await resultSaying(notebook, 1, 'b = 6.000 A');
    await press('Control+z');
    await waitFor('what was typed last goes, and with it the result', () => !plainResult(block(notebook, 1)).includes('b = 6.000 A'));
    await press('Control+Shift+z');
    await resultSaying(notebook, 1, 'b = 6.000 A');
    assert.equal(
      await save(notebook),
      `${sheetOf('a = 2 A').trimEnd()}\n\n\`\`\`ampwright\nb = 3 * a\n\`\`\`\n\n${recorded('| b | 6.000 A | |')}\n`,
    );
  });

  it('is added with the toolbar, in the notation', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A'));
    await resultSaying(notebook, 0, 'a = 2 A');
    await selectCell('a = 2 A');
    await click(target.workbench('.notebook-toolbar-container .action-item a[aria-label*="Code"]'));
    await blocksAre(notebook, 'a = 2 A', '');
    await waitFor('the cursor is in the new cell', () => vscode.window.activeTextEditor?.document.getText() === '');
    await typeText('b = 3 * a');
    await resultSaying(notebook, 1, 'b = 6.000 A');
    await press('Escape');
    await press('z');
    await screenshot('added');
  });

  it('is moved with keys, undone and redone, and saved in its new place', async () => {
    const notebook = await openSheet('```ampwright\nb = 2 * a\n```\n\n```ampwright\na = 2 A\n```\n');
    await resultSaying(notebook, 0, 'b = 4.000 A');
    await selectCell('a = 2 A');
    await press('Alt+ArrowUp');
    await blocksAre(notebook, 'a = 2 A', 'b = 2 * a');
    await resultSaying(notebook, 0, 'a = 2 A');
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await press('Control+z');
    await blocksAre(notebook, 'b = 2 * a', 'a = 2 A');
    await resultSaying(notebook, 0, 'b = 4.000 A');
    await resultSaying(notebook, 1, 'a = 2 A');
    await press('Control+Shift+z');
    await blocksAre(notebook, 'a = 2 A', 'b = 2 * a');
    await resultSaying(notebook, 1, 'b = 4.000 A');
    assert.equal(
      await save(notebook),
      `\`\`\`ampwright\na = 2 A\n\`\`\`\n\n\`\`\`ampwright\nb = 2 * a\n\`\`\`\n\n${recorded('| b | 4.000 A | |')}\n`,
    );
  });

  it('is deleted with keys, and what needs it says so, until undo', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'));
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await selectCell('a = 2 A');
    await press('Delete');
    await blocksAre(notebook, 'b = 2 * a');
    await resultSaying(notebook, 0, 'not calculated');
    await press('Control+z');
    await blocksAre(notebook, 'a = 2 A', 'b = 2 * a');
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await press('Control+Shift+z');
    await blocksAre(notebook, 'b = 2 * a');
    await resultSaying(notebook, 0, 'not calculated');
    assert.match(await save(notebook), /\| b \| \| error: \\`a\\` is not defined \|/);
    await press('Control+z');
    await blocksAre(notebook, 'a = 2 A', 'b = 2 * a');
    await resultSaying(notebook, 1, 'b = 4.000 A');
    assert.equal(await save(notebook), `${sheetOf('a = 2 A', 'b = 2 * a')}\n${recorded('| b | 4.000 A | |')}\n`);
  });

  it('is deleted with the button at its corner', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 3 A'));
    await resultSaying(notebook, 1, 'b = 3 A');
    await selectCell('b = 3 A');
    await hover(line('b = 3 A'));
    await click(target.workbench('.monaco-list-row.focused .cell-title-toolbar .codicon-notebook-delete-cell'));
    await blocksAre(notebook, 'a = 2 A');
    await resultSaying(notebook, 0, 'a = 2 A');
  });

  it('is split where the cursor stands and joined again', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A\nb = 2 * a\nc = b + a'));
    await resultSaying(notebook, 0, 'c = 6.000 A');
    await cursorBefore('b = 2 * a');
    // The editor leaves the end of the line before in the first cell.
    await press('Control+k');
    await press('Control+Shift+Backslash');
    await blocksAre(notebook, 'a = 2 A\n', 'b = 2 * a\nc = b + a');
    await resultSaying(notebook, 1, 'c = 6.000 A');
    await waitFor(
      'the first shows its own alone',
      () => plainResult(block(notebook, 0)) !== '' && !plainResult(block(notebook, 0)).includes('c = '),
    );
    assert.equal(
      await save(notebook),
      `${sheetOf('a = 2 A\n').trimEnd()}\n\n\`\`\`ampwright\nb = 2 * a\nc = b + a\n\`\`\`\n\n${recorded('| b | 4.000 A | |', '| c | 6.000 A | |')}\n`,
    );
    const joined = 'a = 2 A\n\nb = 2 * a\nc = b + a';
    await selectCell('a = 2 A');
    await byTitle('Notebook: Join With Next Cell');
    await blocksAre(notebook, joined);
    await resultSaying(notebook, 0, 'c = 6.000 A');
    await press('Control+z');
    await blocksAre(notebook, 'a = 2 A\n', 'b = 2 * a\nc = b + a');
    await resultSaying(notebook, 1, 'c = 6.000 A');
    await press('Control+Shift+z');
    await blocksAre(notebook, joined);
    await resultSaying(notebook, 0, 'a = 2 A');
    assert.equal(await save(notebook), `${sheetOf(joined)}\n${recorded('| b | 4.000 A | |', '| c | 6.000 A | |')}\n`);
  });
});
