// Symbolic links: a sheet reads through those that stay in the workspace, and through no others.
import { mkdtemp, rm, symlink, writeFile as writeOutside } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import * as vscode from 'vscode';
import { block, closeAll, openSheet, resultSaying, sheetOf, writeFile } from '../support/sheet.ts';
import { waitFor } from '../support/wait.ts';

const folder = () => vscode.workspace.workspaceFolders![0]!.uri.fsPath;

describe('a symbolic link', () => {
  let outside = '';
  before(async () => {
    outside = await mkdtemp(path.join(tmpdir(), 'ampwright-outside-'));
  });
  afterEach(closeAll);
  after(() => rm(outside, { recursive: true, force: true }));

  it('within the workspace is followed', async () => {
    await writeFile('real.ampwright.md', sheetOf('U_mill = 400 V'));
    await symlink('real.ampwright.md', path.join(folder(), 'linked.ampwright.md'));
    const notebook = await openSheet(sheetOf('use "linked.ampwright.md" for U_mill\nU = 2 * U_mill'));
    await resultSaying(notebook, 0, 'U = 800.0 V');
  });

  for (const [what, link, used] of [
    ['to a file outside', 'away.ampwright.md', 'away.ampwright.md'],
    ['to a folder outside', 'away', 'away/secret.ampwright.md'],
  ] as const) {
    it(`${what} is refused`, async () => {
      await writeOutside(path.join(outside, 'secret.ampwright.md'), sheetOf('U_mill = 400 V'));
      await symlink(link === 'away' ? outside : path.join(outside, 'secret.ampwright.md'), path.join(folder(), link));
      const notebook = await openSheet(sheetOf(`use "${used}" for U_mill\nU = 2 * U_mill`));
      await waitFor('the refusal is told', () =>
        vscode.languages
          .getDiagnostics(block(notebook, 0).document.uri)
          .some(({ message }) => message.includes('a link that leads out of the workspace')),
      );
    });
  }
});
