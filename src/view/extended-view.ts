// The view model of a table with computed columns, as plain JSON.
import type { ViewNode } from './node.ts';

/** A table with computed columns: what its rows are called, the columns that are read, and those that are computed from them. */
export interface ExtendedView {
  readonly table: string;
  /** Rows of the table; `lines` has the first of them. */
  readonly rows: number;
  /** What the first column is called: the column of the labels, or `row` where they are numbers. */
  readonly label: string;
  readonly heads: readonly { readonly symbol: ViewNode; readonly unit: string; readonly computed: boolean }[];
  readonly lines: readonly { readonly label: string; readonly cells: readonly ExtendedCell[] }[];
}

export interface ExtendedCell {
  /** The unit stands in the head; null: no value. */
  readonly text: string | null;
  readonly was: string | null;
}
