// The words of the notation: kinds of token, and which words are reserved or have a meaning in one place only.
import type { Span } from '../text/span.ts';
import type { Unit } from '../units/unit.ts';

/** Operators in one spelling each, whatever was typed (`·` and `×` are `*`, `≤` is `<=`, U+2212 is `-`). */
export type Operator = '+' | '-' | '*' | '/' | '^' | '√' | '<' | '<=' | '>' | '>=' | '==' | '!=';
export type Punctuation = '(' | ')' | '[' | ']' | ',' | ':' | '.' | '=';

/** Layout as far as the parser sees it: whether the token stands first on its line, and behind how many blanks. */
interface Placed {
  readonly at: Span;
  readonly first: boolean;
  readonly indent: number;
}

/** A number as written, sign not included; `pi` and `π` are number tokens with that text (L9). */
export interface NumberToken extends Placed {
  readonly kind: 'number';
  readonly text: string;
}

/** A number with its unit: one token (L1). `text` is the number's part. */
export interface QuantityToken extends Placed {
  readonly kind: 'quantity';
  readonly text: string;
  readonly unit: Unit;
  readonly unitAt: Span;
}

/** A unit behind `:` or `: [`. */
export interface UnitToken extends Placed {
  readonly kind: 'unit';
  readonly unit: Unit;
}

/** A date; `days` since 1970-01-01, or null where the calendar has no such day (reported by the lexer). */
export interface DateToken extends Placed {
  readonly kind: 'date';
  readonly days: number | null;
}

/** A text; `value` has its escapes undone. */
export interface TextToken extends Placed {
  readonly kind: 'text';
  readonly value: string;
}

/** A name that is not reserved; `name` is its one spelling (NFC, Greek letters as English names, L12). */
export interface NameToken extends Placed {
  readonly kind: 'name';
  readonly name: string;
}

/** A reserved word. */
export interface WordToken extends Placed {
  readonly kind: 'word';
  readonly word: ReservedWord;
}

/** A superscript behind a value: a whole power. */
export interface SuperscriptToken extends Placed {
  readonly kind: 'superscript';
  readonly power: number;
}

export interface OperatorToken extends Placed {
  readonly kind: 'operator';
  readonly operator: Operator;
}

export interface PunctuationToken extends Placed {
  readonly kind: 'punctuation';
  readonly mark: Punctuation;
}

/** `±` or `+/-`. */
export interface PlusMinusToken extends Placed {
  readonly kind: 'plusminus';
}

/** Characters that belong to no token, run together; reported by the lexer. */
export interface ErrorToken extends Placed {
  readonly kind: 'error';
}

export type Token =
  | NumberToken
  | QuantityToken
  | UnitToken
  | DateToken
  | TextToken
  | NameToken
  | WordToken
  | SuperscriptToken
  | OperatorToken
  | PunctuationToken
  | PlusMinusToken
  | ErrorToken;

/** Blanks and comments between tokens: kept so that every character of the text belongs to a token or to trivia. */
export interface Trivia {
  readonly kind: 'blank' | 'line end' | 'comment';
  readonly at: Span;
}

/** Never a name of an entry, function, parameter, local or table (K1, K3). */
export const RESERVED = [
  'and', 'or', 'not', 'is', 'if', 'then', 'else', 'where', 'of', 'for', 'from', 'to', 'over', 'the', 'least', 'greatest', 'first',
  'shall', 'should', 'throughout', 'use', 'curve', 'tabulate', 'because', 'with', 'needs', 'yes', 'no', 'row',
] as const; // biome-ignore format: a word list
export type ReservedWord = (typeof RESERVED)[number];

/** Where an input may come from (`from KIND "text"`). */
export const SOURCE_KINDS = [
  'plate', 'measurement', 'datasheet', 'drawing', 'standard', 'regulation', 'handbook', 'report', 'calculation', 'specification',
  'practice', 'memory', 'assumption',
] as const; // biome-ignore format: a word list
export type SourceKind = (typeof SOURCE_KINDS)[number];
