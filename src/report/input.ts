// What reports are made from: a sheet as read, its results, its digest, and the version that computed them.
import type { SheetResult } from '../run/result.ts';
import type { Sheet } from '../sheet/sheet.ts';

export interface ReportInput {
  readonly sheet: Sheet;
  readonly result: SheetResult;
  /** `sha256:` and 64 hexadecimal digits, of the sheet with its results up to date. */
  readonly digest: string;
  /** Of Ampwright, such as `1.0.0`. */
  readonly version: string;
}
