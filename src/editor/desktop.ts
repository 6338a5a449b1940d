// What an extension host with Node can do and a browser's worker can't. Each build has its own; there is none in the worker.
import type { leadsOut } from '../node/files.ts';
import type { inRepository } from '../node/in-repository.ts';
import type { inWorker } from '../node/in-worker.ts';
import type { writeAtomically } from '../node/write-atomically.ts';

export interface Desktop {
  readonly writeAtomically: typeof writeAtomically;
  readonly leadsOut: typeof leadsOut;
  readonly inRepository: typeof inRepository;
  /** Asks git, compares and exports in a thread of its own. */
  readonly inWorker: typeof inWorker;
}
