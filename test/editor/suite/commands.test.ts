// Commands that work in every host: a new sheet from a template, recording all sheets, signing, exporting, the reference.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { answer, pick } from '../support/picking.ts';
import { block, closeAll, edit, openSheet, readFile, resultSaying, sheetOf, writeFile } from '../support/sheet.ts';
import { atTheScreen, click, focused, press, screenshot, see, target, theme } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const command = (name: string, ...args: unknown[]) => vscode.commands.executeCommand(`ampwright.${name}`, ...args);
const notice = (text: string) => target.workbench(`.notification-toast:has-text("${text}")`);
const inFront = (ending: string) => {
  const notebook = vscode.window.activeNotebookEditor?.notebook;
  return notebook?.uri.path.endsWith(ending) ? notebook : undefined;
};

describe('the commands', () => {
  afterEach(async function () {
    await closeAll.call(this);
    await vscode.commands.executeCommand('notifications.clearAll');
  });

  it('are all under one category, and every one that is declared is there', async () => {
    const extension = vscode.extensions.getExtension('ampwright.ampwright')!;
    await extension.activate();
    const declared = extension.packageJSON.contributes.commands as { command: string; category: string }[];
    const there = await vscode.commands.getCommands();
    for (const { command, category } of declared) {
      assert.equal(category, 'Ampwright', command);
      assert.ok(there.includes(command), command);
    }
  });

  atTheScreen().it('make a new sheet from a template, which takes no other file’s place', async () => {
    for (const name of ['kiln-drum-m-12', 'kiln-drum-m-12-2']) {
      const made = command('newSheet');
      await pick('New Calc Sheet', 'starter', 'Starter Sizing');
      await answer('New Calc Sheet: Starter Sizing', 'Kiln drum: M-12');
      await made;
      const notebook = await waitFor(`${name} opens`, () => inFront(`/${name}.ampwright.md`));
      assert.equal(notebook.isDirty, false);
      const text = await readFile(notebook.uri);
      assert.match(text, /^title: "Kiln drum: M-12"$/m);
      assert.match(text, /^# Kiln drum: M-12$/m);
      assert.match(text, /\| shall 0\.95 \* I_plate .*holds/);
      if (name.endsWith('2')) await screenshot('new sheet');
      await closeAll.call({ currentTest: undefined } as unknown as Mocha.Context);
    }
  });

  atTheScreen().it('record every sheet, but none that has unsaved changes', async () => {
    const stale = await writeFile('record/stale.ampwright.md', sheetOf('a = 2 A', 'b = 2 * a'));
    const open = await openSheet(sheetOf('a = 2 A', 'c = 3 * a'), 'record/open.ampwright.md');
    await resultSaying(open, 1, 'c = 6.000 A');
    await edit(block(open, 0), '2 A', '3 A');
    const before = await readFile(open.uri);
    void command('recordAll');
    await see(notice('not written'));
    await screenshot('recorded');
    assert.match(await readFile(stale), /\| b \| 4\.000 A \|/);
    assert.equal(await readFile(open.uri), before);
  });

  atTheScreen().it('sign a sheet: its file gets results and an entry, and the editor shows it', async () => {
    const notebook = await openSheet(`---\nampwright: 1\ntitle: T\n---\n\n${sheetOf('a = 2 A', 'b = 2 * a')}`);
    await resultSaying(notebook, 1, 'b = 4.000 A');
    const signed = command('sign');
    await pick('Sign: As What', 'prep', 'prepared');
    await see(target.workbench('.quick-input-widget:has-text("no electronic signature in law")'));
    await screenshot('sign');
    await answer('Sign: Who (prepared)', 'R. Osei');
    await signed;
    const text = await readFile(notebook.uri);
    assert.match(text, /role: prepared\n {4}name: R\. Osei\n {4}date: \d{4}-\d\d-\d\d\n {4}covers: sha256:[0-9a-f]{64}\n/);
    assert.match(text, /\| b \| 4\.000 A \|/);
    await waitFor('the editor shows it', () => notebook.cellAt(0).document.getText().includes('R. Osei'));
    assert.equal(notebook.isDirty, false);
  });

  atTheScreen().it('sign with the name of the settings', async () => {
    const setting = (name: string | undefined) =>
      vscode.workspace.getConfiguration('ampwright').update('signAs', name, vscode.ConfigurationTarget.Global);
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'));
    await resultSaying(notebook, 1, 'b = 4.000 A');
    await setting('A. Lindqvist');
    try {
      const signed = command('sign');
      await pick('Sign: As What', 'chec', 'checked');
      await see(target.workbench('.quick-input-widget:has(.quick-input-title:has-text("Sign: Who (checked)"))'));
      await press('Enter');
      await signed;
    } finally {
      await setting(undefined);
    }
    assert.match(await readFile(notebook.uri), /role: checked\n {4}name: A\. Lindqvist\n/);
  });

  atTheScreen().it('save an unsaved sheet before it is signed, if the user agrees', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'));
    await edit(block(notebook, 0), '2 A', '3 A');
    const before = await readFile(notebook.uri);
    const left = command('sign');
    await pick('This Sheet Has Unsaved Changes', 'leave', 'Leave It');
    await left;
    assert.equal(await readFile(notebook.uri), before);
    const signed = command('sign');
    await pick('This Sheet Has Unsaved Changes', 'save', 'Save, then Go On');
    await pick('Sign: As What', 'prep', 'prepared');
    await answer('Sign: Who (prepared)', 'R. Osei');
    await signed;
    assert.match(await readFile(notebook.uri), /a = 3 A[\s\S]*\| b \| 6\.000 A \|/);
  });

  atTheScreen().it('export a sheet to where the user says, and offer to open it', async () => {
    const notebook = await openSheet(sheetOf('a = 2 A', 'b = 2 * a'), 'exported.ampwright.md');
    await resultSaying(notebook, 1, 'b = 4.000 A');
    void command('export');
    await pick('Export Sheet', 'json', 'Results as Data');
    await see(target.workbench('.quick-input-widget:has-text("Export: Results as Data")'));
    await click(target.workbench('.quick-input-widget .monaco-button:has-text("OK")'));
    await see(notice('Exported exported.json'));
    await screenshot('exported');
    const data = JSON.parse(await readFile(vscode.Uri.joinPath(notebook.uri, '../exported.json')));
    assert.deepEqual(
      data.entries.map((entry: { text: string }) => entry.text),
      ['2 A', '4.000 A'],
    );
    await click(target.workbench('.notification-toast .monaco-button:has-text("Open")'));
    await waitFor('it opens', () => vscode.window.activeTextEditor?.document.uri.path.endsWith('/exported.json'));
  });

  atTheScreen().it('open the reference, in light and dark', async () => {
    await command('openReference');
    await see(target.outputs('a:has-text("motors")'));
    await screenshot('reference');
    await theme('dark');
    await screenshot('reference dark');
    await theme('light');
    await click(target.outputs('a:has-text("motors")'));
    await see(target.outputs('#function-fla_3ph, [id*="fla_3ph"]'));
  });

  atTheScreen().it('open the reference at a function', async () => {
    await command('openReference', 'starting.html#function-start_energy');
    await see(target.outputs('#function-start_energy'));
    const reached = await waitFor('the keyboard is at the function', async () => {
      const { place, label } = await focused();
      return place === 'outputs' && label;
    });
    assert.match(reached, /^start_energy\(/);
  });
});
