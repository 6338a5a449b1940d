// Finding the sheets under a path.
import assert from 'node:assert/strict';
import { mkdirSync, symlinkSync } from 'node:fs';
import { relative } from 'node:path';
import { findSheets } from '../../src/node/find-sheets.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

describe('finding sheets', () => {
  const folder = temporaryFolder();
  const found = async (...paths: string[]) => {
    const result = await findSheets(paths.map(folder.at));
    return { sheets: result.sheets.map((s) => relative(folder.path, s)), missing: result.missing.map((m) => m.because) };
  };

  it('searches folders, in the order of the paths, and passes by packages and what begins with a dot', async () => {
    for (const name of ['b.ampwright.md', 'a/z.ampwright.md', 'a/readme.md', 'node_modules/p/c.ampwright.md', '.git/d.ampwright.md'])
      folder.write(name, '');
    assert.deepEqual(await found('.'), { sheets: ['a/z.ampwright.md', 'b.ampwright.md'], missing: [] });
  });

  it('takes a Markdown file as it is, and each file once', async () => {
    folder.write('a/x.ampwright.md', '');
    folder.write('notes.md', '');
    assert.deepEqual((await found('notes.md', 'a', 'a/x.ampwright.md')).sheets, ['a/x.ampwright.md', 'notes.md']);
  });

  it('follows a link to a sheet but none to a folder, so that it ends', async () => {
    folder.write('a/x.ampwright.md', '');
    symlinkSync('x.ampwright.md', folder.at('a/y.ampwright.md'));
    symlinkSync('..', folder.at('a/up'));
    assert.deepEqual((await found('.')).sheets, ['a/x.ampwright.md', 'a/y.ampwright.md']);
  });

  it('says where there is nothing', async () => {
    mkdirSync(folder.at('empty'));
    folder.write('motors.csv', '');
    assert.deepEqual(await found('empty', 'nowhere', 'motors.csv'), {
      sheets: [],
      missing: [
        'no file in this folder ends in .ampwright.md',
        'there is no such file or folder',
        'it is no sheet: the name of one ends in .ampwright.md',
      ],
    });
  });
});
