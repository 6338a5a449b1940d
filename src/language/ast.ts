// The syntax tree of the whole notation. Every node has its place; a hole stands where something is missing.
import type { Span } from '../text/span.ts';
import type { Unit } from '../units/unit.ts';
import type { SourceKind } from './token.ts';

/** A name where it stands; `name` is its one spelling (L12). */
export interface Identifier {
  readonly at: Span;
  readonly name: string;
}

export interface TextNode {
  readonly at: Span;
  readonly value: string;
}

// ---------------------------------------------------------------------------------------------------- expressions

/** A number with or without a unit, its sign included (L13). `value` is in coherent SI; `number` as written, with sign. */
export interface QuantityLiteral {
  readonly kind: 'quantity';
  readonly at: Span;
  readonly number: string;
  readonly value: number;
  readonly unit: Unit | null;
  readonly unitAt: Span | null;
  readonly bounds: Bounds | null;
}

/** `± (1.5 % + 0.5 mV) (k=2, nu=18)`: the half-width is the sum of its parts, each a quantity as written. */
export interface PlusMinus {
  readonly kind: 'plusminus';
  readonly at: Span;
  readonly parts: readonly QuantityLiteral[];
  readonly coverage: { readonly at: Span; readonly k: number; readonly nu: number | null } | null;
}

/** `within 91.3 % to 92.4 %`. */
export interface Within {
  readonly kind: 'within';
  readonly at: Span;
  readonly from: QuantityLiteral;
  readonly to: QuantityLiteral;
}

export type Bounds = PlusMinus | Within;

/** `readings [12.1 mV, 12.4 mV] ± 0.1 mV` (`items`) or `readings (U / I)` (`of`); the other is null. */
export interface Readings {
  readonly kind: 'readings';
  readonly at: Span;
  readonly items: readonly QuantityLiteral[] | null;
  readonly of: Expression | null;
  readonly bounds: Bounds | null;
}

export interface DateLiteral {
  readonly kind: 'date';
  readonly at: Span;
  /** Days since 1970-01-01. */
  readonly days: number;
}

export interface TextLiteral {
  readonly kind: 'text';
  readonly at: Span;
  readonly value: string;
}

export interface YesNoLiteral {
  readonly kind: 'yesno';
  readonly at: Span;
  readonly value: boolean;
}

export interface NameReference {
  readonly kind: 'name';
  readonly at: Span;
  readonly name: string;
}

/** `row`, the innermost row in scope. */
export interface RowReference {
  readonly kind: 'row';
  readonly at: Span;
}

export interface Argument {
  readonly at: Span;
  readonly name: Identifier | null;
  readonly value: Expression;
}

export interface Call {
  readonly kind: 'call';
  readonly at: Span;
  readonly callee: Identifier;
  readonly args: readonly Argument[];
}

/** `K.I_AC3`, `motors.P_n`, `row.A`. */
export interface Member {
  readonly kind: 'member';
  readonly at: Span;
  readonly of: Expression;
  readonly column: Identifier;
}

export interface List {
  readonly kind: 'list';
  readonly at: Span;
  readonly items: readonly Expression[];
}

export interface Negation {
  readonly kind: 'negate';
  readonly at: Span;
  readonly operand: Expression;
}

/** a + b − c, flat (P7). The first term has no operator and sign 1. */
export interface Sum {
  readonly kind: 'sum';
  readonly at: Span;
  readonly terms: readonly { readonly sign: 1 | -1; readonly operator: Span | null; readonly operand: Expression }[];
}

/** a * b / c, flat (P7). The first factor has no operator and is not inverse. */
export interface Product {
  readonly kind: 'product';
  readonly at: Span;
  readonly factors: readonly { readonly inverse: boolean; readonly operator: Span | null; readonly operand: Expression }[];
}

/** `a ^ b`, or a superscript behind a value. */
export interface Power {
  readonly kind: 'power';
  readonly at: Span;
  readonly base: Expression;
  readonly exponent: Expression;
  readonly superscript: boolean;
}

/** `√x`. */
export interface SquareRoot {
  readonly kind: 'squareRoot';
  readonly at: Span;
  readonly operand: Expression;
}

export type Relation = '<' | '<=' | '>' | '>=' | '==' | '!=' | 'is' | 'is not';

/** A comparison or a chain of them; `operands` is one longer than `relations`. */
export interface Comparison {
  readonly kind: 'comparison';
  readonly at: Span;
  readonly operands: readonly Expression[];
  readonly relations: readonly { readonly relation: Relation; readonly at: Span }[];
}

/** `and` or `or` of two or more, flat. */
export interface Junction {
  readonly kind: 'and' | 'or';
  readonly at: Span;
  readonly operands: readonly Expression[];
}

export interface Not {
  readonly kind: 'not';
  readonly at: Span;
  readonly operand: Expression;
}

export interface If {
  readonly kind: 'if';
  readonly at: Span;
  readonly condition: Expression;
  readonly then: Expression;
  readonly otherwise: Expression;
}

/** `least I_AC3 of contactors where …`; `column` is null for `first` (N9). */
export interface Choice {
  readonly kind: 'choice';
  readonly at: Span;
  readonly order: 'least' | 'greatest' | 'first';
  readonly column: Identifier | null;
  readonly table: Identifier;
  readonly where: Expression | null;
}

/** `the R of wires where …`. */
export interface LookUp {
  readonly kind: 'lookUp';
  readonly at: Span;
  readonly column: Identifier;
  readonly table: Identifier;
  readonly where: Expression;
}

/** `x from a to b`. */
export interface Range {
  readonly at: Span;
  readonly variable: Identifier;
  readonly from: Expression;
  readonly to: Expression;
}

/** `root of g over x from a to b`. */
export interface RootOf {
  readonly kind: 'rootOf';
  readonly at: Span;
  readonly equation: Expression;
  readonly over: Range;
}

/** An expression in parentheses: kept, for printing it as it was written. */
export interface Group {
  readonly kind: 'group';
  readonly at: Span;
  readonly inner: Expression;
}

/** Where an expression is missing; the parser has reported it. */
export interface Hole {
  readonly kind: 'hole';
  readonly at: Span;
}

export type Expression =
  | QuantityLiteral
  | Readings
  | DateLiteral
  | TextLiteral
  | YesNoLiteral
  | NameReference
  | RowReference
  | Call
  | Member
  | List
  | Negation
  | Sum
  | Product
  | Power
  | SquareRoot
  | Comparison
  | Junction
  | Not
  | If
  | Choice
  | LookUp
  | RootOf
  | Group
  | Hole;

// ------------------------------------------------------------------------------------------------------ statements

/** What stands behind a colon: a unit (`1` is the plain number, a unit without parts), a word, or a list of one of them. */
export type TypeMark =
  | { readonly kind: 'unit'; readonly at: Span; readonly unit: Unit }
  | { readonly kind: 'text' | 'date' | 'any'; readonly at: Span }
  | { readonly kind: 'list'; readonly at: Span; readonly of: TypeMark };

/** `from KIND "text"`. */
export interface SourceClause {
  readonly at: Span;
  readonly kind: SourceKind;
  readonly text: TextNode;
}

/** One definition of a `with`. */
export interface Local {
  readonly at: Span;
  readonly name: Identifier;
  readonly type: TypeMark | null;
  readonly value: Expression;
}

/** One condition of a `needs`. */
export interface Need {
  readonly at: Span;
  readonly condition: Expression;
  readonly because: TextNode | null;
}

/** The clauses behind an expression; what was not written is null or empty. */
export interface Clauses {
  readonly source: SourceClause | null;
  readonly because: TextNode | null;
  readonly description: TextNode | null;
  readonly locals: readonly Local[];
  readonly needs: readonly Need[];
}

interface StatementBase {
  /** From the first to the last token of the statement. */
  readonly at: Span;
  readonly clauses: Clauses;
  /** Whether the parser reported an error in it: then it is never calculated, but owns its name (Y5). */
  readonly broken: boolean;
}

/** `by DMM_7 on 2026-10-02`: the instrument of a reading, and the day. */
export interface TakenBy {
  readonly at: Span;
  readonly instrument: Identifier;
  readonly on: DateLiteral | null;
}

export interface Entry extends StatementBase {
  readonly kind: 'entry';
  readonly name: Identifier;
  readonly type: TypeMark | null;
  readonly value: Expression;
  readonly reading: TakenBy | null;
}

export interface ComputedColumn extends StatementBase {
  readonly kind: 'column';
  readonly table: Identifier;
  readonly column: Identifier;
  readonly type: TypeMark | null;
  readonly value: Expression;
  /** The instrument that every row was read with. */
  readonly reading: TakenBy | null;
}

export interface Parameter {
  readonly at: Span;
  readonly name: Identifier;
  /** Null: a plain number (T3). */
  readonly type: TypeMark | null;
}

export interface FunctionDefinition extends StatementBase {
  readonly kind: 'function';
  readonly name: Identifier;
  readonly parameters: readonly Parameter[];
  readonly result: TypeMark | null;
  readonly body: Expression;
}

export interface Concession {
  readonly at: Span;
  readonly by: TextNode;
  readonly until: DateLiteral;
  readonly because: TextNode;
}

export interface Requirement extends StatementBase {
  readonly kind: 'requirement';
  readonly force: 'shall' | 'should';
  readonly condition: Expression;
  readonly forEach: { readonly at: Span; readonly table: Identifier; readonly where: Expression | null } | null;
  readonly throughout: readonly Range[];
  readonly concession: Concession | null;
}

/** An expression to plot or tabulate, with the unit it is shown in. */
export interface Trace {
  readonly at: Span;
  readonly value: Expression;
  readonly type: TypeMark | null;
  readonly label: TextNode | null;
}

/** A marked point of a curve (on the variable's axis), or a limit line (on the other axis; may itself be a curve). */
export interface CurveItem {
  readonly at: Span;
  readonly value: Expression;
  readonly label: TextNode | null;
}

export interface Curve extends StatementBase {
  readonly kind: 'curve';
  readonly traces: readonly Trace[];
  readonly over: Range;
  readonly log: boolean;
  readonly marks: readonly CurveItem[];
  readonly limits: readonly CurveItem[];
}

export interface Tabulation extends StatementBase {
  readonly kind: 'tabulation';
  readonly traces: readonly Trace[];
  readonly over: Range;
  readonly step: Expression;
}

export interface Instrument extends StatementBase {
  readonly kind: 'instrument';
  readonly name: Identifier;
  readonly bounds: Bounds | null;
  readonly serial: TextNode | null;
  readonly calibrated: DateLiteral | null;
  readonly due: DateLiteral | null;
}

export interface Action extends StatementBase {
  readonly kind: 'action';
  readonly text: TextNode;
  readonly by: TextNode | null;
  readonly due: DateLiteral | null;
}

export interface Use extends StatementBase {
  readonly kind: 'use';
  readonly path: TextNode;
  /** Null: everything. */
  readonly names: readonly Identifier[] | null;
}

/** A line that could not be read as any statement. `name` is the name it would have defined, if that could be told. */
export interface Unreadable extends StatementBase {
  readonly kind: 'unreadable';
  readonly name: Identifier | null;
}

export type Statement =
  | Entry
  | ComputedColumn
  | FunctionDefinition
  | Requirement
  | Curve
  | Tabulation
  | Instrument
  | Action
  | Use
  | Unreadable;
