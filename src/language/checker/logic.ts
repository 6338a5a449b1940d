// Comparisons, `and`, `or`, `not` and `if`: what may be compared, and that a condition is one yes or no (P3 to P6).
import type * as ast from '../ast.ts';
import type { Checked, CheckedComparison } from '../checked.ts';
import { typeProblem } from '../problems/types.ts';
import { elementOf, type Type, YESNO } from '../type.ts';
import { meet } from './agreement.ts';
import { shaped } from './arithmetic.ts';
import { type Context, checkExpression, failed, unknown } from './context.ts';
import { describeChecked } from './describe.ts';

export function checkComparison(c: Context, node: ast.Comparison): Checked {
  const operands = node.operands.map((o) => checkExpression(c, o));
  if (operands.some((o) => elementOf(o.type).is === 'unknown')) return unknown(node.at);
  let of: CheckedComparison['of'] | null = null;
  for (let i = 0; i < node.relations.length; i++) {
    const { relation, at } = node.relations[i]!;
    of = comparable(c, operands[i]!, operands[i + 1]!, node);
    if (of === null) return unknown(node.at);
    if ((of === 'text' || of === 'yesno') && /[<>]/.test(relation)) {
      return failed(c, typeProblem('no-order', at, { what: of === 'text' ? 'a text' : 'a yes or no' }));
    }
  }
  return {
    kind: 'comparison',
    at: node.at,
    type: shaped(YESNO, operands),
    display: null,
    uncertain: operands.some((o) => o.uncertain),
    operands,
    relations: node.relations,
    of: of!,
  };
}

/** What two operands are compared as; null where they can't be (reported). */
function comparable(c: Context, left: Checked, right: Checked, node: ast.Comparison): CheckedComparison['of'] | null {
  const a = elementOf(left.type);
  const b = elementOf(right.type);
  if (a.is === 'quantity' && b.is === 'quantity')
    return meet(c, left, right, { doing: 'compares', at: node.at }) === null ? null : 'quantity';
  if (a.is === b.is && (a.is === 'text' || a.is === 'yesno' || a.is === 'date')) return a.is;
  const odd = [left, right].find((o) => ['row', 'table'].includes(elementOf(o.type).is));
  if (odd !== undefined) c.problems.push(typeProblem('not-comparable', odd.at, { what: `${describeChecked(odd)}` }));
  else
    c.problems.push(
      typeProblem('different-kinds', node.at, { doing: 'compares', left: describeChecked(left), right: describeChecked(right) }),
    );
  return null;
}

export function checkJunction(c: Context, node: ast.Junction): Checked {
  const operands = node.operands.map((o) => checkCondition(c, o, `\`${node.kind}\``));
  if (operands.some((o) => o.type.is === 'unknown')) return unknown(node.at);
  return { kind: node.kind, at: node.at, type: YESNO, display: null, uncertain: operands.some((o) => o.uncertain), operands };
}

export function checkNot(c: Context, node: ast.Not): Checked {
  const operand = checkCondition(c, node.operand, '`not`');
  if (operand.type.is === 'unknown') return operand;
  return { kind: 'not', at: node.at, type: YESNO, display: null, uncertain: operand.uncertain, operand };
}

/** An expression that is one yes or no; what else it is has been reported and gives an unknown one. */
export function checkCondition(c: Context, node: ast.Expression, where: string): Checked {
  const checked = checkExpression(c, node);
  if (checked.type.is === 'yesno' || checked.type.is === 'unknown') return checked;
  if (elementOf(checked.type).is === 'yesno') return failed(c, typeProblem('wants-one', checked.at, { where }));
  if (elementOf(checked.type).is === 'unknown') return unknown(checked.at);
  return failed(c, typeProblem('wants-yes-no', checked.at, { where, found: describeChecked(checked) }));
}

export function checkIf(c: Context, node: ast.If): Checked {
  const condition = checkCondition(c, node.condition, '`if`');
  const then = checkExpression(c, node.then);
  const otherwise = checkExpression(c, node.otherwise);
  const type = commonType(c, then, otherwise, node);
  if (type === null || condition.type.is === 'unknown') return unknown(node.at);
  const display =
    elementOf(then.type).is === 'quantity' && (elementOf(then.type) as { zero: boolean }).zero ? otherwise.display : then.display;
  return {
    kind: 'if',
    at: node.at,
    type,
    display,
    uncertain: condition.uncertain || then.uncertain || otherwise.uncertain,
    condition,
    then,
    otherwise,
  };
}

/** The one type of both branches; null where they differ (reported) or one is unknown. */
function commonType(c: Context, then: Checked, otherwise: Checked, node: ast.If): Type | null {
  if (elementOf(then.type).is === 'unknown' || elementOf(otherwise.type).is === 'unknown') return null;
  const sameShape = then.type.is === otherwise.type.is;
  const a = elementOf(then.type);
  const b = elementOf(otherwise.type);
  if (sameShape && a.is === 'quantity' && b.is === 'quantity') {
    const met = meet(c, then, otherwise, { doing: 'the branches are', at: { start: node.then.at.start, end: node.otherwise.at.end } });
    return met === null ? null : shaped(met, [then, otherwise]);
  }
  const sameTable = a.is !== 'row' || (b.is === 'row' && a.table.name === b.table.name && a.table.module === b.table.module);
  if (sameShape && a.is === b.is && a.is !== 'table' && sameTable) return then.type;
  c.problems.push(
    typeProblem('different-kinds', node.otherwise.at, {
      doing: 'the branches are',
      left: describeChecked(then),
      right: describeChecked(otherwise),
    }),
  );
  return null;
}
