// Going through the syntax tree: the expressions inside an expression, and all expressions of a statement.
import type { Expression, Range, Statement } from './ast.ts';

/** The expressions directly inside one, in the order of the text. Limits (`±`) and units are part of a literal, not children. */
export function children(node: Expression): readonly Expression[] {
  switch (node.kind) {
    case 'quantity':
    case 'date':
    case 'text':
    case 'yesno':
    case 'name':
    case 'row':
    case 'hole':
      return [];
    case 'readings':
      return node.items ?? (node.of === null ? [] : [node.of]);
    case 'call':
      return node.args.map((argument) => argument.value);
    case 'member':
      return [node.of];
    case 'list':
      return node.items;
    case 'negate':
    case 'squareRoot':
    case 'not':
      return [node.operand];
    case 'sum':
      return node.terms.map((term) => term.operand);
    case 'product':
      return node.factors.map((factor) => factor.operand);
    case 'power':
      return [node.base, node.exponent];
    case 'comparison':
    case 'and':
    case 'or':
      return node.operands;
    case 'if':
      return [node.condition, node.then, node.otherwise];
    case 'choice':
      return node.where === null ? [] : [node.where];
    case 'lookUp':
      return [node.where];
    case 'rootOf':
      return [node.equation, ...ends(node.over)];
    case 'group':
      return [node.inner];
    default:
      return node satisfies never;
  }
}

/** Visits an expression and all that is inside it, each before its children. */
export function walk(expression: Expression, visit: (node: Expression) => void): void {
  visit(expression);
  for (const child of children(expression)) walk(child, visit);
}

/** The parts of a condition that `and` joins. */
export function topParts(condition: Expression): readonly Expression[] {
  return condition.kind === 'and' ? condition.operands : [condition];
}

/** The outermost expressions of a statement, in the order in which they stand in the tree: its own first, then those of its clauses. */
export function expressionsOf(statement: Statement): readonly Expression[] {
  const { locals, needs } = statement.clauses;
  return [...ownExpressions(statement), ...locals.map((local) => local.value), ...needs.map((need) => need.condition)];
}

function ownExpressions(statement: Statement): readonly Expression[] {
  switch (statement.kind) {
    case 'entry':
    case 'column':
      return [statement.value];
    case 'function':
      return [statement.body];
    case 'requirement': {
      const where = statement.forEach?.where ?? null;
      return [statement.condition, ...(where === null ? [] : [where]), ...statement.throughout.flatMap(ends)];
    }
    case 'curve': {
      const items = [...statement.traces, ...statement.marks, ...statement.limits];
      return [...items.map((item) => item.value), ...ends(statement.over)];
    }
    case 'tabulation':
      return [...statement.traces.map((trace) => trace.value), ...ends(statement.over), statement.step];
    case 'instrument':
    case 'action':
    case 'use':
    case 'unreadable':
      return [];
    default:
      return statement satisfies never;
  }
}

function ends(range: Range): readonly Expression[] {
  return [range.from, range.to];
}
