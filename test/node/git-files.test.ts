// Files of a revision on real repositories.
import assert from 'node:assert/strict';
import { renameSync, symlinkSync } from 'node:fs';
import { renamesBetween, revisionFiles, storedFiles, storedSheets } from '../../src/node/git-files.ts';
import { testRepository } from '../support/repository.ts';

describe('files of a revision', () => {
  const repository = testRepository();
  const stored = (path: string, commit = 'HEAD') => {
    const found = storedFiles(repository.path, commit, [path]).get(path);
    return found instanceof Uint8Array ? Buffer.from(found).toString('utf8') : found;
  };

  it('are given as they were, whatever the work tree holds now', () => {
    const old = repository.commit('first', { 'sheets/a.ampwright.md': 'Ω old\r\n', 'sheets/with space, Ü.csv': 'x\n' });
    repository.commit('second', { 'sheets/a.ampwright.md': 'new' });
    repository.write('sheets/a.ampwright.md', 'not committed');
    assert.equal(stored('sheets/a.ampwright.md', old), 'Ω old\r\n');
    assert.equal(stored('sheets/a.ampwright.md'), 'new');
    assert.equal(stored('sheets/with space, Ü.csv', old), 'x\n');
  });

  it('many come in one answer, empty ones and missing ones too', () => {
    repository.commit('first', { a: 'A\nmissing\n', b: '', c: 'C' });
    const found = storedFiles(repository.path, 'HEAD', ['a', 'gone', 'b', 'c', 'new\nline']);
    assert.deepEqual(
      [...found].map(([path, bytes]) => [path, bytes instanceof Uint8Array ? Buffer.from(bytes).toString() : bytes]),
      [
        ['a', 'A\nmissing\n'],
        ['gone', null],
        ['b', ''],
        ['c', 'C'],
        ['new\nline', null],
      ],
    );
  });

  it('that are no files of the repository are refused with the reason', () => {
    symlinkSync('/etc/hostname', repository.at('out'));
    symlinkSync('nowhere', repository.at('dangling'));
    symlinkSync('loop', repository.at('loop'));
    symlinkSync('folder/real', repository.at('inside'));
    repository.commit('first', {
      'folder/real': 'real',
      large: 'version https://git-lfs.github.com/spec/v1\noid sha256:0000\nsize 9\n',
    });
    assert.equal(stored('inside'), 'real');
    const refusals = {
      out: /leads out/,
      dangling: /leads nowhere/,
      loop: /circle/,
      folder: /is a folder/,
      'folder/real/x': /does not exist/,
      large: /Git LFS/,
    };
    for (const [path, because] of Object.entries(refusals)) {
      const found = stored(path);
      assert.ok(found !== null && typeof found === 'object' && 'refused' in found, path);
      assert.match(found.refused, because);
    }
  });

  it('the sheets under a folder are listed by path, without packages and hidden folders', () => {
    const sheets = ['b.ampwright.md', 'calculations/a.ampwright.md', 'calculations/kiln/Ü b.ampwright.md'];
    const others = [
      'calculations/readme.md',
      'calculations/node_modules/p/x.ampwright.md',
      '.cache/x.ampwright.md',
      'calculations-old/x.ampwright.md',
    ];
    repository.commit('first', Object.fromEntries([...sheets, ...others].map((path) => [path, ''])));
    assert.deepEqual(storedSheets(repository.path, 'HEAD', 'calculations'), sheets.slice(1));
    assert.deepEqual(storedSheets(repository.path, 'HEAD', '.'), [...sheets, 'calculations-old/x.ampwright.md'].sort());
    assert.deepEqual(storedSheets(repository.path, 'HEAD', 'nothing-there'), []);
  });

  it('a renamed file is known by its old path', () => {
    const old = repository.commit('first', { 'kiln.ampwright.md': 'a long enough text\n'.repeat(20) });
    repository.git('mv', 'kiln.ampwright.md', 'drum.ampwright.md');
    repository.commit('renamed', {});
    assert.deepEqual([...renamesBetween(repository.path, old, 'HEAD')], [['drum.ampwright.md', 'kiln.ampwright.md']]);
  });

  it('a sheet reads what it uses from the same revision, inside the repository alone', () => {
    const old = repository.commit('first', {
      'calc/a.ampwright.md': '',
      'calc/data/m.csv': 'old',
      'standard.ampwright.md': '\ufeffstandard',
      bin: '\ufffd',
    });
    repository.commit('second', { 'calc/data/m.csv': 'new', 'standard.ampwright.md': null });
    renameSync(repository.at('calc'), repository.at('moved'));
    const files = revisionFiles(repository.path, old, 'calc/a.ampwright.md');
    assert.equal(files.read('data/m.csv'), 'old');
    assert.equal(files.read('../standard.ampwright.md'), 'standard');
    const refused = {
      '../../x': /outside the repository/,
      '/etc/passwd': /relative/,
      'gone.csv': /does not exist in/,
      'https://x/y': /address/,
      data: /is a folder/,
    };
    for (const [path, because] of Object.entries(refused)) {
      const answer = files.read(path);
      assert.ok(typeof answer !== 'string', path);
      assert.match(answer.refused, because);
    }
  });
});
