// Computed columns: one expression, a row at a time (N3, N4, T9).
import type * as ast from '../ast.ts';
import type { CheckedStatement } from '../checked.ts';
import { nameProblem } from '../problems/names.ts';
import { typeProblem } from '../problems/types.ts';
import { listOf } from '../type.ts';
import { type Context, checkExpression, takeLocal, unknown, within } from './context.ts';
import { declare } from './declared.ts';
import { describeChecked } from './describe.ts';
import { finish, hopeless } from './finish.ts';
import { byInstrument } from './instruments.ts';
import { enclose, withLocals } from './locals.ts';
import { tableOf } from './selections.ts';

export function checkColumn(c: Context, node: ast.ComputedColumn): CheckedStatement {
  const table = tableOf(c, node.table);
  if (table === null) return hopeless(c);
  if (table.order.includes(node.column.name)) {
    c.problems.push(nameProblem('defined-twice', node.column.at, { name: `${node.table.name}.${node.column.name}` }));
    return hopeless(c);
  }
  const row = takeLocal(c);
  const { result, locals } = within(c, { kind: 'row', table, index: row }, () =>
    withLocals(c, node.clauses.locals, node.value, true, () => declare(c, checkExpression(c, node.value), node.type)),
  );
  const read = node.reading === null ? result : byInstrument(c, result, node.reading, { index: row, count: table.rowCount });
  let value = enclose(read, locals);
  if (value.type.is === 'list' || value.type.is === 'table') {
    c.problems.push(typeProblem('entry-type', node.value.at, { found: `${describeChecked(value)}; a cell of a column holds one value` }));
    value = unknown(value.at);
  }
  const type = value.type.is === 'quantity' && value.type.zero ? { ...value.type, zero: false } : value.type;
  const signature = { type: type.is === 'unknown' ? type : listOf(type), display: value.display, uncertain: value.uncertain };
  return finish(c, signature, { kind: 'column', table, row, value });
}
