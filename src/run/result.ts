// What a run gives: every statement of a sheet with its value, status and problems, as plain readonly data.
import type * as ast from '../language/ast.ts';
import type { Problem } from '../text/problem.ts';
import type { Unit } from '../units/unit.ts';

// ---------------------------------------------------------------------------------------------------------- values

/** The uncertainty of a shown quantity. All widths are in coherent SI (a difference where the value is a point). */
export interface ShownUncertainty {
  /** Standard uncertainty u_c. */
  readonly standard: number;
  /** Expanded uncertainty U = k·u_c, or the bound from limits where that is smaller (U9). */
  readonly expanded: number;
  /** Coverage factor, null where `expanded` is a bound from limits. */
  readonly k: number | null;
  /** Effective degrees of freedom, null where infinite. */
  readonly nu: number | null;
  /** U's number text in the unit of the difference, such as `0.69`. */
  readonly number: string;
  /** The unit of a difference (K for a value in degC). */
  readonly unit: Unit | null;
  /** Whether first order did not serve, so that inputs were shifted (U6). */
  readonly shifted: boolean;
}

/** A value as it is shown, in its display unit, rounded. `text` is valid notation for quantities, dates and yes/no. */
export type Shown =
  | {
      readonly kind: 'quantity';
      /** Coherent SI, unrounded. */
      readonly si: number;
      /** In `unit`, unrounded. */
      readonly value: number;
      /** Null: plain number. */
      readonly unit: Unit | null;
      /** The number alone, rounded as shown (`34.40`). */
      readonly number: string;
      readonly uncertainty: ShownUncertainty | null;
      /** Without the uncertainty (`34.40 A`). */
      readonly short: string;
      /** Whole (`34.40 A ± 0.69 A (k=2)`). */
      readonly text: string;
    }
  | { readonly kind: 'date'; readonly days: number; readonly text: string; readonly short: string }
  | { readonly kind: 'text'; readonly text: string; readonly short: string }
  | { readonly kind: 'yesno'; readonly value: boolean; readonly text: string; readonly short: string }
  | {
      readonly kind: 'list';
      readonly count: number;
      readonly items: readonly Shown[];
      readonly unit: Unit | null;
      readonly text: string;
      readonly short: string;
    }
  | { readonly kind: 'row'; readonly table: string; readonly index: number; readonly text: string; readonly short: string }
  | { readonly kind: 'table'; readonly table: string; readonly rows: number; readonly text: string; readonly short: string };

/** Why a statement has no value: its own errors, or names that have none themselves. */
export type Missing =
  | { readonly kind: 'error' }
  /** The names that it needs and that have no value. */
  | { readonly kind: 'not calculated'; readonly because: readonly string[] };

// ------------------------------------------------------------------------------------------------------ statements

interface ResultBase {
  /** Number of the calc cell it stands in. */
  readonly cell: number;
  /** Its own problems: errors, warnings and notes, on places of the cell's code. */
  readonly problems: readonly Problem[];
  /** Names of the entries, columns (`t.col`), functions and tables of this sheet or used ones that it reads, in order of the text. */
  readonly reads: readonly string[];
}

export interface EntryResult extends ResultBase {
  readonly kind: 'entry';
  readonly statement: ast.Entry;
  readonly name: string;
  readonly role: 'input' | 'computed' | 'choice' | 'root';
  readonly value: Shown | null;
  readonly missing: Missing | null;
  /** For a choice: what it took and what was ruled out. */
  readonly choice: ChoiceReport | null;
}

/** What a choice did (D4, D5). */
export interface ChoiceReport {
  readonly table: string;
  /** Row number from 0 of what was chosen. */
  readonly row: number;
  readonly rows: number;
  /** For each part of the condition in order: its text and how many rows it ruled out. */
  readonly ruledOut: readonly { readonly condition: string; readonly count: number }[];
  /** How many rows share the best value; 1 where there is no tie. */
  readonly ties: number;
  /** Where the condition of the chosen row is undecided within the uncertainty: the next row that holds with U, or null where none does. */
  readonly undecided: { readonly nextRow: number | null; readonly nextText: string | null } | null;
}

export interface ColumnResult extends ResultBase {
  readonly kind: 'column';
  readonly statement: ast.ComputedColumn;
  readonly table: string;
  readonly column: string;
  readonly unit: Unit | null;
  /** One a row; null where that row's cell has no value. Empty where the whole column has none. */
  readonly values: readonly (Shown | null)[];
  /** What the rows are called: their first text, else their number. */
  readonly labels: readonly string[];
  readonly missing: Missing | null;
}

export interface FunctionResult extends ResultBase {
  readonly kind: 'function';
  readonly statement: ast.FunctionDefinition;
  readonly name: string;
}

export type Status = 'holds' | 'fails' | 'undecided' | 'not calculated';

/** Both sides of the comparison that decides, in one unit. */
export interface Sides {
  readonly left: Shown;
  readonly right: Shown;
  readonly relation: ast.Relation;
  /** Whether the limit is the left side: in a chain it is the outer one (D2), and else what is written as numbers alone. */
  readonly limitIsLeft: boolean;
  /** Slack in coherent SI: positive where it holds on the best values. */
  readonly slack: number;
  /** The slack's text in the unit of the sides (`3.597 A`); '' where there is none (texts, yes/no). */
  readonly margin: string;
  /** Slack as percent of the limit, two digits (`9.5 %`); null for points and for a limit of 0. */
  readonly percent: string | null;
  /** U of the slack, text in the unit of the sides; null where both sides are exact. */
  readonly uncertainty: string | null;
  readonly expanded: number;
}

export interface RequirementResult extends ResultBase {
  readonly kind: 'requirement';
  readonly statement: ast.Requirement;
  readonly force: 'shall' | 'should';
  /** The condition in one line of notation. */
  readonly condition: string;
  readonly status: Status;
  /** The comparison with the smallest margin (D2); null where there is no comparison or nothing was calculated. */
  readonly sides: Sides | null;
  /** `for each`: every row's decision, worst first. */
  readonly rows: readonly { readonly row: number; readonly label: string; readonly status: Status; readonly sides: Sides | null }[];
  /** `throughout`: the worst point, such as `U_0 = 104.5 V`. */
  readonly worstAt: readonly { readonly name: string; readonly value: Shown }[];
  readonly missing: Missing | null;
}

/** One trace of a curve: its points in the units of the axes. */
export interface CurveTrace {
  readonly label: string;
  readonly points: readonly { readonly x: number; readonly y: number | null }[];
}

export interface CurveResult extends ResultBase {
  readonly kind: 'curve';
  readonly statement: ast.Curve;
  readonly variable: string;
  readonly x: { readonly unit: Unit | null; readonly from: number; readonly to: number; readonly log: boolean };
  readonly y: { readonly unit: Unit | null; readonly title: string };
  readonly traces: readonly CurveTrace[];
  readonly marks: readonly { readonly label: string; readonly x: number; readonly y: readonly (number | null)[]; readonly text: string }[];
  readonly limits: readonly { readonly label: string; readonly points: readonly { readonly x: number; readonly y: number | null }[] }[];
  readonly missing: Missing | null;
}

export interface TabulationResult extends ResultBase {
  readonly kind: 'tabulation';
  readonly statement: ast.Tabulation;
  readonly heads: readonly { readonly title: string; readonly unit: Unit | null }[];
  readonly rows: readonly (readonly (Shown | null)[])[];
  readonly missing: Missing | null;
}

export interface InstrumentResult extends ResultBase {
  readonly kind: 'instrument';
  readonly statement: ast.Instrument;
  readonly name: string;
}

export interface ActionResult extends ResultBase {
  readonly kind: 'action';
  readonly statement: ast.Action;
}

export interface UseResult extends ResultBase {
  readonly kind: 'use';
  readonly statement: ast.Use;
}

/** A line that could not be read. */
export interface UnreadableResult extends ResultBase {
  readonly kind: 'unreadable';
  readonly statement: ast.Unreadable;
}

export type StatementResult =
  | EntryResult
  | ColumnResult
  | FunctionResult
  | RequirementResult
  | CurveResult
  | TabulationResult
  | InstrumentResult
  | ActionResult
  | UseResult
  | UnreadableResult;

// ----------------------------------------------------------------------------------------------------------- sheet

/** The answer of one calc cell, its statements in the order of the text. */
export interface CellResult {
  readonly cell: number;
  readonly code: string;
  readonly statements: readonly StatementResult[];
  /** All problems of the cell: lexing, syntax and those of its statements, in the order of the text. */
  readonly problems: readonly Problem[];
}

/** The input's share in the uncertainty of a result (uncertainty budget). */
export interface BudgetLine {
  /** The input's name, with the element of a list (`xs[3]`) where it is one; `gain of DMM_7` for an instrument's. */
  readonly input: string;
  /** |∂result/∂input|·u(input), coherent SI of the result. */
  readonly contribution: number;
  /** Its part of u_c², 0 to 1. */
  readonly share: number;
}

/** One cell of a chosen row; null where it is empty or has no value. */
export interface RowCell {
  readonly column: string;
  readonly value: Shown | null;
}

/** A whole sheet's answer: a function of the text (and of the files it uses) alone. */
export interface SheetResult {
  readonly cells: readonly CellResult[];
  /** By name; the first definition where there are several. */
  readonly entries: ReadonlyMap<string, EntryResult>;
  /** The function that a call of this name means: the sheet's, that of a sheet which it uses, or the library's. */
  readonly functionNamed: (name: string) => ast.FunctionDefinition | undefined;
  /** The uncertainty budget of an entry, largest first; empty where it is exact. */
  readonly budget: (name: string) => readonly BudgetLine[];
  /** The cells of the row that an entry is, in the order of the columns; empty where it is none. */
  readonly row: (name: string) => readonly RowCell[];
  /** The cells of the first `count` rows of a table in the wanted columns, computed ones among them; none where there is no such table. */
  readonly rows: (table: string, count: number, wanted: (column: string) => boolean) => readonly (readonly RowCell[])[];
  /** Names of statements that read this name directly, in order of the text. */
  readonly usedBy: (name: string) => readonly string[];
}
