// Requirements: a condition, for each row of a table, throughout ranges of operation (D1 to D8).
import { nearSpellings } from '../../text/near.ts';
import type * as ast from '../ast.ts';
import type { Checked, CheckedStatement, Plan } from '../checked.ts';
import { nameProblem } from '../problems/names.ts';
import { typeProblem } from '../problems/types.ts';
import { valueProblem } from '../problems/values.ts';
import { elementOf } from '../type.ts';
import { meet } from './agreement.ts';
import { type Context, checkExpression, define, takeLocal, within } from './context.ts';
import { describeValue } from './describe.ts';
import { finish, hopeless } from './finish.ts';
import { followsFrom } from './follows.ts';
import { withLocals } from './locals.ts';
import { readItem } from './names.ts';
import { checkRange } from './roots.ts';
import { rowCondition, tableOf } from './selections.ts';

/** Names that `throughout` takes at most (D7). */
const THROUGHOUT_LIMIT = 4;

type Each = Extract<Plan, { kind: 'requirement' }>['each'];
type Throughout = Extract<Plan, { kind: 'requirement' }>['throughout'];

export function checkRequirement(c: Context, node: ast.Requirement): CheckedStatement {
  const each = checkEach(c, node);
  if (each === undefined) return hopeless(c);
  const condition = () => withLocals(c, node.clauses.locals, null, true, () => checkExpression(c, node.condition));
  const { result, locals } = each === null ? condition() : within(c, { kind: 'row', table: each.table, index: each.row }, condition);
  const throughout = checkThroughout(c, node);
  const type = elementOf(result.type);
  if (type.is !== 'yesno' && type.is !== 'unknown') {
    c.problems.push(typeProblem('requirement-type', node.condition.at, { force: node.force, found: describeValue(result) }));
    return hopeless(c);
  }
  if (type.is === 'unknown' || throughout === null) return hopeless(c);
  const follows = each === null && throughout.length === 0 && locals.length === 0 ? followsFrom(result) : null;
  return finish(c, null, { kind: 'requirement', condition: result, locals, each, throughout, follows });
}

/** `for each`: null where there is none, undefined where it has errors (reported). */
function checkEach(c: Context, node: ast.Requirement): Each | undefined {
  if (node.forEach === null) return null;
  const table = tableOf(c, node.forEach.table);
  if (table === null) return undefined;
  const row = takeLocal(c);
  if (node.forEach.where === null) return { table, row, where: null };
  const where = rowCondition(c, table, row, node.forEach.where);
  return where === null ? undefined : { table, row, where: { ...where, row } };
}

function checkThroughout(c: Context, node: ast.Requirement): Throughout | null {
  if (node.throughout.length > THROUGHOUT_LIMIT) {
    c.problems.push(valueProblem('corner-limit', node.throughout[THROUGHOUT_LIMIT]!.at, { limit: THROUGHOUT_LIMIT }));
    return null;
  }
  const spans: Throughout[number][] = [];
  for (const span of node.throughout) {
    const { name, at } = span.variable;
    const defined = define(c, name);
    if (defined?.kind !== 'item' || defined.item.statement.kind !== 'entry') {
      c.problems.push(nameProblem('unknown-name', at, { name, near: nearSpellings(name, c.world.namesOf(c.module, 'value')) }));
      return null;
    }
    const signature = readItem(c, defined.item);
    const range = checkRange(c, span);
    if (signature === null || range === null || signature.type.is === 'unknown') return null;
    const entry: Checked = { kind: 'entry', at, ...signature, item: defined.item };
    if (signature.type.is !== 'quantity' || meet(c, entry, range.from, { doing: 'a range of operation replaces', at: span.at }) === null)
      return null;
    spans.push({ item: defined.item, from: range.from, to: range.to });
  }
  return spans;
}
