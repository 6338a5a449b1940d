// The finished samples in the real editor: readable in every theme, and in a narrow window.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { closeAll, openSheet, plainResult, writeFile } from '../support/sheet.ts';
import { accessibilityFaults, atTheScreen, resize, screenshot, see, settle, target, theme } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const decoded = async (file: string): Promise<string> => {
  const { extensionUri } = vscode.extensions.getExtension('ampwright.ampwright')!;
  return new TextDecoder().decode(await vscode.workspace.fs.readFile(vscode.Uri.joinPath(extensionUri, 'samples', file)));
};

const looks = [
  ['light', 1280],
  ['light', 620],
  ['dark', 1280],
  ['high contrast', 1280],
  ['high contrast light', 1280],
] as const;

atTheScreen().describe('the sample', () => {
  after(async function () {
    await theme('light');
    await resize(1280, 900);
    await vscode.commands.executeCommand('workbench.view.explorer');
    await closeAll.call(this);
  });

  for (const sample of ['starter-sizing', 'motor-list']) {
    it(`${sample} is readable in every theme and in a narrow window`, async () => {
      await writeFile('motor-list.csv', await decoded('motor-list.csv'));
      const notebook = await openSheet(await decoded(`${sample}.ampwright.md`), `${sample}.ampwright.md`);
      const blocks = notebook.getCells().filter((cell) => cell.document.languageId === 'ampwright');
      await waitFor('every block has results', () => blocks.every((cell) => plainResult(cell) !== ''));
      assert.equal(notebook.isDirty, false);
      await vscode.commands.executeCommand('workbench.action.closeSidebar');
      for (const [look, width] of looks) {
        await theme(look);
        await resize(width, 900);
        for (const [part, cell] of [blocks[0]!, blocks.at(-1)!].entries()) {
          const range = new vscode.NotebookRange(cell.index, cell.index + 1);
          vscode.window.activeNotebookEditor!.revealRange(range, vscode.NotebookEditorRevealType.AtTop);
          await see(target.outputs('.aw-ledger'));
          await settle();
          await screenshot(`${sample} ${look} ${width} ${part + 1}`);
          assert.deepEqual(await accessibilityFaults(target.outputs('.aw-ledger')), []);
        }
      }
    }).timeout(300_000);
  }
});
