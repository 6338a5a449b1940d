// What a name stands for (N1 to N4): a column of a row in scope, a local, a definition of the sheet, a used one, the library's.

import { nearSpellings } from '../../text/near.ts';
import type { Span } from '../../text/span.ts';
import { unitOf } from '../../units/read-unit.ts';
import type * as ast from '../ast.ts';
import type { Checked } from '../checked.ts';
import { formOf } from '../form.ts';
import { findBuiltin } from '../functions/index.ts';
import { likelyWords, OTHER_VALUES } from '../other-words.ts';
import { nameProblem } from '../problems/names.ts';
import { typeProblem } from '../problems/types.ts';
import type { ColumnModel, Definition, Item, TableModel } from '../program.ts';
import { listOf, quantity, UNKNOWN } from '../type.ts';
import {
  type Binding,
  type Context,
  checkExpression,
  define,
  failed,
  type LazyBinding,
  noteTableOf,
  type Scope,
  unknown,
} from './context.ts';
import { describeValue } from './describe.ts';
import { checkLocal } from './locals.ts';

export function checkName(c: Context, node: ast.NameReference): Checked {
  const rows = rowsWith(c, node.name);
  const local = findLocal(c, node.name);
  const defined = define(c, node.name);
  const value = defined !== null && isValue(defined) ? defined : null;
  if (rows.length > 1 || (rows.length === 1 && (local !== null || (value !== null && inSheet(value))))) {
    const other = rows.length > 1 ? 'a column of another row' : local !== null ? 'a local name' : 'a name of the sheet';
    return failed(c, nameProblem('column-or-name', node.at, { name: node.name, other }));
  }
  if (rows.length === 1) return cellOfRow(rows[0]!, node.name, node.at, c);
  if (local !== null) return 'local' in local ? checkLocal(c, local, node) : localValue(local, node);
  if (value !== null) return checkDefinition(c, value, node);
  if (node.name === 'absolute_zero') {
    const degC = unitOf('degC');
    return {
      kind: 'constant',
      at: node.at,
      type: quantity(degC.dimension, { point: true }),
      display: degC,
      uncertain: false,
      value: 0,
      written: null,
    };
  }
  const builtin = findBuiltin(node.name);
  const form =
    builtin !== undefined
      ? builtin.form
      : defined?.kind === 'item' && defined.item.statement.kind === 'function'
        ? formOf(defined.item.statement)
        : null;
  if (form !== null) return failed(c, nameProblem('function-without-call', node.at, { name: node.name, form }));
  return failed(c, nameProblem('unknown-name', node.at, { name: node.name, near: likelyWords(node.name, OTHER_VALUES, visibleNames(c)) }));
}

export function checkRow(c: Context, node: ast.RowReference): Checked {
  const row = innermostRow(c);
  return row === null ? failed(c, nameProblem('row-outside', node.at, {})) : rowValue(row, node.at);
}

export function checkMember(c: Context, node: ast.Member): Checked {
  const of = memberBase(c, node.of);
  const { type } = of;
  if (type.is === 'unknown') return of;
  const element = type.is === 'list' ? type.of : type;
  if (element.is !== 'row' && element.is !== 'table') {
    return failed(c, typeProblem('no-member', node.at, { found: describeValue(of), column: node.column.name }));
  }
  const column = columnOf(c, element.table, node.column);
  if (column === null) return unknown(node.at);
  const base = { at: node.at, display: column.display, table: element.table, column } as const;
  if (type.is === 'table') return { ...base, kind: 'column', type: listOf(column.type), uncertain: column.uncertain };
  if (type.is === 'row') return { ...base, kind: 'cell', type: column.type, uncertain: column.uncertain || of.uncertain, row: of };
  return { ...base, kind: 'cells', type: listOf(column.type), uncertain: column.uncertain || of.uncertain, rows: of };
}

/** The left side of a dot: a table's name means the whole table, whatever columns are in scope. */
function memberBase(c: Context, node: ast.Expression): Checked {
  if (node.kind === 'name' && rowsWith(c, node.name).length === 0 && findLocal(c, node.name) === null) {
    const defined = define(c, node.name);
    if (defined?.kind === 'table') return tableValue(c, defined.table, node.at);
  }
  return checkExpression(c, node);
}

/** The column of a table, its statement read where it is computed; null where there is none (reported). */
export function columnOf(c: Context, table: TableModel, column: ast.Identifier): ColumnModel | null {
  const found = table.columns.get(column.name);
  if (table.broken && found === undefined) c.lost.push(table.name);
  else if (found === undefined) {
    c.problems.push(
      nameProblem('unknown-column', column.at, {
        name: column.name,
        table: table.name,
        near: nearSpellings(column.name, table.columns.keys()),
      }),
    );
    return null;
  }
  return found === undefined ? null : resolveColumn(c, found, table);
}

/** A computed column gets its type from its statement. */
function resolveColumn(c: Context, column: ColumnModel, table: TableModel): ColumnModel | null {
  if (column.broken) c.lost.push(`${table.name}.${column.name}`);
  if (column.item === null) return column.broken ? null : column;
  const signature = readItem(c, column.item);
  if (signature === null) return null;
  const type = signature.type.is === 'list' ? signature.type.of : UNKNOWN;
  if (type.is === 'unknown') return null;
  return { ...column, type, display: signature.display, uncertain: signature.uncertain };
}

/** The signature of an item, noted as read; null while it is unknown. */
export function readItem(c: Context, item: Item) {
  c.reads.add(item);
  const signature = c.world.signature(item);
  if (signature === null) c.missing.push(item);
  else noteTableOf(c, signature.type);
  return signature;
}

function checkDefinition(c: Context, defined: Definition, node: ast.NameReference): Checked {
  if (defined.kind === 'table') {
    if (!defined.table.broken) return tableValue(c, defined.table, node.at);
    c.lost.push(node.name);
    return unknown(node.at);
  }
  const { item } = defined;
  const signature = readItem(c, item);
  if (signature === null) return unknown(node.at);
  if (item.statement.kind === 'instrument') return failed(c, nameProblem('no-value', node.at, { name: node.name, is: 'an instrument' }));
  return { kind: 'entry', at: node.at, type: signature.type, display: signature.display, uncertain: signature.uncertain, item };
}

function tableValue(_c: Context, table: TableModel, at: Span): Checked {
  return { kind: 'table', at, type: { is: 'table', table }, display: null, uncertain: false, table };
}

const isValue = (d: Definition) => d.kind === 'table' || d.item.statement.kind !== 'function';
const inSheet = (d: Definition) => (d.kind === 'table' ? d.table.module.kind !== 'library' : d.item.module.kind !== 'library');

type RowScope = Extract<Scope, { kind: 'row' }>;

function rowsWith(c: Context, name: string): RowScope[] {
  return c.scopes.filter((s): s is RowScope => s.kind === 'row' && s.table.columns.has(name));
}

function innermostRow(c: Context): RowScope | null {
  return c.scopes.findLast((s): s is RowScope => s.kind === 'row') ?? null;
}

export function rowValue(row: RowScope, at: Span): Checked {
  return { kind: 'local', at, type: { is: 'row', table: row.table }, display: null, uncertain: false, index: row.index, name: 'row' };
}

function cellOfRow(row: RowScope, name: string, at: Span, c: Context): Checked {
  const column = resolveColumn(c, row.table.columns.get(name)!, row.table);
  if (column === null) return unknown(at);
  return {
    kind: 'cell',
    at,
    type: column.type,
    display: column.display,
    uncertain: column.uncertain,
    row: rowValue(row, at),
    table: row.table,
    column,
  };
}

/** The innermost local of that name. */
export function findLocal(c: Context, name: string): Binding | LazyBinding | null {
  for (let i = c.scopes.length - 1; i >= 0; i--) {
    const scope = c.scopes[i]!;
    const found = scope.kind === 'row' ? undefined : scope.names.get(name);
    if (found !== undefined) return found;
  }
  return null;
}

function localValue(b: Binding, node: ast.NameReference): Checked {
  return { kind: 'local', at: node.at, type: b.type, display: b.display, uncertain: b.uncertain, index: b.index, name: node.name };
}

function* visibleNames(c: Context): Iterable<string> {
  for (const scope of c.scopes) yield* scope.kind === 'row' ? scope.table.columns.keys() : scope.names.keys();
  yield* c.world.namesOf(c.module, 'value');
}
