// The row of a function: its head, its formula and what its arguments must satisfy.
import type { FunctionDefinition, TypeMark } from '../../language/ast.ts';
import type { FunctionResult } from '../../run/result.ts';
import { formulaOf } from '../math/formula.ts';
import { unitText } from '../math/quantity.ts';
import { hiding } from '../math/scope.ts';
import { symbol } from '../math/symbol.ts';
import { APPLIED, bracketedParts, COMMA } from '../math/typeset.ts';
import { functionName, math, mathParts } from '../math.ts';
import type { FormulaParts, FunctionRow } from '../model.ts';
import { baseOf, type RowContext } from './context.ts';

export function functionRow(of: FunctionResult, context: RowContext): FunctionRow {
  const { statement } = of;
  const names = statement.parameters.map((p) => p.name.name);
  const formula = formulaOf(statement.body, statement.clauses.locals, {
    ...context.formula,
    values: hiding(context.formula.values, names),
  });
  return {
    ...baseOf(of, of.name, context),
    kind: 'function',
    name: of.name,
    head: headOf(statement),
    parameters: statement.parameters.map((p) => ({ symbol: symbol(p.name.name), unit: typeText(p.type) })),
    result: statement.result && typeText(statement.result),
    formula: { ...formula, putIn: null },
    needs: statement.clauses.needs.map((n) => ({ parts: mathParts(n.condition), because: n.because?.value ?? null })),
  };
}

/** `f(P, U)`; its line may break behind a comma. */
export function headOf({ name, parameters }: FunctionDefinition): FormulaParts {
  const names = parameters.map((p, i) => (i === parameters.length - 1 ? [symbol(p.name.name)] : [symbol(p.name.name), COMMA]));
  return bracketedParts([functionName(name.name), APPLIED], '(', names, ')').map(math);
}

/** A parameter's type in a word: its unit, `number`, `list of A`, `text`. */
export function typeText(type: TypeMark | null): string {
  if (type === null) return 'number';
  switch (type.kind) {
    case 'unit':
      return type.unit.text === '' ? 'number' : unitText(type.unit);
    case 'list':
      return `list of ${typeText(type.of)}`;
    case 'text':
    case 'date':
      return type.kind;
    case 'any':
      return 'any';
    default:
      return type satisfies never;
  }
}
