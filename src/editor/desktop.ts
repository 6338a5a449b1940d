// What an extension host with Node can do and a browser's worker can't. Each build has its own; there is none in the worker.
import type { compareSince } from '../node/compare.ts';
import type { historyOf } from '../node/git-history.ts';
import type { revisionChoices } from '../node/revision-choices.ts';
import type { writeAtomically } from '../node/write-atomically.ts';

export interface Desktop {
  readonly compareSince: typeof compareSince;
  readonly revisionChoices: typeof revisionChoices;
  readonly historyOf: typeof historyOf;
  readonly writeAtomically: typeof writeAtomically;
}
