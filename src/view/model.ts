// The view model: how the results of one calc cell are shown, as plain JSON. The notebook output carries it, the page is made of it.
import type { ExtendedView } from './extended-view.ts';
import type { ViewNode } from './node.ts';

/** All calc cells of a sheet. */
export interface SheetView {
  readonly cells: readonly CellView[];
}

/** One calc cell. */
export interface CellView {
  /** Number of the calc cell in its sheet, from 0. */
  readonly cell: number;
  readonly rows: readonly RowView[];
  /** Problems that belong to none of the rows. */
  readonly problems: readonly ProblemView[];
  /** False where the text has changed since these results were made and nothing has brought them up to date. */
  readonly current: boolean;
  /** What the file has recorded for this cell and no statement gives any more. */
  readonly gone: readonly RecordedView[];
}

/** A recorded result. */
export interface RecordedView {
  /** `I_n`, `shall I_n <= I_AC3`. */
  readonly result: string;
  /** `34.40 A`, or both sides and the status. */
  readonly text: string;
}

/** A value as text for reading. */
export interface ValueView {
  /** Without the uncertainty: `34.40 A`, `[1 A, 2 A]`, `K5`. */
  readonly text: string;
  /** `± 0.69 A`; null where it is exact. */
  readonly plusMinus: string | null;
  /** `k = 2`, or `k = 2.17, ν = 16`; null where it is exact or the width is a limit. */
  readonly coverage: string | null;
  /** A remark on how it came about, such as `evaluated by shifting`. */
  readonly remark: string | null;
}

export interface SourceView {
  /** `plate`, `measurement` … */
  readonly kind: string;
  readonly text: string;
}

/** What something is called by in the sheet. */
export interface LabelView {
  /** `I_n`, `motors.P_n`, `xs[3]`, `gain of DMM_7`, or a statement without a name, such as `shall I_n <= I_AC3`. */
  readonly text: string;
  /** Null for a statement without a name; of a column its own, of `gain of DMM_7` the instrument's. */
  readonly symbol: ViewNode | null;
  /** Words before the symbol: `motors.`, `gain of `. */
  readonly before: string;
  /** The name whose row it leads to; null where this sheet has none, such as for what a used sheet defines. */
  readonly target: string | null;
}

/** What a result depends on, or what uses it, with its value. */
export interface LinkView extends LabelView {
  readonly value: string | null;
}

export interface ProblemView {
  readonly severity: 'error' | 'warning' | 'note';
  readonly code: string;
  readonly message: string;
  /** What would mend it, in the imperative. */
  readonly mends: readonly string[];
  /** Line in the cell's code, from 1. */
  readonly line: number;
}

/** A formula in parts: one `math` element each; a line may break between two of them. */
export type FormulaParts = readonly ViewNode[];

export interface FormulaView {
  /** The right side as written, in one line of notation. */
  readonly written: string;
  /** The right side; for a call of a function with a formula, that formula with the arguments in it. */
  readonly parts: FormulaParts;
  /** The call that the formula stands for; null where the right side is shown as it is. */
  readonly call: FormulaParts | null;
  /** The formula with values put in; null where it has no names. */
  readonly putIn: FormulaParts | null;
  /** Local definitions (`with`). */
  readonly where: readonly LocalView[];
}

export interface LocalView {
  readonly symbol: ViewNode;
  readonly parts: FormulaParts;
  readonly putIn: FormulaParts | null;
}

/** An input's share in the uncertainty of a result. */
export interface BudgetView {
  readonly input: LabelView;
  /** |∂result/∂input|·u(input), in the result's unit. */
  readonly contribution: string;
  /** Its part of u_c² in percent. */
  readonly share: string;
  /** The same from 0 to 1. */
  readonly part: number;
}

interface RowBase {
  /** The same for the same statement after an edit elsewhere: open details stay open by it. */
  readonly key: string;
  /** Line in the cell's code, from 1. */
  readonly line: number;
  readonly description: string | null;
  readonly source: SourceView | null;
  readonly because: string | null;
  readonly problems: readonly ProblemView[];
  /** Why there is no result: `I_n has no value`; null where there is one. */
  readonly missing: string | null;
  /** What it reads directly. */
  readonly reads: readonly LinkView[];
  /** What the file has recorded where this run gives something else: `33.8 A`, `33 A ≤ 40 A: holds, 18 % in hand`; null where it is the same. */
  readonly was: string | null;
}

export interface EntryRow extends RowBase {
  readonly kind: 'entry';
  readonly role: 'input' | 'computed' | 'choice' | 'root';
  readonly name: string;
  readonly symbol: ViewNode;
  readonly value: ValueView | null;
  /** Null for an input whose literal says no more than its value. */
  readonly formula: FormulaView | null;
  /** `read with DMM_7 on 2026-10-02`. */
  readonly reading: string | null;
  readonly usedBy: readonly LinkView[];
  readonly budget: readonly BudgetView[];
  readonly choice: ChoiceView | null;
}

export interface ChoiceView {
  /** The cells of the chosen row, in the order of the columns. */
  readonly cells: readonly { readonly symbol: ViewNode; readonly value: string }[];
  readonly table: string;
  readonly rows: number;
  readonly ruledOut: readonly { readonly condition: string; readonly count: number }[];
  readonly ties: number;
  /** `undecided within the uncertainty; K6 is the next that holds`. */
  readonly undecided: string | null;
}

export interface ColumnRow extends RowBase {
  readonly kind: 'column';
  readonly table: string;
  readonly column: string;
  readonly symbol: ViewNode;
  readonly formula: FormulaView;
  /** `read with DMM_7 on 2026-10-02`. */
  readonly reading: string | null;
  /** What the table's rows are called: their first text, else their number. */
  readonly labels: readonly string[];
  /** One a row of the table; null where it has no value. */
  readonly values: readonly (ValueView | null)[];
  /** `was` for each row. */
  readonly were: readonly (string | null)[];
  /** The table as this cell extends it; at the last of the cell's columns of a table, null at the others. */
  readonly extended: ExtendedView | null;
}

export interface FunctionRow extends RowBase {
  readonly kind: 'function';
  readonly name: string;
  /** `drop(I, L)` with its parameters' units below. */
  readonly head: FormulaParts;
  readonly parameters: readonly { readonly symbol: ViewNode; readonly unit: string }[];
  readonly result: string | null;
  readonly formula: FormulaView;
  readonly needs: readonly { readonly parts: FormulaParts; readonly because: string | null }[];
}

export type StatusView = 'holds' | 'fails' | 'undecided' | 'not calculated';

/** Both sides of the comparison that decides. */
export interface SidesView {
  readonly left: ValueView;
  readonly right: ValueView;
  /** `≤`, `is` … */
  readonly relation: string;
  /** `5.60 A (14 %) in hand`, `0.40 A short`; '' where there is none. */
  readonly margin: string;
  /** `U = 0.69 A` of the difference; null where both sides are exact. */
  readonly uncertainty: string | null;
  readonly gauge: GaugeView | null;
}

/** Where a value lies against its limit; all numbers in one unit. */
export interface GaugeView {
  readonly value: number;
  readonly limit: number;
  /** U of the difference, 0 where exact. */
  readonly width: number;
  /** Which side of the limit is allowed. */
  readonly allowed: 'below' | 'above';
  /** Whether 0 has a meaning on the scale (not for temperature points). */
  readonly fromZero: boolean;
  readonly valueText: string;
  readonly limitText: string;
}

export interface RequirementRow extends RowBase {
  readonly kind: 'requirement';
  readonly force: 'shall' | 'should';
  readonly status: StatusView;
  readonly condition: FormulaView;
  readonly sides: SidesView | null;
  /** `for each`: worst first. */
  readonly rows: readonly { readonly label: string; readonly status: StatusView; readonly sides: SidesView | null }[];
  readonly forEach: string | null;
  /** `throughout U_0 from 104.5 V to 115.5 V, worst at U_0 = 104.5 V`. */
  readonly throughout: string | null;
  readonly concession: { readonly by: string; readonly until: string; readonly because: string } | null;
}

/** A point of a curve in the units of its axes; null where it has no value. */
export interface PointView {
  readonly x: number;
  readonly y: number | null;
}

export interface CurveRow extends RowBase {
  readonly kind: 'curve';
  /** The axes' heads, `quantity / unit`. */
  readonly x: { readonly name: string; readonly unit: string; readonly from: number; readonly to: number; readonly log: boolean };
  readonly y: { readonly title: string; readonly unit: string };
  readonly traces: readonly { readonly label: string; readonly points: readonly PointView[] }[];
  readonly marks: readonly { readonly label: string; readonly x: number; readonly y: readonly (number | null)[]; readonly text: string }[];
  readonly limits: readonly { readonly label: string; readonly points: readonly PointView[] }[];
}

export interface TabulationRow extends RowBase {
  readonly kind: 'tabulation';
  readonly heads: readonly { readonly title: string; readonly unit: string }[];
  readonly cells: readonly (readonly (string | null)[])[];
  /** `was` for each line. */
  readonly were: readonly (string | null)[];
}

export interface InstrumentRow extends RowBase {
  readonly kind: 'instrument';
  readonly name: string;
  readonly symbol: ViewNode;
  readonly bounds: FormulaParts | null;
  /** The same in the notation: `± (1.5 % + 0.5 mV)`. */
  readonly limits: string | null;
  readonly serial: string | null;
  readonly calibrated: string | null;
  readonly due: string | null;
}

export interface ActionRow extends RowBase {
  readonly kind: 'action';
  readonly text: string;
  readonly by: string | null;
  readonly due: string | null;
}

export interface UseRow extends RowBase {
  readonly kind: 'use';
  readonly path: string;
  /** Null: everything. */
  readonly names: readonly string[] | null;
}

export interface UnreadableRow extends RowBase {
  readonly kind: 'unreadable';
  readonly name: string | null;
  /** The line as written. */
  readonly written: string;
}

export type RowView =
  | EntryRow
  | ColumnRow
  | FunctionRow
  | RequirementRow
  | CurveRow
  | TabulationRow
  | InstrumentRow
  | ActionRow
  | UseRow
  | UnreadableRow;
