// Choices and look-ups: rows of a table by a condition, part by part (D5, N3, N4, N9).
import { nearSpellings } from '../../text/near.ts';
import type * as ast from '../ast.ts';
import type { Checked, CheckedLookUp, RowCondition } from '../checked.ts';
import { print } from '../print.ts';
import { nameProblem } from '../problems/names.ts';
import { typeProblem } from '../problems/types.ts';
import type { TableModel } from '../program.ts';
import { topParts } from '../walk.ts';
import { type Context, define, failed, takeLocal, unknown, within } from './context.ts';
import { describe } from './describe.ts';
import { checkCondition } from './logic.ts';
import { columnOf, rowValue } from './names.ts';

/** The table of a name; null where there is none, or where it could not be read (both reported). */
export function tableOf(c: Context, name: ast.Identifier): TableModel | null {
  const defined = define(c, name.name);
  if (defined?.kind === 'table' && !defined.table.broken) return defined.table;
  if (defined?.kind === 'table') {
    c.lost.push(name.name);
    return null;
  }
  c.problems.push(
    nameProblem('unknown-table', name.at, { name: name.name, near: nearSpellings(name.name, c.world.namesOf(c.module, 'table')) }),
  );
  return null;
}

export function checkChoice(c: Context, node: ast.Choice): Checked {
  const table = tableOf(c, node.table);
  if (table === null) return unknown(node.at);
  const row = takeLocal(c);
  const where = rowCondition(c, table, row, node.where);
  const by = node.column === null ? null : cellOf(c, table, row, node.column);
  if (by?.type.is === 'text' || by?.type.is === 'yesno' || by?.type.is === 'row') {
    return failed(c, typeProblem('no-order', node.column!.at, { what: describe(by.type) }));
  }
  if (where === null || by?.type.is === 'unknown') return unknown(node.at);
  const uncertain = [...table.columns.values()].some((column) => column.uncertain);
  return {
    kind: 'choice',
    at: node.at,
    type: { is: 'row', table },
    display: null,
    uncertain: uncertain || where.parts.some((p) => p.condition.uncertain) || (by?.uncertain ?? false),
    table,
    order: node.order,
    by,
    where,
  };
}

export function checkLookUp(c: Context, node: ast.LookUp): Checked {
  const table = tableOf(c, node.table);
  if (table === null) return unknown(node.at);
  const row = takeLocal(c);
  const where = rowCondition(c, table, row, node.where);
  const column = columnOf(c, table, node.column);
  if (where === null || column === null) return unknown(node.at);
  const cell = cellOf(c, table, row, node.column);
  return {
    kind: 'lookUp',
    at: node.at,
    type: column.type,
    display: column.display,
    uncertain: column.uncertain || where.parts.some((p) => p.condition.uncertain),
    table,
    cell,
    column,
    where,
    keys: where.parts.map(({ condition }) => keyOf(condition, row)),
  };
}

/** The parts of a condition, checked with the row in scope; null where one has errors. */
export function rowCondition(c: Context, table: TableModel, row: number, condition: ast.Expression | null): RowCondition | null {
  if (condition === null) return { row, parts: [] };
  const parts = within(c, { kind: 'row', table, index: row }, () =>
    topParts(condition).map((part) => ({ condition: checkCondition(c, part, '`where`'), text: print(part) })),
  );
  return parts.some((p) => p.condition.type.is === 'unknown') ? null : { row, parts };
}

/** A column's cell in the row at a place of the frame. */
export function cellOf(c: Context, table: TableModel, row: number, name: ast.Identifier): Checked {
  const column = columnOf(c, table, name);
  if (column === null) return unknown(name.at);
  return {
    kind: 'cell',
    at: name.at,
    type: column.type,
    display: column.display,
    uncertain: column.uncertain,
    row: rowValue({ kind: 'row', table, index: row }, name.at),
    table,
    column,
  };
}

/** A part of the form `column == value`, for naming the neighbours of what was not found. */
function keyOf(part: Checked, row: number): CheckedLookUp['keys'][number] {
  if (part.kind !== 'comparison' || part.operands.length !== 2 || !['==', 'is'].includes(part.relations[0]!.relation)) return null;
  const [left, right] = part.operands as [Checked, Checked];
  if (isOwnCell(left, row) && !isOwnCell(right, row)) return { column: left.column, sought: right };
  if (isOwnCell(right, row) && !isOwnCell(left, row)) return { column: right.column, sought: left };
  return null;
}

function isOwnCell(node: Checked, row: number): node is Extract<Checked, { kind: 'cell' }> {
  return node.kind === 'cell' && node.row.kind === 'local' && node.row.index === row;
}
