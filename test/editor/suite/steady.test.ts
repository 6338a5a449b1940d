// While someone types, nothing on the screen moves or flickers but what the edit changes.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { clickInto, line } from '../support/cell-text.ts';
import { block, closeAll, openSheet, plainResult, resultSaying, sheetOf } from '../support/sheet.ts';
import { atTheScreen, press, see, settle, target, typeText, watch, watched } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const ledger = (name: string) => target.outputs(`.aw-ledger:has(tr[data-key="entry ${name}"])`);
const sheet = sheetOf('a = 2 A\nb = 3 A', 'c = a + 1 A', 'd = 2 * b', 'e = 3 * b');

atTheScreen().describe('while someone types', () => {
  afterEach(closeAll);

  const open = async () => {
    const notebook = await openSheet(sheet);
    await resultSaying(notebook, 3, 'e = 9.000 A');
    await see(ledger('a'));
    await see(ledger('d'));
    await settle();
    return notebook;
  };

  it('the results that are not affected keep their elements as they are', async () => {
    const notebook = await open();
    await clickInto('a = 2 A');
    await press('End');
    await press('ArrowLeft');
    await press('ArrowLeft');
    await watch(ledger('d'));
    await watch(target.outputs('.output_container:has(tr[data-key="entry c"])'));
    for (const digit of '4567') {
      await typeText(digit);
      await waitFor('c follows', () => plainResult(block(notebook, 1)) !== '');
    }
    await resultSaying(notebook, 1, 'c = 24568 A');
    await see(target.outputs('tr[data-key="entry c"]:has-text("24568 A")'));
    assert.deepEqual(
      (await watched(ledger('d'))).map(({ changes }) => changes),
      [0],
    );
    // The one that is affected is brought up to date in its place: the output is never taken away.
    const [affected, ...others] = await watched(target.outputs('.output_container:has(tr[data-key="entry c"])'));
    assert.ok(affected && affected.changes > 0 && others.length === 0);
  });

  it('cells and results stay where they are', async () => {
    const notebook = await open();
    await clickInto('c = a + 1 A');
    await press('End');
    await press('ArrowLeft');
    await press('ArrowLeft');
    await settle();
    const all = target.workbench('.notebookOverlay .cell-editor-part');
    await watch(all);
    await watch(target.outputs('.output_container'));
    await typeText('0');
    await resultSaying(notebook, 1, 'c = 12.00 A');
    await typeText('0');
    await resultSaying(notebook, 1, 'c = 102.0 A');
    await see(target.outputs('tr[data-key="entry c"]:has-text("102.0 A")'));
    await settle();
    for (const where of [all, target.outputs('.output_container')]) {
      const found = await watched(where);
      assert.ok(found.length >= 3, `${found.length} are in view`);
      for (const { tops } of found) assert.equal(tops.length, 1, `moved by way of ${tops.join(', ')}`);
    }
  });

  it('the sheet stays scrolled where it is, in a long sheet too', async () => {
    const many = Array.from({ length: 40 }, (_, i) => `s_${i + 1}: A = ${i === 0 ? 'a' : `s_${i}`} + 1 A`);
    const notebook = await openSheet(sheetOf('a = 2 A', ...many));
    await resultSaying(notebook, 40, 's_40 = 42.00 A');
    const cell = block(notebook, 20);
    const show = () =>
      vscode.window.activeNotebookEditor!.revealRange(
        new vscode.NotebookRange(cell.index, cell.index + 1),
        vscode.NotebookEditorRevealType.InCenter,
      );
    show();
    await see(target.outputs('tr[data-key="entry s_19"]'));
    await settle();
    // Outputs that come into view for the first time find their height only now.
    show();
    await see(line('s_20: A = s_19 + 1 A'));
    await see(target.outputs('tr[data-key="entry s_20"]'));
    await settle();
    await clickInto('s_20: A = s_19 + 1 A');
    await press('End');
    await press('ArrowLeft');
    await press('ArrowLeft');
    await settle();
    const editor = target.workbench('.notebookOverlay .cell-editor-part:has(.view-line:has-text("s_20: A ="))');
    await watch(editor);
    await typeText('0');
    // All below it change, in view and out of it.
    await resultSaying(notebook, 40, 's_40 = 51.00 A');
    await see(target.outputs('tr[data-key="entry s_20"]:has-text("31.00 A")'));
    await settle();
    const [{ tops } = { tops: [] }] = await watched(editor);
    assert.equal(tops.length, 1, `moved by way of ${tops.join(', ')}`);
  });

  it('results alone leave the sheet unchanged', async () => {
    const used = 'a = 2 A';
    const uri = vscode.Uri.joinPath(vscode.workspace.workspaceFolders![0]!.uri, 'steady-standard.ampwright.md');
    const write = (text: string) => vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(text));
    await write(sheetOf(used));
    const notebook = await openSheet(sheetOf('use "steady-standard.ampwright.md" for a', 'b = 2 * a'));
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await write(sheetOf('a = 5 A'));
    await resultSaying(notebook, 1, 'b = 10.00 A');
    await see(target.outputs('tr[data-key="entry b"]:has-text("10.00 A")'));
    assert.equal(notebook.isDirty, false);
    await press('Control+z');
    await resultSaying(notebook, 1, 'b = 10.00 A');
    assert.equal(notebook.isDirty, false);
  });
});
