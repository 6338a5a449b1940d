// What the checker proves: expressions with types, every name resolved to what it stands for. The compiler reads nothing else.
import type { Problem } from '../text/problem.ts';
import type { Span } from '../text/span.ts';
import type { Unit } from '../units/unit.ts';
import type { Relation } from './ast.ts';
import type { Builtin } from './functions/builtin.ts';
import type { ColumnModel, Ground, Item, TableModel } from './program.ts';
import type { Type } from './type.ts';
import type { Input } from './uncertainty/input.ts';

/** How a value without declared unit is shown: in this unit (null: plain number), or in a unit chosen by its size (T7). */
export type Display = Unit | null | 'auto';

interface Base {
  readonly at: Span;
  readonly type: Type;
  readonly display: Display;
  /** Whether its value may carry uncertainty: then it is compiled to propagate derivatives. */
  readonly uncertain: boolean;
}

export interface CheckedConstant extends Base {
  readonly kind: 'constant';
  readonly value: number | string | boolean;
  /** The number as written, for showing inputs so (F1). */
  readonly written: string | null;
}

/** An uncertain literal or plain readings: the variable's own value. */
export interface CheckedInput extends Base {
  readonly kind: 'input';
  readonly input: Input;
}

/** A reading by an instrument: value · (1 + gain) + offset; the gain is the instrument's, the offset the reading's own (U12). */
export interface CheckedReading extends Base {
  readonly kind: 'reading';
  readonly of: Checked;
  readonly gain: Input | null;
  /** One, or one a row of a column; none where the instrument states no absolute part. */
  readonly offsets: readonly Input[];
  /** Place of the row's number in the frame; null where it is no column's. */
  readonly row: number | null;
}

/** `readings xs` of a computed list (U11): an input whose value and uncertainty come at evaluation. */
export interface CheckedReadings extends Base {
  readonly kind: 'readings';
  readonly of: Checked;
  /** Limits behind `±`, standard uncertainty for a mean of SI value v. */
  readonly limits:
    | ((mean: number) => { readonly low: number; readonly high: number; readonly u: number; readonly bounded: boolean })
    | null;
}

export interface CheckedEntry extends Base {
  readonly kind: 'entry';
  readonly item: Item;
}

/** A parameter, a `with` name, the variable of `over`, or a row number, by its place in the frame. */
export interface CheckedLocal extends Base {
  readonly kind: 'local';
  readonly index: number;
  readonly name: string;
}

/** `with` definitions around an expression; each is evaluated once, when first used. */
export interface CheckedLets extends Base {
  readonly kind: 'lets';
  readonly locals: readonly { readonly index: number; readonly value: Checked }[];
  readonly body: Checked;
}

/** A whole column. */
export interface CheckedColumn extends Base {
  readonly kind: 'column';
  readonly table: TableModel;
  readonly column: ColumnModel;
}

/** The cell of a column in a row; the row is any expression of row type. */
export interface CheckedCell extends Base {
  readonly kind: 'cell';
  readonly row: Checked;
  readonly table: TableModel;
  readonly column: ColumnModel;
}

/** A column of the rows in a list of rows (`motors.K.I_AC3`, T9). */
export interface CheckedCells extends Base {
  readonly kind: 'cells';
  readonly rows: Checked;
  readonly table: TableModel;
  readonly column: ColumnModel;
}

export interface CheckedTable extends Base {
  readonly kind: 'table';
  readonly table: TableModel;
}

export interface CheckedList extends Base {
  readonly kind: 'list';
  readonly items: readonly Checked[];
}

export interface CheckedNegate extends Base {
  readonly kind: 'negate';
  readonly operand: Checked;
}

export interface CheckedSum extends Base {
  readonly kind: 'sum';
  readonly terms: readonly { readonly sign: 1 | -1; readonly operand: Checked }[];
  /** Dates count in days, durations in seconds: factor for each term and for the result (dates only; else null). */
  readonly dates: { readonly terms: readonly number[]; readonly result: number } | null;
}

export interface CheckedProduct extends Base {
  readonly kind: 'product';
  readonly factors: readonly { readonly inverse: boolean; readonly operand: Checked }[];
}

export interface CheckedPower extends Base {
  readonly kind: 'power';
  readonly base: Checked;
  readonly exponent: Checked;
}

export interface CheckedRootSign extends Base {
  readonly kind: 'squareRoot';
  readonly operand: Checked;
}

export interface CheckedComparison extends Base {
  readonly kind: 'comparison';
  readonly operands: readonly Checked[];
  readonly relations: readonly { readonly relation: Relation; readonly at: Span }[];
  /** What is compared: numbers by P4, texts by P5, yes/no plainly, dates by day. */
  readonly of: 'quantity' | 'text' | 'yesno' | 'date';
}

export interface CheckedJunction extends Base {
  readonly kind: 'and' | 'or';
  readonly operands: readonly Checked[];
}

export interface CheckedNot extends Base {
  readonly kind: 'not';
  readonly operand: Checked;
}

export interface CheckedIf extends Base {
  readonly kind: 'if';
  readonly condition: Checked;
  readonly then: Checked;
  readonly otherwise: Checked;
}

/** A function of the mathematics. `lists`: which arguments are lists that the call is mapped over. */
export interface CheckedBuiltin extends Base {
  readonly kind: 'builtin';
  readonly builtin: Builtin;
  readonly args: readonly Checked[];
  readonly mapped: readonly boolean[];
}

/** A call of a function of a sheet or of the library. */
export interface CheckedCall extends Base {
  readonly kind: 'call';
  readonly instance: Instance;
  readonly args: readonly Checked[];
  readonly mapped: readonly boolean[];
}

/** A condition on the rows of a table: its parts in order (D5), each seeing the row's number in `row`. */
export interface RowCondition {
  readonly row: number;
  readonly parts: readonly { readonly condition: Checked; readonly text: string }[];
}

export interface CheckedChoice extends Base {
  readonly kind: 'choice';
  readonly table: TableModel;
  readonly order: 'least' | 'greatest' | 'first';
  /** The column that orders, as a cell of the row; null for `first`. */
  readonly by: Checked | null;
  readonly where: RowCondition;
}

export interface CheckedLookUp extends Base {
  readonly kind: 'lookUp';
  readonly table: TableModel;
  readonly cell: Checked;
  readonly column: ColumnModel;
  readonly where: RowCondition;
  /** For each part of the condition the column and the sought value where it reads `row.col == x`, for naming neighbours. */
  readonly keys: readonly ({ readonly column: ColumnModel; readonly sought: Checked } | null)[];
}

export interface CheckedRoot extends Base {
  readonly kind: 'root';
  readonly equation: Checked;
  /** The variable's name, and its place in the frame. */
  readonly name: string;
  readonly variable: number;
  /** Places of the `with` names that are worked out anew for each value of the variable (N5). */
  readonly locals: readonly number[];
  readonly from: Checked;
  readonly to: Checked;
}

export type Checked =
  | CheckedConstant
  | CheckedInput
  | CheckedReading
  | CheckedReadings
  | CheckedEntry
  | CheckedLocal
  | CheckedLets
  | CheckedColumn
  | CheckedCell
  | CheckedCells
  | CheckedTable
  | CheckedList
  | CheckedNegate
  | CheckedSum
  | CheckedProduct
  | CheckedPower
  | CheckedRootSign
  | CheckedComparison
  | CheckedJunction
  | CheckedNot
  | CheckedIf
  | CheckedBuiltin
  | CheckedCall
  | CheckedChoice
  | CheckedLookUp
  | CheckedRoot;

/** A function's body checked for certain argument types. */
export interface Instance {
  readonly item: Item;
  readonly name: string;
  readonly parameters: readonly string[];
  /** Its `with` definitions, each evaluated when first used. */
  readonly locals: readonly { readonly index: number; readonly value: Checked }[];
  readonly body: Checked;
  readonly needs: readonly Need[];
  /** Size of the frame that a call needs. */
  readonly frameSize: number;
  /** 1 + the greatest depth of what it calls. */
  readonly depth: number;
  /** How deep its evaluation is nested. */
  readonly levels: number;
  /** 1 + the calls that one call of it makes in all. */
  readonly calls: number;
  /** Items that the body reads. */
  readonly reads: readonly Item[];
  readonly grounds: readonly Ground[];
  /** Compiled when first called. */
  compiled: ((frame: import('./compiler/frame.ts').Frame) => unknown) | null;
}

/** What the arguments of a function must satisfy: a condition of `needs`, or a part of one that `and` joins. */
export interface Need {
  readonly condition: Checked;
  /** The whole condition as written. */
  readonly text: string;
  readonly message: string | null;
  /** The parameter (from 0) that the condition is about; null where it reads several names. */
  readonly parameter: number | null;
  /** The unit in which that parameter's value is told; undefined where it is no single quantity. */
  readonly unit: Unit | null | undefined;
}

/** Why a function's body has no value for certain argument types. */
export interface NoInstance {
  /** The error to be told at each call; null where it is told elsewhere. */
  readonly problem: Problem | null;
  readonly reads: readonly Item[];
  readonly grounds: readonly Ground[];
  readonly lost: readonly string[];
}

/** What other statements see of an item. */
export interface Signature {
  readonly type: Type;
  readonly display: Display;
  readonly uncertain: boolean;
}

/** The checked plan of one statement. Requirements, curves and tabulations keep their parts apart. */
export type Plan =
  | { readonly kind: 'value'; readonly value: Checked }
  | { readonly kind: 'column'; readonly table: TableModel; readonly row: number; readonly value: Checked }
  | {
      readonly kind: 'requirement';
      readonly condition: Checked;
      readonly locals: readonly { readonly index: number; readonly value: Checked }[];
      readonly each: { readonly table: TableModel; readonly row: number; readonly where: RowCondition | null } | null;
      readonly throughout: readonly { readonly item: Item; readonly from: Checked; readonly to: Checked }[];
      /** The choice whose condition it repeats with no more margin (D8); its entry's name, else null. */
      readonly follows: string | null;
    }
  | {
      readonly kind: 'samples';
      readonly locals: readonly { readonly index: number; readonly value: Checked }[];
      readonly variable: number;
      readonly from: Checked;
      readonly to: Checked;
      readonly step: Checked | null;
      readonly traces: readonly { readonly value: Checked; readonly unit: Display; readonly label: string }[];
      readonly marks: readonly { readonly value: Checked; readonly label: string }[];
      readonly limits: readonly { readonly value: Checked; readonly label: string }[];
    }
  | { readonly kind: 'nothing' };

export interface CheckedStatement {
  readonly signature: Signature;
  readonly plan: Plan;
  readonly frameSize: number;
  /** Items that it reads directly (through the functions that it calls as well), in order of first use. */
  readonly reads: readonly Item[];
  /** Tables of its sheet, and used sheets, that names in it lead to: it is to be checked again when one of them has changed. */
  readonly grounds: readonly Ground[];
  /** Tables and columns that it reads and that could not be read from the file. */
  readonly lost: readonly string[];
  readonly problems: readonly Problem[];
  /** Uncertain inputs that it makes. */
  readonly inputs: readonly Input[];
  /** Whether there is nothing to evaluate because of errors. */
  readonly failed: boolean;
}
