// A long run: `npm run fuzz -- TARGET COUNT [--seed N] [--from N]`; TARGET may be `all`. A worker tries the inputs, and the main thread
// looks whether it still moves. What fails is written into the target's corpus, as short as it still fails.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { type CorpusFile, corpusOf, inputOf } from './inputs.ts';
import { randomOf } from './random.ts';
import { shortest } from './shorten.ts';
import type { Target } from './target.ts';
import { TARGETS } from './targets.ts';

/** No input of a few thousand characters takes so long unless something is wrong. */
const HANGS_AFTER_SECONDS = 30;
const CORPUS = join(process.cwd(), 'test/fuzz/corpus');
const MOST_FAILURES = 20;

interface Job {
  readonly target: string;
  readonly count: number;
  readonly seed: number;
  readonly from: number;
  /** Holds the number of the input that is being tried. */
  readonly progress: SharedArrayBuffer;
}

interface Result {
  readonly characters: number;
  readonly failures: number;
  /** The slowest input: its number, length and time. */
  readonly slowest: { readonly index: number; readonly length: number; readonly ms: number };
}

if (isMainThread) await main();
else parentPort!.postMessage(work(workerData as Job));

async function main(): Promise<void> {
  const { positionals, values } = parseArgs({
    allowPositionals: true,
    options: { seed: { type: 'string', default: '1' }, from: { type: 'string', default: '0' } },
  });
  const [name = '', count = '0'] = positionals;
  const chosen = TARGETS.filter((target) => name === 'all' || target.name === name);
  if (chosen.length === 0 || !(Number(count) > 0)) {
    console.error(`npm run fuzz -- TARGET COUNT [--seed N] [--from N]\nTARGET: all, ${TARGETS.map((target) => target.name).join(', ')}`);
    process.exitCode = 2;
    return;
  }
  for (const target of chosen) {
    const job = { target: target.name, count: Number(count), seed: Number(values.seed), from: Number(values.from) };
    if (!(await run({ ...job, progress: new SharedArrayBuffer(4) }))) process.exitCode = 1;
  }
}

/** Runs one target; says whether nothing failed. */
function run(job: Job): Promise<boolean> {
  const began = Date.now();
  const tried = new Int32Array(job.progress);
  const worker = new Worker(new URL(import.meta.url), { workerData: job });
  return new Promise((resolve) => {
    let before = -1;
    const watch = setInterval(() => {
      const now = Atomics.load(tried, 0);
      if (now === before) {
        clearInterval(watch);
        console.error(`${job.target}: input ${now} of seed ${job.seed} hangs; it is kept in the corpus`);
        keep(job.target, `hangs-${job.seed}-${now}`, inputOf(targetNamed(job.target), corpusFor(job.target), job.seed, now).text);
        void worker.terminate().then(() => resolve(false));
      }
      before = now;
    }, HANGS_AFTER_SECONDS * 1000);
    worker.once('message', ({ characters, failures, slowest }: Result) => {
      clearInterval(watch);
      const seconds = (Date.now() - began) / 1000;
      console.log(
        `${job.target}: ${job.count.toLocaleString('en')} inputs of ${Math.round(characters / job.count)} characters on average in ${seconds.toFixed(0)} s, ` +
          `${failures} failed; slowest: input ${slowest.index}, ${slowest.length} characters, ${slowest.ms.toFixed(0)} ms (seed ${job.seed})`,
      );
      resolve(failures === 0);
    });
    worker.once('error', (error) => {
      clearInterval(watch);
      console.error(`${job.target}: ended at input ${Atomics.load(tried, 0)} of seed ${job.seed}:`, error);
      resolve(false);
    });
  });
}

function work({ target: name, count, seed, from, progress }: Job): Result {
  const target = targetNamed(name);
  const corpus = corpusFor(name);
  const tried = new Int32Array(progress);
  const told = new Set<string>();
  let [characters, failures] = [0, 0];
  let slowest = { index: 0, length: 0, ms: 0 };
  Error.stackTraceLimit = 0;
  for (let index = from; index < from + count; index++) {
    Atomics.store(tried, 0, index);
    const { text, random } = inputOf(target, corpus, seed, index);
    characters += text.length;
    const began = performance.now();
    try {
      target.check(text, random);
    } catch {
      failures++;
      const error = thrownBy(() => target.check(text, inputOf(target, corpus, seed, index).random));
      if (told.size < MOST_FAILURES && !told.has(signatureOf(error))) {
        told.add(signatureOf(error));
        tell(target, text, `${seed}-${index}`, error);
      }
    }
    const ms = performance.now() - began;
    if (ms > slowest.ms) slowest = { index, length: text.length, ms };
  }
  return { characters, failures, slowest };
}

/** What fails is tried again for the place where it does: while all is well no error, of a library either, need collect its stack. */
function thrownBy(check: () => void): unknown {
  Error.stackTraceLimit = 10;
  try {
    check();
    return new Error('failed once and then no more');
  } catch (error) {
    return error;
  } finally {
    Error.stackTraceLimit = 0;
  }
}

/** Where an error comes from, so that one mistake is told once. */
function signatureOf(error: unknown): string {
  const lines = (error instanceof Error ? (error.stack ?? '') : String(error)).split('\n');
  return lines
    .filter((line) => line.startsWith('    at '))
    .slice(0, 3)
    .join('');
}

function tell(target: Target, text: string, place: string, error: unknown): void {
  const wanted = signatureOf(error);
  const fails = (shorter: string) => {
    for (let i = 0; i < 4; i++) {
      try {
        target.check(shorter, randomOf(1, i));
      } catch {
        if (signatureOf(thrownBy(() => target.check(shorter, randomOf(1, i)))) === wanted) return true;
      }
    }
    return false;
  };
  const short = fails(text) ? shortest(text, fails) : text;
  console.error(`${target.name}, input ${place}: ${error instanceof Error ? error.stack : error}\nwith ${JSON.stringify(short)}\n`);
  keep(target.name, `found-${place}`, short);
}

function keep(target: string, name: string, text: string): void {
  mkdirSync(join(CORPUS, target), { recursive: true });
  writeFileSync(join(CORPUS, target, `${name}.txt`), text);
}

function targetNamed(name: string): Target {
  return TARGETS.find((target) => target.name === name)!;
}

function corpusFor(name: string): readonly CorpusFile[] {
  // What a run finds is left out, so that the same seed goes on giving the same inputs.
  return corpusOf(targetNamed(name), CORPUS).filter((file) => !/^(?:found|hangs)-/.test(file.name));
}
