// What names stand for while a formula is set: themselves, their values, or the arguments of a call.
import type { Expression } from '../../language/ast.ts';
import type { Shown } from '../../run/result.ts';
import type { Typeset } from './typeset.ts';

/** What a name stands for in a formula: its value, or an expression put in for a parameter. */
export type Meaning =
  | { readonly kind: 'value'; readonly shown: Shown }
  | { readonly kind: 'expression'; readonly expression: Expression; readonly scope: Scope };

/** What names (or the columns of a row, `K.I_AC3`) stand for; null where the name itself is to be shown. */
export type Scope = (name: string, column: string | null) => Meaning | null;

/** Every name stands for itself. */
export const SYMBOLS: Scope = () => null;

/** The scope without these names: they stand for something else inside. */
export function hiding(scope: Scope, names: readonly string[]): Scope {
  return names.length === 0 ? scope : (name, column) => (names.includes(name) ? null : scope(name, column));
}

/** The one function that sets expressions, as handed to those that set a part of the notation. */
export type Setter = (expression: Expression, scope: Scope) => Typeset;
