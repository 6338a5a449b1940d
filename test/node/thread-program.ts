// What the threads of the test run: answers that tell which thread gave them.
import { isMainThread, threadId } from 'node:worker_threads';
import { takeShare } from '../../src/node/threads.ts';

export interface Told {
  readonly path: string;
  readonly thread: number;
}

/** `dies …` ends a further thread without a word, `breaks …` by an exception; the first thread answers for all. */
export function tell(path: string, settings: { readonly slow: number }): Told {
  if (!isMainThread && path.startsWith('dies')) process.exit(3);
  if (!isMainThread && path.startsWith('breaks')) throw new Error(path);
  if (isMainThread) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, settings.slow);
  return { path, thread: threadId };
}

if (!isMainThread) takeShare(tell);
