// The formula of a statement as the ledger shows it: typeset, with values put in, with its local definitions.
import type { Expression, Local } from '../../language/ast.ts';
import { print } from '../../language/print.ts';
import { mathParts } from '../math.ts';
import type { FormulaParts, FormulaView, LocalView } from '../model.ts';
import { hiding, type Scope, SYMBOLS } from './scope.ts';
import { symbol } from './symbol.ts';
import { type Functions, unfold } from './unfold.ts';

/** What a formula is made from beside its expression. */
export interface FormulaContext {
  /** The values of the sheet's names. */
  readonly values: Scope;
  readonly functions: Functions;
}

/** The formula of an expression with its `with` clauses. */
export function formulaOf(expression: Expression, locals: readonly Local[], context: FormulaContext): FormulaView {
  const values = hiding(
    context.values,
    locals.map((l) => l.name.name),
  );
  const written = print(expression);
  const own = locals.map((l) => localOf(l, SYMBOLS, values));
  const formula = expression.kind === 'call' ? unfold(expression, context.functions) : null;
  if (formula === null) {
    const parts = mathParts(expression);
    return { written, parts, call: null, putIn: unlessSame(mathParts(expression, values), parts), where: own };
  }
  const parts = mathParts(formula.body, formula.inside(SYMBOLS));
  const inner = formula.locals.map((l) => localOf(l, formula.inside(SYMBOLS), formula.inside(values)));
  const putIn = unlessSame(mathParts(formula.body, formula.inside(values)), parts);
  return { written, parts, call: mathParts(expression), putIn, where: [...inner, ...own] };
}

function localOf(local: Local, symbols: Scope, values: Scope): LocalView {
  const parts = mathParts(local.value, symbols);
  return { symbol: symbol(local.name.name), parts, putIn: unlessSame(mathParts(local.value, values), parts) };
}

function unlessSame(putIn: FormulaParts, parts: FormulaParts): FormulaParts | null {
  return JSON.stringify(putIn) === JSON.stringify(parts) ? null : putIn;
}
