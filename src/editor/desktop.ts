// What an extension host with Node can do and a browser's worker can't. Each build has its own; there is none in the worker.
import type { changeHistory } from '../node/change-history.ts';
import type { compareSince } from '../node/compare.ts';
import type { leadsOut } from '../node/files.ts';
import type { coveredIn } from '../node/git-covered.ts';
import type { pdfOf } from '../node/pdf.ts';
import type { revisionChoices } from '../node/revision-choices.ts';
import type { writeAtomically } from '../node/write-atomically.ts';

export interface Desktop {
  readonly compareSince: typeof compareSince;
  readonly revisionChoices: typeof revisionChoices;
  readonly changeHistory: typeof changeHistory;
  readonly coveredIn: typeof coveredIn;
  readonly pdfOf: typeof pdfOf;
  readonly writeAtomically: typeof writeAtomically;
  readonly leadsOut: typeof leadsOut;
}
