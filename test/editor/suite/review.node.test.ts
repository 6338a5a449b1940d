// Comparing an open sheet with a revision of a real repository: a page whose line numbers lead to the lines.
import assert from 'node:assert';
import { execFileSync } from 'node:child_process';
import * as vscode from 'vscode';
import { pick } from '../support/picking.ts';
import { block, closeAll, edit, openSheet, resultSaying, sheetOf, writeFile } from '../support/sheet.ts';
import { atTheScreen, click, miss, read, resize, screenshot, see, target, theme } from '../support/ui.ts';
import { waitFor } from '../support/wait.ts';

const git = (folder: vscode.Uri, ...args: string[]) =>
  execFileSync('git', ['-c', 'user.name=R. Osei', '-c', 'user.email=osei@example.org', ...args], { cwd: folder.fsPath, encoding: 'utf8' });

atTheScreen().describe('comparing with a revision', () => {
  after(async function () {
    await theme('light');
    await resize(1280, 900);
    await closeAll.call(this);
  });
  let notebook: vscode.NotebookDocument;

  before(async () => {
    const text = sheetOf('I_n = 34.4 A from plate "M-12"', 'I_c: A = 1.1 * I_n\nshall I_c <= 40 A');
    const file = await writeFile('repository/starter.ampwright.md', text);
    const folder = vscode.Uri.joinPath(file, '..');
    git(folder, 'init', '-q', '-b', 'main');
    git(folder, 'add', '.');
    git(folder, 'commit', '-q', '-m', 'Starter of M-12 sized');
    notebook = await openSheet(text, 'repository/starter.ampwright.md');
    await resultSaying(notebook, 1, 'holds');
    await edit(block(notebook, 0), '34.4 A', '38.4 A');
    await resultSaying(notebook, 1, 'fails');
  });

  it('is offered for a sheet that lies in a repository, and for no other', async () => {
    const toolbar = (title: string) => target.workbench(`.notebook-toolbar-container .action-label[aria-label^="${title}"]`);
    await see(toolbar('Compare'));
    await openSheet(sheetOf('a = 2 A'));
    await see(toolbar('Sign'));
    await miss(toolbar('Compare'));
    await vscode.window.showNotebookDocument(notebook);
    await see(toolbar('Compare'));
  });

  it('offers where the work left the default branch, the changes of the sheet, branches and tags', async () => {
    const compared = vscode.commands.executeCommand('ampwright.compare');
    await see(target.workbench('.quick-input-widget:has-text("merge base with main")'));
    await see(target.workbench('.quick-input-widget:has-text("Starter of M-12 sized"):has-text("changes of this sheet")'));
    await screenshot('revisions');
    await pick('Compare Sheet with a Revision', 'merge base', 'merge base with main');
    await compared;
    await see(target.outputs('h1:has-text("What changed in meaning")'));
  });

  it('shows what changed in the sheet as it stands in the editor, unsaved', async () => {
    const page = await read(target.outputs('main'));
    for (const words of ['1 requirement now fails', '34.4 A', '38.4 A', 'I_c']) assert.ok(page.includes(words), `${words} in:\n${page}`);
  });

  it('follows the theme of the editor', async () => {
    const kinds = { light: 'vscode-light', dark: 'vscode-dark', 'high contrast': 'vscode-high-contrast' } as const;
    for (const name of ['light', 'dark', 'high contrast'] as const) {
      await theme(name);
      await see(target.outputs(`body.${kinds[name]} main`));
      await screenshot(`comparison ${name}`);
    }
  });

  it('fits a narrow window', async () => {
    await theme('light');
    await resize(640, 800);
    await screenshot('comparison narrow');
    await resize(1280, 900);
  });

  it('copies it as Markdown', async () => {
    await click(target.outputs('a:has-text("Copy as Markdown")'));
    const copied = await waitFor('it is in the clipboard', async () => {
      const text = await vscode.env.clipboard.readText();
      return text.includes('What changed in meaning') && text;
    });
    assert.match(copied, /^## What changed in meaning\n/);
    assert.match(copied, /38\.4 A/);
  });

  it('leads from a line number to the line', async () => {
    await click(target.outputs('tr:has-text("38.4 A") .aw-lines a'));
    await waitFor('the cursor is at the line', () => {
      const editor = vscode.window.activeTextEditor;
      return editor?.document.languageId === 'ampwright' && editor.document.lineAt(editor.selection.active).text.startsWith('I_n = 38.4 A');
    });
  });
});
