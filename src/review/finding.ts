// What is found when a sheet is verified, as data.
import type { Span } from '../text/span.ts';

/** `error`: the sheet does not stand as it is. `finding`: it stands, and something in it needs a person. `note`: worth knowing, nothing more. */
export type Level = 'error' | 'finding' | 'note';

/** One thing that was found. The sheet's own problems keep their code. */
export interface Finding {
  readonly code: string;
  readonly level: Level;
  /** Plain sentences without a final full stop. */
  readonly message: string;
  /** In the sheet's file, or in the file at `path`. */
  readonly at: Span;
  /** A file that the sheet uses, relative to the sheet; null: the sheet itself. */
  readonly path: string | null;
}

/** A finding in the sheet's own file. */
export function finding(code: string, level: Level, at: Span, message: string): Finding {
  return { code, level, message, at, path: null };
}
