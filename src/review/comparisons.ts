// Comparisons of several sheets: two folders, or what a branch changed. The schema of `compare --format json`.
import * as z from 'zod/mini';
import type { SheetEvaluation } from '../run/evaluate.ts';
import { compareSheets, sheetInShort } from './compare.ts';
import { COMPARISON, isSame, SHEET_IN_SHORT } from './comparison.ts';

const compared = z.strictObject({
  /** Of the new sheet, or of the old one where it is gone. */
  path: z.string(),
  /** The old sheet's path where it is another. */
  oldPath: z.nullable(z.string()),
  change: z.enum(['added', 'removed', 'changed', 'same', 'not compared']),
  /** Null where there are not two sheets to compare, or where they mean the same. */
  comparison: z.nullable(COMPARISON),
  /** A sheet that is on one side alone. */
  sheet: z.nullable(SHEET_IN_SHORT),
  /** Why it could not be compared. */
  because: z.nullable(z.string()),
});

export const COMPARISONS = z.strictObject({
  /** What was compared, in words: a path, or a revision. */
  old: z.string(),
  new: z.string(),
  /** In the order of the paths. */
  sheets: z.readonly(z.array(compared)),
});

export type ComparedSheet = Readonly<z.infer<typeof compared>>;
export type Comparisons = Readonly<z.infer<typeof COMPARISONS>>;

/** The comparison of one sheet that may be missing on one side. */
export function comparedSheet(
  path: string,
  oldPath: string | null,
  old: SheetEvaluation | null,
  now: SheetEvaluation | null,
): ComparedSheet {
  const head = { path, oldPath, sheet: null, because: null };
  if (old !== null && now !== null) {
    const comparison = compareSheets(old, now);
    return isSame(comparison) ? sameSheet(path, oldPath) : { ...head, change: 'changed', comparison };
  }
  const only = now ?? old;
  if (only === null) return notCompared(path, 'there is no such sheet on either side');
  return { ...head, change: old === null ? 'added' : 'removed', comparison: null, sheet: sheetInShort(only) };
}

/** A sheet that means the same on both sides. */
export function sameSheet(path: string, oldPath: string | null): ComparedSheet {
  return { path, oldPath, change: 'same', comparison: null, sheet: null, because: null };
}

/** A sheet that can't be compared, with the reason. */
export function notCompared(path: string, because: string): ComparedSheet {
  return { path, oldPath: null, change: 'not compared', comparison: null, sheet: null, because };
}
