// Signs a sheet as it stands: whether it can be, and its text with the signature.
import type { SheetEvaluation } from '../run/evaluate.ts';
import { digest } from '../sheet/digest.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import { signSheet } from '../sheet/signatures.ts';
import type { SignatureEntry } from '../sheet/with-signature.ts';
import { recordedResults } from './checks/recorded.ts';

/** The signed sheet, and its evaluation: a signature changes no result. */
export interface Signed {
  readonly text: string;
  readonly evaluation: SheetEvaluation;
}

/**
 * The sheet with this signature added, or the one of the same role and name renewed. Refused, with a clause that says why, where nobody could
 * know what was signed: in a conflict, with errors, with results that do not come out as they are recorded.
 */
export function signed(evaluation: SheetEvaluation, entry: Omit<SignatureEntry, 'covers'>): Signed | { readonly refused: string } {
  const { sheet, files, problems } = evaluation;
  if (sheet.conflicts.length > 0) return { refused: 'choose a side in the conflict first' };
  const errors = problems.filter(({ problem }) => problem.severity === 'error').length;
  if (errors > 0)
    return { refused: `it has ${errors === 1 ? 'an error' : `${errors} errors`}; put ${errors === 1 ? 'it' : 'them'} right first` };
  if (recordedResults({ evaluation }).length > 0)
    return { refused: 'its results, or values in its text, are not recorded as they come out; record the sheet, read it, then sign' };
  const text = signSheet(sheet.text, entry, files);
  if (text === null) return { refused: "the signatures in its front matter can't be read; put them right first" };
  return { text, evaluation: { ...evaluation, sheet: readSheet(text), digest: digest(text, files) } };
}
