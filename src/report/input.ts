// What reports are made from: a sheet's evaluation, the version that made it, and the file's changes.
import type { FindCovered } from '../review/signature-standing.ts';
import type { SheetEvaluation } from '../run/evaluate.ts';

export interface ReportInput extends SheetEvaluation {
  /** Of Ampwright, such as `1.0.0`. */
  readonly version: string;
  /** Left out where nobody looked. */
  readonly history?: ChangeHistory | NoHistory;
  /** Finds what a signature covers that does not cover this sheet; left out where nobody can look. */
  readonly covered?: FindCovered;
}

/** The changes of the sheet's file as git has them. */
export interface ChangeHistory {
  /** Newest first. */
  readonly changes: readonly FileChange[];
  /** False where older changes may be missing. */
  readonly complete: boolean;
  /** Whether the file is not as the newest of them left it. */
  readonly uncommitted: boolean;
}

export interface FileChange {
  /** The commit's first ten digits. */
  readonly short: string;
  /** ISO 8601 day. */
  readonly date: string;
  readonly author: string;
  /** First line of the message. */
  readonly subject: string;
}

/** Why there is none: a clause such as `it is in no git repository`. */
export interface NoHistory {
  readonly because: string;
}
