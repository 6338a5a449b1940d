// What a table is once it has been read, from Markdown or from CSV: typed columns of cells.
import type { Span } from '../text/span.ts';
import type { Unit } from '../units/unit.ts';

/** What a head says of its column: text, dates, or numbers in a unit (a unit without parts: plain numbers). */
export type ColumnType = { readonly kind: 'text' } | { readonly kind: 'date' } | { readonly kind: 'number'; readonly unit: Unit };

/** Half-width of a cell's `±`, in coherent SI (a difference where the unit is a point). */
export interface CellBounds {
  readonly halfWidth: number;
}

/**
 * One cell. `value` is in coherent SI for numbers, days since 1970-01-01 for dates, the text for texts;
 * null where the cell is empty or `–` (absent, T8), undefined where it could not be read (a problem says why).
 */
export interface Cell {
  readonly text: string;
  readonly value: number | string | null | undefined;
  readonly bounds: CellBounds | null;
  /** In the file that holds the table. */
  readonly at: Span;
}

export interface TableColumn {
  readonly name: string;
  readonly at: Span;
  readonly type: ColumnType;
  readonly cells: readonly Cell[];
  /** Its unit could not be read (a problem says why): the name is known, the type is a stand-in, and no cell has a value. */
  readonly broken?: boolean;
}

/** One table; all columns have `rowCount` cells. */
export interface Table {
  readonly name: string;
  readonly nameAt: Span;
  readonly caption: string;
  /** `from KIND "text"` at the caption's end. */
  readonly source: { readonly kind: string; readonly text: string; readonly at: Span } | null;
  /** The CSV file that the caption links to, as written; null for a pipe table. */
  readonly path: string | null;
  readonly columns: readonly TableColumn[];
  readonly rowCount: number;
  /** It could not be read at all (a problem says why): only the name is known, and there are no columns. */
  readonly broken?: boolean;
  /** The whole table in its sheet, caption included. */
  readonly at: Span;
}
