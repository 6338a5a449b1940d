// What the signatures of a sheet are worth now, and how one is given.
import { findConflicts } from './conflicts.ts';
import { digest, type UsedFile } from './digest.ts';
import { fileLines } from './file-lines.ts';
import type { Signature } from './front-matter.ts';
import { type SignatureEntry, withSignature } from './with-signature.ts';

/** Stands for a digest that is not filled in. It never counts as a match. */
export const NO_DIGEST = 'sha256:…';

/** `current`: it covers the sheet as it is. `out of date`: the sheet, or a file that it uses, has changed since, or it covers nothing yet. */
export type SignatureState = 'current' | 'out of date';

export interface StatedSignature {
  readonly signature: Signature;
  readonly state: SignatureState;
}

/** The state of each signature of a sheet whose digest is `now`. */
export function signatureStates(signatures: readonly Signature[], now: string): readonly StatedSignature[] {
  return signatures.map((signature) => ({ signature, state: signature.covers === now ? 'current' : 'out of date' }));
}

/**
 * The sheet's text with a signature that covers it as it stands, results included; whether the results are up to date is for the caller
 * to know. Null where the signatures that are there can't be read, or a merge left its conflict in the sheet.
 */
export function signSheet(text: string, entry: Omit<SignatureEntry, 'covers'>, used: readonly UsedFile[] = []): string | null {
  if (findConflicts(fileLines(text)).length > 0) return null;
  const prepared = withSignature(text, { ...entry, covers: NO_DIGEST });
  return prepared === null ? null : withSignature(prepared, { ...entry, covers: digest(prepared, used) });
}
