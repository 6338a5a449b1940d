// The line above a table: its name, its caption, its source, and the CSV file where it links to one.
import type { Span } from '../text/span.ts';

/** `Table NAME — caption from KIND "text"`, all places in the sheet's file. */
export interface TableCaption {
  readonly name: string;
  readonly nameAt: Span;
  readonly caption: string;
  readonly source: { readonly kind: string; readonly text: string; readonly at: Span } | null;
  /** The CSV file that the caption links to, as written; null for a pipe table. */
  readonly path: string | null;
  /** The whole line. */
  readonly at: Span;
}
