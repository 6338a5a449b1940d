// A program: modules (the sheet, used sheets, library sheets), their items (one a statement) and their tables.

import type { Problem } from '../text/problem.ts';
import type { Span } from '../text/span.ts';
import type { Statement } from './ast.ts';
import type { CheckedStatement, Display, Instance, NoInstance } from './checked.ts';
import type { Decisions } from './compiler/decision.ts';
import type { Evaluate } from './compiler/frame.ts';
import type { Type } from './type.ts';
import type { Input } from './uncertainty/input.ts';

/** One text with definitions of its own. */
export interface Module {
  readonly id: number;
  readonly kind: 'sheet' | 'used' | 'library';
  /** The file's name for a used or a library sheet; '' for the sheet itself. */
  readonly path: string;
  /** What a name means here: entries, functions, instruments and tables of this text; the first definition where there are several. */
  readonly names: Map<string, Definition>;
  /** What `use` brings, by name. */
  readonly used: Map<string, Definition>;
  /** Computed columns by table, then by column. */
  readonly columns: Map<string, Map<string, Item>>;
  /** Table models made for this module: the table's data with the computed columns of this module. */
  readonly tables: Map<string, TableModel>;
}

export type Definition = { readonly kind: 'item'; readonly item: Item } | { readonly kind: 'table'; readonly table: TableModel };

/** Where a computed value lives between evaluations. `undefined`: not evaluated; a Fault: has no value. */
export interface Slot {
  value: unknown;
  /** How a yes or no that is uncertain was decided beside its best value. */
  decisions?: Decisions;
  /** The number as it was written, where it is shown so wherever it is read by its name; null where it is computed (F1). */
  written: string | null;
}

/** One statement with all that is known about it. */
export interface Item {
  readonly module: Module;
  /** Number of the calc cell in its sheet. */
  cell: number;
  statement: Statement;
  /** What names in its text stand for it in messages: `I_n`, `motors.K`, `shall I_n <= …`. */
  label: string;
  /** The checker's result; null before, or after something that it depends on changed. */
  checked: CheckedStatement | null;
  /** Computes the slot's value; null where the checker found errors. Throws a Fault where the value is undefined. */
  evaluate: Evaluate | null;
  readonly slot: Slot;
  /** Problems found while evaluating; replaced at each evaluation. */
  runProblems: Problem[];
  /** Inputs that its evaluation makes (U10), in the order they were met; kept between evaluations. */
  readonly made: Input[];
  /** For functions that are called: their checked bodies by argument types, each checked once however often it is called. */
  instances: Map<string, KnownInstance> | null;
}

/** A body with all that it was checked against, since that may be another one by the time of the next call. */
export interface KnownInstance {
  readonly found: Instance | NoInstance;
  readonly types: readonly Type[];
  /** The checks of the items that it reads, in the order of `found.reads`. */
  readonly checks: readonly (CheckedStatement | null)[];
}

/** A column as expressions see it. */
export interface ColumnModel {
  readonly name: string;
  readonly type: Type;
  /** How its cells are shown: the head's unit; for a computed column that of its statement, once that is checked. */
  readonly display: Display;
  readonly uncertain: boolean;
  /** Data cells: SI number, text, days, Dual; null absent, undefined unreadable. Null for a computed column. */
  readonly cells: readonly unknown[] | null;
  /** The texts of data cells as written, for showing them so (F1). */
  readonly texts: readonly string[] | null;
  /** The statement that computes it; null for data. */
  readonly item: Item | null;
  /** Its head could not be read (reported there), so nothing is known of its values. */
  readonly broken: boolean;
}

/** A table as one module sees it: the same object as long as the sheet has a table of that name, whatever is edited in it. */
export interface TableModel {
  readonly module: Module;
  readonly name: string;
  at: Span;
  rowCount: number;
  columns: ReadonlyMap<string, ColumnModel>;
  /** Names of the columns of data in order; computed columns follow in the order of the text. */
  order: readonly string[];
  /** It could not be read at all (reported there), so nothing is known of its columns. */
  broken: boolean;
}

/** What an item was checked against besides the items that it reads: a table of the sheet, or a used sheet as a whole. */
export type Ground = TableModel | Module;
