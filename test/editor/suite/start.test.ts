// The extension starts, in either kind of extension host.
import assert from 'node:assert';
import * as vscode from 'vscode';
import { screenshot } from '../support/ui.ts';

describe('the extension', () => {
  it('is there', async () => {
    const extension = vscode.extensions.getExtension('ampwright.ampwright');
    assert.ok(extension);
    await extension.activate();
    await screenshot('started');
  });
});
