// Writing a file whole or not at all.
import assert from 'node:assert/strict';
import { chmodSync, lstatSync, mkdirSync, readdirSync, readFileSync, statSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { writeAtomically } from '../../src/node/write-atomically.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

describe('writing a file whole or not at all', () => {
  const folder = temporaryFolder();
  const bytes = (text: string) => new TextEncoder().encode(text);
  const refused = async (writing: ReturnType<typeof writeAtomically>, because: string) => {
    const outcome = await writing;
    assert.equal(outcome.kind, 'refused');
    assert.equal(outcome.kind === 'refused' && outcome.because, because);
  };

  it('makes a file that is not there', async () => {
    assert.equal((await writeAtomically(folder.at('new.txt'), 'text')).kind, 'written');
    assert.equal(readFileSync(folder.at('new.txt'), 'utf8'), 'text');
    assert.deepEqual(readdirSync(folder.path), ['new.txt']);
  });

  it('replaces a file, keeps its mode and leaves nothing else behind', async () => {
    const path = folder.write('a.txt', 'old');
    chmodSync(path, 0o640);
    assert.equal((await writeAtomically(path, 'new', bytes('old'))).kind, 'written');
    assert.equal(readFileSync(path, 'utf8'), 'new');
    assert.equal(statSync(path).mode & 0o777, 0o640);
    assert.deepEqual(readdirSync(folder.path), ['a.txt']);
  });

  it('replaces the file rather than its content, so that a reader of the old one reads it to the end', async () => {
    const path = folder.write('a.txt', 'old');
    const before = statSync(path).ino;
    await writeAtomically(path, 'new');
    assert.notEqual(statSync(path).ino, before);
  });

  it('does not touch a file that already holds the content', async () => {
    const path = folder.write('a.txt', 'same');
    const before = statSync(path);
    assert.equal((await writeAtomically(path, 'same', bytes('same'))).kind, 'unchanged');
    assert.deepEqual([statSync(path).ino, statSync(path).mtimeMs], [before.ino, before.mtimeMs]);
  });

  it('writes through a symbolic link to its target and keeps the link', async () => {
    const path = folder.write('real/a.txt', 'old');
    symlinkSync('real/a.txt', folder.at('link.txt'));
    assert.equal((await writeAtomically(folder.at('link.txt'), 'new')).kind, 'written');
    assert.equal(readFileSync(path, 'utf8'), 'new');
    assert.ok(lstatSync(folder.at('link.txt')).isSymbolicLink());
    assert.deepEqual(readdirSync(folder.at('real')), ['a.txt']);
  });

  it('refuses a file that was changed since it was read, and leaves that change alone', async () => {
    const path = folder.write('a.txt', 'read');
    writeFileSync(path, 'changed by a colleague');
    await refused(writeAtomically(path, 'new', bytes('read')), 'it was changed by something else since it was read');
    assert.equal(readFileSync(path, 'utf8'), 'changed by a colleague');
    assert.deepEqual(readdirSync(folder.path), ['a.txt']);
  });

  it('refuses a file that was removed since it was read', async () => {
    await refused(writeAtomically(folder.at('gone.txt'), 'new', bytes('read')), 'it has been removed since it was read');
    assert.deepEqual(readdirSync(folder.path), []);
  });

  it('refuses a read-only file', async () => {
    const path = folder.write('a.txt', 'old');
    chmodSync(path, 0o444);
    await refused(writeAtomically(path, 'new', bytes('old')), 'it is read-only');
    assert.equal(readFileSync(path, 'utf8'), 'old');
  });

  it('refuses a folder and a link that leads nowhere', async () => {
    mkdirSync(folder.at('folder'));
    symlinkSync('nowhere', folder.at('link.txt'));
    await refused(writeAtomically(folder.at('folder'), 'new'), 'it is a folder');
    await refused(writeAtomically(folder.at('link.txt'), 'new'), 'it is a symbolic link that leads nowhere');
    assert.deepEqual(readdirSync(folder.path).sort(), ['folder', 'link.txt']);
  });

  it('refuses where the folder is not there, and makes none', async () => {
    await refused(writeAtomically(folder.at('no/a.txt'), 'new'), 'its folder is not there');
    assert.deepEqual(readdirSync(folder.path), []);
  });

  it('throws what the making of the content throws, and leaves the old file alone', async () => {
    const path = folder.write('a.txt', 'old');
    async function* content(): AsyncGenerator<string> {
      yield 'half of the new ';
      throw new Error('no more');
    }
    await assert.rejects(writeAtomically(path, content()), { message: 'no more' });
    assert.equal(readFileSync(path, 'utf8'), 'old');
    assert.deepEqual(readdirSync(folder.path), ['a.txt']);
  });

  it('removes what a killed write of the same file left behind, and nothing that may still be written', async () => {
    const path = folder.write('a.txt', 'old');
    const old = new Date(Date.now() - 3_600_000);
    for (const name of ['.a.txt.0123456789ab.tmp', '.b.txt.0123456789ab.tmp', '.a.txt.notes.tmp'])
      utimesSync(folder.write(name, 'x'), old, old);
    folder.write('.a.txt.ba9876543210.tmp', 'in work');
    await writeAtomically(path, 'new');
    assert.deepEqual(readdirSync(folder.path).sort(), ['.a.txt.ba9876543210.tmp', '.a.txt.notes.tmp', '.b.txt.0123456789ab.tmp', 'a.txt']);
  });

  it('takes names of the longest that the disk does, in any script', async () => {
    for (const name of ['x'.repeat(251), '図'.repeat(83), '🔧'.repeat(62)]) {
      assert.equal((await writeAtomically(folder.at(`${name}.txt`), 'text')).kind, 'written');
      assert.equal(readFileSync(folder.at(`${name}.txt`), 'utf8'), 'text');
    }
  });

  it('keeps every byte of what it is given', async () => {
    const content = Uint8Array.from({ length: 256 }, (_, i) => i);
    await writeAtomically(folder.at('bytes'), content);
    assert.deepEqual(new Uint8Array(readFileSync(folder.at('bytes'))), content);
  });
});
