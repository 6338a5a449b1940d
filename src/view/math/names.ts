// The names that an expression reads, columns and functions left out.
import type { Argument, Expression } from '../../language/ast.ts';

/** Names that stand for values in an expression. */
export function namesIn(expression: Expression): ReadonlySet<string> {
  const found = new Set<string>();
  visit(expression, found);
  return found;
}

function visit(e: Expression, found: Set<string>): void {
  if (e.kind === 'name') found.add(e.name);
  for (const part of partsOf(e)) visit(part, found);
}

/** The expressions that an expression is made of. */
export function partsOf(e: Expression): readonly Expression[] {
  switch (e.kind) {
    case 'quantity':
    case 'date':
    case 'text':
    case 'yesno':
    case 'name':
    case 'row':
    case 'hole':
      return [];
    case 'readings':
      return e.of ? [e.of] : [];
    case 'call':
      return e.args.map((a: Argument) => a.value);
    case 'member':
      return [e.of];
    case 'list':
      return e.items;
    case 'negate':
    case 'squareRoot':
    case 'not':
      return [e.operand];
    case 'sum':
      return e.terms.map((t) => t.operand);
    case 'product':
      return e.factors.map((f) => f.operand);
    case 'power':
      return [e.base, e.exponent];
    case 'comparison':
    case 'and':
    case 'or':
      return e.operands;
    case 'if':
      return [e.condition, e.then, e.otherwise];
    case 'choice':
      return e.where ? [e.where] : [];
    case 'lookUp':
      return [e.where];
    case 'rootOf':
      return [e.equation, e.over.from, e.over.to];
    case 'group':
      return [e.inner];
    default:
      return e satisfies never;
  }
}
