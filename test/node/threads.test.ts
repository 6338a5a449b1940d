// Work shared between threads: the same answers as alone, in order, whatever becomes of a thread.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { onAllProcessors } from '../../src/node/threads.ts';
import { bundled } from '../support/program.ts';
import { type Told, tell } from './thread-program.ts';

describe('work for many files on all processors', function () {
  this.timeout(60_000);
  let program: URL;
  before(async () => {
    program = pathToFileURL(await bundled(join(import.meta.dirname, 'thread-program.ts')));
  });
  /** The first thread is slow on purpose, so that the others get files. */
  const shared = (paths: readonly string[], most: number, onDone?: (count: number) => void): Promise<readonly Told[]> =>
    onAllProcessors(paths, { work: tell, settings: { slow: 20 }, program, most, ...(onDone ? { onDone } : {}) });
  const names = (count: number, word = 'file') => Array.from({ length: count }, (_, i) => `${word} ${i}`);

  it('is shared, each file is done once, and the answers come in the order of the paths', async () => {
    const counts: number[] = [];
    const told = await shared(names(200), 3, (count) => counts.push(count));
    assert.deepEqual(
      told.map(({ path }) => path),
      names(200),
    );
    assert.ok(new Set(told.map(({ thread }) => thread)).size > 1, 'more than one thread gave answers');
    assert.deepEqual(
      counts,
      names(200).map((_, i) => i + 1),
    );
  });

  it('is done here where there is little of it, or one processor', async () => {
    for (const [count, most] of [
      [3, 8],
      [60, 1],
      [0, 8],
    ] as const) {
      const told = await shared(names(count), most);
      assert.deepEqual(
        told,
        names(count).map((path) => ({ path, thread: 0 })),
      );
    }
  });

  for (const word of ['dies', 'breaks'])
    it(`is done here where a thread ${word}`, async () => {
      const paths = [...names(60), ...names(60, word), ...names(60, 'more')];
      assert.deepEqual(
        (await shared(paths, 3)).map(({ path }) => path),
        paths,
      );
    });

  it('is done here where threads can’t be started at all', async () => {
    const nowhere = pathToFileURL(join(import.meta.dirname, 'nowhere.js'));
    const told = await onAllProcessors(names(60), { work: tell, settings: { slow: 0 }, program: nowhere, most: 3 });
    assert.deepEqual(
      told.map(({ path }) => path),
      names(60),
    );
  });
});
