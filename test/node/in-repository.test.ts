// Whether a file lies in a git repository.
import assert from 'node:assert/strict';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { inRepository } from '../../src/node/in-repository.ts';

describe('a file lies in a git repository', () => {
  let folder = '';
  before(async () => {
    folder = await mkdtemp(path.join(tmpdir(), 'ampwright-repository-'));
    await mkdir(path.join(folder, 'ours/.git'), { recursive: true });
    await mkdir(path.join(folder, 'ours/drum'));
    await mkdir(path.join(folder, 'worktree'));
    await writeFile(path.join(folder, 'worktree/.git'), 'gitdir: ../ours/.git/worktrees/w\n');
  });
  after(() => rm(folder, { recursive: true }));

  const check = (file: string, expected: boolean) =>
    it(`${file}: ${expected}`, () => assert.equal(inRepository(path.join(folder, file)), expected));
  check('ours/a.ampwright.md', true);
  check('ours/drum/a.ampwright.md', true);
  check('worktree/a.ampwright.md', true);
  check('a.ampwright.md', false);
});
