// Has a job done by a thread of its own.
import { Worker } from 'node:worker_threads';
import type { Jobs, Outcome } from './worker.ts';

/** The program lies beside the part of the bundle that this file is in. */
const PROGRAM = new URL('./worker.cjs', import.meta.url);

/** What the job gives; rejects with the job's own words where it fails. */
export function inWorker<Job extends keyof Jobs>(job: Job, asked: Parameters<Jobs[Job]>[0]): Promise<Awaited<ReturnType<Jobs[Job]>>> {
  return new Promise((resolve, reject) => {
    new Worker(PROGRAM, { workerData: { job, asked } })
      .on('message', (outcome: Outcome<Awaited<ReturnType<Jobs[Job]>>>) =>
        'made' in outcome ? resolve(outcome.made) : reject(new Error(outcome.failed)),
      )
      .on('error', reject)
      .on('exit', (code) => reject(new Error(`its thread ended without an answer (exit code ${code})`)));
  });
}
