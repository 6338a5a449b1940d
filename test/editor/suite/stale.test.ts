// Results that are not those of the text: recorded otherwise in the file, or not followed since live results are off.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { block, closeAll, edit, openSheet, plainResult, resultSaying, sheetOf } from '../support/sheet.ts';
import { atTheScreen, screenshot, see, target } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const recorded = (row: string) =>
  ['', '<!-- results -->', '| result | value | note |', '| :-- | --: | :-- |', row, '<!-- end results -->', ''].join('\n');

describe('a sheet whose recorded results are stale', () => {
  afterEach(closeAll);

  it('shows the old ones beside the new until it is saved', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a') + recorded('| b | 5.000 A | |'));
    assert.match(await resultSaying(notebook, 1, 'b = 4.000 A'), /recorded: 5\.000 A/);
    assert.equal(notebook.isDirty, false);
    await edit(block(notebook, 0), '2 A', '3 A');
    assert.match(await resultSaying(notebook, 1, 'b = 6.000 A'), /recorded: 5\.000 A/);
    await notebook.save();
    await waitFor('the old result goes', () => !plainResult(block(notebook, 1)).includes('recorded'));
  });

  atTheScreen().it('shows both where one looks', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a') + recorded('| b | 5.000 A | |'));
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await see(target.outputs('text=Recorded otherwise'));
    await screenshot('recorded otherwise');
  });

  it('says nothing of what only an edit has changed', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a') + recorded('| b | 4.000 A | |'));
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await edit(block(notebook, 0), '2 A', '3 A');
    assert.doesNotMatch(await resultSaying(notebook, 1, 'b = 6.000 A'), /recorded/);
  });
});

describe('with live results turned off', () => {
  const follow = (on: boolean | undefined) =>
    vscode.workspace.getConfiguration('ampwright').update('liveResults', on, vscode.ConfigurationTarget.Global);
  before(() => follow(false));
  after(async function () {
    await closeAll.call(this);
    await follow(undefined);
  });

  it('results are marked as not current after an edit, until “Run All”', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'));
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await edit(block(notebook, 0), '2 A', '3 A');
    assert.match(await resultSaying(notebook, 1, 'Not current'), /b = 4\.000 A/);
    await screenshot('not current');
    await vscode.commands.executeCommand('notebook.execute');
    assert.doesNotMatch(await resultSaying(notebook, 1, 'b = 6.000 A'), /Not current/);
  });

  it('saving calculates them too', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'));
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await edit(block(notebook, 0), '2 A', '3 A');
    await resultSaying(notebook, 1, 'Not current');
    await notebook.save();
    assert.doesNotMatch(await resultSaying(notebook, 1, 'b = 6.000 A'), /Not current/);
  });
});
