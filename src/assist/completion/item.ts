// One thing that may be written at a cursor.
import type { Span } from '../../text/span.ts';
import type { HoverPart } from '../hover/part.ts';

export type CompletionKind =
  | 'entry'
  | 'function'
  | 'parameter'
  | 'local'
  | 'column'
  | 'table'
  | 'instrument'
  | 'unit'
  | 'source'
  | 'word'
  | 'statement'
  | 'file';

/** What a source of completions offers. `rank`: lower comes first, equal ones in the order in which they are offered. */
export interface Offer {
  readonly kind: CompletionKind;
  readonly label: string;
  /** A value, a form, a unit: what stands behind the label. */
  readonly detail: string;
  readonly documentation: readonly HoverPart[];
  readonly insert: string;
  /** Whether `insert` has tab stops: `$1`, `${1:text}`, `${1|a,b|}`. */
  readonly snippet: boolean;
  readonly rank: number;
}

/** An offer at its place: `insertAt` ends at the cursor, `replaceAt` takes the whole word. */
export interface Completion extends Offer {
  readonly insertAt: Span;
  readonly replaceAt: Span;
}

/** An offer of what stands in its label. */
export function offer(kind: CompletionKind, label: string, extra: Partial<Offer> = {}): Offer {
  return { kind, label, detail: '', documentation: [], insert: label, snippet: false, rank: 5, ...extra };
}
