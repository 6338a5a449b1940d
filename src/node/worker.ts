// What commands of the editor have done in a thread of its own, so that typing goes on meanwhile: the thread's program. One thread a job.
import { parentPort, workerData } from 'node:worker_threads';
import type { ComparisonAsked } from './comparison-texts.ts';
import type { ExportAsked } from './export.ts';

/** Each takes and gives plain data, which passes from thread to thread, and loads what it alone needs. */
const jobs = {
  revisions: async (path: string) => (await import('./revision-choices.ts')).revisionChoices(path),
  comparison: async (asked: ComparisonAsked) => (await import('./comparison-texts.ts')).comparisonTexts(asked),
  export: async (asked: ExportAsked) => (await import('./export.ts')).exportOf(asked),
};

export type Jobs = typeof jobs;
export type Outcome<Made> = { readonly made: Made } | { readonly failed: string };

async function outcome(): Promise<Outcome<unknown>> {
  const { job, asked } = workerData as { job: keyof Jobs; asked: never };
  try {
    return { made: await jobs[job](asked) };
  } catch (error) {
    return { failed: error instanceof Error ? error.message : String(error) };
  }
}

void outcome().then((found) => parentPort!.postMessage(found));
