// The extension starts, in either kind of extension host.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { sheetOf, writeFile } from '../support/sheet.ts';
import { screenshot } from '../support/ui.ts';

describe('the extension', () => {
  it('is there', async () => {
    const extension = vscode.extensions.getExtension('ampwright.ampwright');
    assert.ok(extension);
    await extension.activate();
    await screenshot('started');
  });

  it('can look for sheets in the workspace', async () => {
    const uri = await writeFile('found.ampwright.md', sheetOf('a = 2 A'));
    const found = await vscode.workspace.findFiles('**/*.ampwright.md');
    assert.ok(
      found.some((one) => one.toString() === uri.toString()),
      found.join('\n'),
    );
  });
});
