// A workspace of two thousand sheets: all in the Testing view, evaluated on demand, while writing goes on.
import assert from 'node:assert';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';
import * as vscode from 'vscode';
import { block, closeAll, edit, openSheet, plainResult, resultSaying, sheetOf } from '../support/sheet.ts';
import { atTheScreen, click, press, read, screenshot, see, target } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const SHEETS = 2000;
const row = (text: string) => target.workbench(`.test-explorer .monaco-list-row:has-text("${text}")`);

atTheScreen().describe('a workspace of 2,000 sheets', () => {
  const folder = path.join(vscode.workspace.workspaceFolders![0]!.uri.fsPath, 'many');

  before(async () => {
    await mkdir(folder, { recursive: true });
    for (let i = 0; i < SHEETS; i++) {
      const text = sheetOf(`I_n = ${i % 60} A from plate "invented"\nshall I_n <= 50 A`);
      await writeFile(path.join(folder, `motor-${String(i).padStart(4, '0')}.ampwright.md`), text);
    }
    await vscode.extensions.getExtension('ampwright.ampwright')!.activate();
  });
  afterEach(async function () {
    await vscode.commands.executeCommand('workbench.view.explorer');
    await closeAll.call(this);
  });
  after(() => rm(folder, { recursive: true }));

  it('is listed at once, and a sheet is read when someone looks into it', async () => {
    await vscode.commands.executeCommand('workbench.view.testing.focus');
    await vscode.commands.executeCommand('testing.refreshTests');
    await see(row('motor-0000'));
    await click(row('motor-0000'));
    await press('ArrowRight');
    await see(row('shall I_n <= 50 A'));
    await screenshot('many sheets');
  });

  it('is evaluated while someone writes in a sheet, until that is stopped', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'));
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await vscode.commands.executeCommand('workbench.view.testing.focus');
    await see(row('motor-0000'));
    let ended = false;
    const run = Promise.resolve(vscode.commands.executeCommand('testing.runAll')).then(() => {
      ended = true;
    });
    for (let value = 3; value < 13; value++) {
      await edit(block(notebook, 0), `${value - 1} A`, `${value} A`);
      await waitFor('the result follows', () => plainResult(block(notebook, 1)).includes(`b = ${(2 * value).toPrecision(4)} A`));
    }
    await see(target.workbench('.test-explorer .monaco-list-row:has(.codicon-testing-passed-icon)'));
    if (!ended) await vscode.commands.executeCommand('testing.cancelRun');
    await run;
    await screenshot('many sheets run');
  }).timeout(240_000);

  it('is evaluated to its last sheet', async () => {
    await vscode.commands.executeCommand('workbench.view.testing.focus');
    await see(row('motor-0000'));
    await vscode.commands.executeCommand('testing.runAll');
    const [, passed, all] = /(\d+)\/(\d+)/.exec(await read(target.workbench('.test-explorer .result-summary'))) ?? [];
    // Of sixty motors in a row nine have more than 50 A; the workspace has some other sheets too.
    assert.ok(Number(all) >= SHEETS && Number(passed) >= SHEETS - 297, `${passed} of ${all}`);
    assert.ok(Number(all) - Number(passed) >= 297, `${passed} of ${all}`);
    await screenshot('many sheets evaluated');
  }).timeout(240_000);
});
