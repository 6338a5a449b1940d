// A PDF from the editor, and typing that goes on while it is made. Whether the typesetting is there depends on how the extension was installed.
import assert from 'node:assert';
import { createRequire } from 'node:module';
import * as path from 'node:path';
import * as vscode from 'vscode';
import { pick } from '../support/picking.ts';
import { block, closeAll, edit, openSheet, resultSaying, sheetOf } from '../support/sheet.ts';
import { atTheScreen, click, see, target } from '../support/ui.ts';

const COMPILER = '@myriaddreamin/typst-ts-node-compiler';
const notice = (text: string) => target.workbench(`.notification-toast:has-text("${text}")`);

/** Whether the extension that is tested finds the typesetting. */
function typesets(): boolean {
  const { extensionPath } = vscode.extensions.getExtension('ampwright.ampwright')!;
  try {
    createRequire(path.join(extensionPath, 'dist/extension.cjs')).resolve(COMPILER);
    return true;
  } catch {
    return false;
  }
}

atTheScreen().describe('a PDF', () => {
  afterEach(async function () {
    await closeAll.call(this);
    await vscode.commands.executeCommand('notifications.clearAll');
  });

  const exportPdf = async (name: string) => {
    const notebook = await openSheet(sheetOf('a = 2 A from plate "M-12"', 'b = 2 * a'), `${name}.ampwright.md`);
    await resultSaying(notebook, 1, 'b = 4.000 A');
    void vscode.commands.executeCommand('ampwright.export');
    await pick('Export Sheet', 'a4', 'Page for an Audit on A4');
    await see(target.workbench('.quick-input-widget:has-text("Export: Page for an Audit on A4")'));
    await click(target.workbench('.quick-input-widget .monaco-button:has-text("OK")'));
    return notebook;
  };

  it('is made where the typesetting is there, while results follow what is typed', async function () {
    if (!typesets()) this.skip();
    const notebook = await exportPdf('typeset');
    await edit(block(notebook, 0), '2 A', '3 A');
    await resultSaying(notebook, 1, 'b = 6.000 A');
    await see(notice('Exported typeset.pdf'));
    const bytes = await vscode.workspace.fs.readFile(vscode.Uri.joinPath(notebook.uri, '../typeset.pdf'));
    assert.equal(new TextDecoder('latin1').decode(bytes.slice(0, 5)), '%PDF-');
  });

  it('is refused where it is not, with the package that is missing, and nothing is written', async function () {
    if (typesets()) this.skip();
    const notebook = await exportPdf('missing');
    await see(notice('The sheet was not exported'));
    await see(notice(COMPILER));
    const written = await vscode.workspace.fs.stat(vscode.Uri.joinPath(notebook.uri, '../missing.pdf')).then(
      () => true,
      () => false,
    );
    assert.equal(written, false);
  });
});
