// What reports are made from: a sheet's evaluation, and the version that made it.
import type { SheetEvaluation } from '../run/evaluate.ts';

export interface ReportInput extends SheetEvaluation {
  /** Of Ampwright, such as `1.0.0`. */
  readonly version: string;
}
