// The same work for many files on all processors: each thread takes the next file until none is left.
import { availableParallelism } from 'node:os';
import { setImmediate } from 'node:timers/promises';
import { parentPort, Worker, workerData } from 'node:worker_threads';

/** What is done with one file. Settings and answers are plain data: they pass from thread to thread. */
export type Work<Settings, Answer> = (path: string, settings: Settings) => Answer;

export interface Task<Settings, Answer> {
  readonly work: Work<Settings, Answer>;
  readonly settings: Settings;
  /** What further threads run; it calls `takeShare` with the same work. */
  readonly program: URL;
  /** Hears how many files are done. */
  readonly onDone?: (count: number) => void;
  /** Threads at most, this one included; else one for each processor. */
  readonly most?: number;
}

/** What a further thread is told. */
interface Share<Settings> {
  readonly paths: readonly string[];
  readonly settings: Settings;
  /** The next path that nobody has taken yet: one 32-bit integer that all threads count up. */
  readonly next: SharedArrayBuffer;
}

/** A further thread takes its time to start, so it is worth it from so many files on. */
const LEAST_EACH = 20;

/** Megabytes of short-lived values before they are swept: a sheet's own are gone with it. */
const YOUNG = 64;

/**
 * The answers in the order of `paths`, however the threads share them. What a thread that broke down leaves without an answer is done in
 * this one, so that a thread more or less changes no answer.
 */
export async function onAllProcessors<Settings, Answer>(
  paths: readonly string[],
  task: Task<Settings, Answer>,
): Promise<readonly Answer[]> {
  const { work, settings, program, onDone, most = availableParallelism() } = task;
  const answers = new Map<number, Answer>();
  const take = (index: number, answer: Answer) => {
    answers.set(index, answer);
    onDone?.(answers.size);
  };
  const share: Share<Settings> = { paths, settings, next: new SharedArrayBuffer(4) };
  const others = Math.max(0, Math.min(most, Math.ceil(paths.length / LEAST_EACH)) - 1);
  const threads = Array.from({ length: others }, () => thread(program, share, take));
  for (const index of free(share)) {
    take(index, work(paths[index]!, settings));
    if (others > 0) await setImmediate();
  }
  await Promise.all(threads);
  return paths.map((path, index) => answers.get(index) ?? work(path, settings));
}

/** Ends when the thread has ended, for whatever reason. */
function thread<Settings, Answer>(program: URL, share: Share<Settings>, take: (index: number, answer: Answer) => void): Promise<void> {
  return new Promise((resolve) => {
    new Worker(program, { workerData: share, resourceLimits: { maxYoungGenerationSizeMb: YOUNG } })
      .on('message', ([index, answer]: readonly [number, Answer]) => take(index, answer))
      .on('error', () => {})
      .on('exit', () => resolve());
  });
}

/** What a further thread does: its part of the files, each answer sent as it is found. */
export function takeShare<Settings, Answer>(work: Work<Settings, Answer>): void {
  const share = workerData as Share<Settings>;
  for (const index of free(share)) parentPort!.postMessage([index, work(share.paths[index]!, share.settings)]);
}

/** Paths that nobody else has taken, by their number. */
function* free<Settings>({ paths, next }: Share<Settings>): Generator<number, void> {
  const counter = new Int32Array(next);
  for (let index = Atomics.add(counter, 0, 1); index < paths.length; index = Atomics.add(counter, 0, 1)) yield index;
}
