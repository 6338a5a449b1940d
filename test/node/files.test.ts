// What a sheet may read.
import assert from 'node:assert/strict';
import { mkdirSync, symlinkSync, truncateSync } from 'node:fs';
import { workspaceFiles, workspaceOf } from '../../src/node/files.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

describe('the files that a sheet may read', () => {
  const folder = temporaryFolder();
  beforeEach(() => {
    mkdirSync(folder.at('work/.git'), { recursive: true });
    folder.write('work/sheets/a.ampwright.md', '');
    folder.write('work/sheets/motors.csv', 'type,P / kW\n');
    folder.write('work/standard.ampwright.md', 'standard');
    folder.write('work/bytes.csv', Uint8Array.of(0xff, 0xfe));
    folder.write('work/bom.csv', '\ufefftype');
    folder.write('secret.txt', 'secret');
    truncateSync(folder.write('work/large.csv', 'type,P / kW\n'), 200e6);
    symlinkSync('../../secret.txt', folder.at('work/sheets/secret.csv'));
    symlinkSync('../..', folder.at('work/sheets/out'));
    symlinkSync('../standard.ampwright.md', folder.at('work/sheets/inside.ampwright.md'));
    symlinkSync('loop.csv', folder.at('work/sheets/loop.csv'));
  });

  const check = (path: string, expected: string | { refused: string }) =>
    it(`${JSON.stringify(path)}: ${typeof expected === 'string' ? 'read' : expected.refused}`, () => {
      const answer = workspaceFiles(folder.at('work/sheets/a.ampwright.md')).read(path);
      assert.deepEqual(answer, expected);
    });

  check('motors.csv', 'type,P / kW\n');
  check('../standard.ampwright.md', 'standard');
  check('inside.ampwright.md', 'standard');
  check('../bom.csv', 'type');
  check('missing.csv', { refused: 'it does not exist' });
  check('motors.csv/x', { refused: 'it does not exist' });
  check('..', { refused: 'it is a folder' });
  check('../bytes.csv', { refused: 'the file is UTF-16; save it as UTF-8 first' });
  check('../large.csv', { refused: 'it has more than 64 MiB' });
  check('loop.csv', { refused: 'its symbolic links run in a circle' });
  check('../../secret.txt', { refused: 'it lies outside the workspace' });
  check('../../nothing.txt', { refused: 'it lies outside the workspace' });
  check('secret.csv', { refused: 'it is a link that leads out of the workspace' });
  check('out/secret.txt', { refused: 'it is a link that leads out of the workspace' });
  check('/etc/hostname', { refused: 'write the path relative to the sheet, with /' });
  check('..\\standard.ampwright.md', { refused: 'write the path relative to the sheet, with /' });
  check('https://example.org/motors.csv', { refused: 'it is an address; a sheet reads files of its workspace only' });
  check('C:/Windows/win.ini', { refused: 'write the path relative to the sheet, with /' });
  check('c:motors.csv', { refused: 'write the path relative to the sheet, with /' });
  check('//server/share/motors.csv', { refused: 'write the path relative to the sheet, with /' });
  check('\\\\server\\share\\motors.csv', { refused: 'write the path relative to the sheet, with /' });
  check('file:///etc/hostname', { refused: 'it is an address; a sheet reads files of its workspace only' });
  check('%2e%2e/%2e%2e/secret.txt', { refused: 'it does not exist' });
  check('../sheets/../../secret.txt', { refused: 'it lies outside the workspace' });
  check('', { refused: 'that is no path' });
  check('a\0b', { refused: 'that is no path' });

  describe('the workspace', () => {
    it('is the nearest folder above that holds .git', () =>
      assert.equal(workspaceOf(folder.at('work/sheets/a.ampwright.md')), folder.at('work')));

    it('is the own folder of a sheet that lies in none', () => {
      folder.write('alone/b.ampwright.md', '');
      assert.equal(workspaceOf(folder.at('alone/b.ampwright.md')), folder.at('alone'));
    });
  });
});
