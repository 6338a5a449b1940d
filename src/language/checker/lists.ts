// Lists in brackets: single values of one kind.
import type * as ast from '../ast.ts';
import type { Checked } from '../checked.ts';
import { typeProblem } from '../problems/types.ts';
import { listOf, type QuantityType } from '../type.ts';
import { meet } from './agreement.ts';
import { type Context, checkExpression, failed, unknown } from './context.ts';
import { describeChecked } from './describe.ts';

export function checkList(c: Context, node: ast.List): Checked {
  const items = node.items.map((i) => checkExpression(c, i));
  return listOfChecked(c, node, items);
}

/** The list of checked items, once they are known to be of one kind. */
function listOfChecked(c: Context, node: ast.List, items: readonly Checked[]): Checked {
  if (items.some((i) => i.type.is === 'unknown')) return unknown(node.at);
  let first = items[0]!;
  for (const item of items) {
    if (item.type.is === 'list') return failed(c, typeProblem('nested-list', item.at, {}));
    if (item === items[0]) continue;
    if (first.type.is === 'quantity' && item.type.is === 'quantity') {
      const type = meet(c, first, item, { doing: 'a list holds', at: item.at });
      if (type === null) return unknown(node.at);
      const zero = (first.type as QuantityType).zero;
      first = { ...first, type, display: zero ? item.display : first.display };
    } else if (first.type.is !== item.type.is || first.type.is === 'table') {
      return failed(c, typeProblem('mixed-list', item.at, { first: describeChecked(first), found: describeChecked(item) }));
    }
  }
  return { kind: 'list', at: node.at, type: listOf(first.type), display: first.display, uncertain: items.some((i) => i.uncertain), items };
}
