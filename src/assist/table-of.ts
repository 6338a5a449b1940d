// Which table's columns can be read from an expression by a dot: found from its form, so that it is known in unfinished lines too.
import type { Expression } from '../language/ast.ts';
import type { Item, TableModel } from '../language/program.ts';
import type { Type } from '../language/type.ts';
import { resolve, resolveCall } from './referent.ts';
import { localScope, type Names, parameterScope, rowScope, type Scope, scopesFrom, tableNamed } from './scope.ts';

/** How many definitions are followed: more than a sheet has behind each other, fewer than a circle. */
const STEPS = 50;

/** The table whose row, rows or columns the expression is; null where it is none or can't be told. */
export function tableOf(n: Names, scope: Scope, node: Expression, steps = STEPS): TableModel | null {
  if (steps === 0) return null;
  switch (node.kind) {
    case 'name':
      return tableOfName(n, scope, node.name, steps - 1);
    case 'row':
      return rowInScope(scope);
    case 'choice':
      return tableNamed(n, node.table.name);
    case 'group':
      return tableOf(n, scope, node.inner, steps - 1);
    case 'if':
      return tableOf(n, scope, node.then, steps - 1) ?? tableOf(n, scope, node.otherwise, steps - 1);
    case 'member':
      return tableOfColumn(n, tableOf(n, scope, node.of, steps - 1), node.column.name, steps);
    case 'lookUp':
      return tableOfColumn(n, tableNamed(n, node.table.name), node.column.name, steps);
    case 'call': {
      const callee = resolveCall(n, node.callee.name);
      return callee?.kind === 'function' ? tableOfItem(n, callee.item, steps - 1) : null;
    }
    default:
      return null;
  }
}

/** The table of the innermost row. */
export function rowInScope(scope: Scope): TableModel | null {
  for (const at of scopesFrom(scope)) if (at.kind === 'row') return at.table;
  return null;
}

function tableOfName(n: Names, scope: Scope, name: string, steps: number): TableModel | null {
  const referent = resolve(n, scope, name);
  switch (referent?.kind) {
    case 'table':
      return referent.table;
    case 'column':
      return tableOfColumn(n, referent.table, name, steps);
    case 'entry':
      return tableOfItem(n, referent.item, steps);
    case 'local':
      return referent.binding.value === null ? null : tableOf(n, referent.binding.sees(), referent.binding.value, steps);
    default:
      return null;
  }
}

/** A column may hold rows (T9). */
function tableOfColumn(n: Names, table: TableModel | null, name: string, steps: number): TableModel | null {
  const item = table?.columns.get(name)?.item;
  return item ? tableOfItem(n, item, steps - 1) : null;
}

function tableOfItem(n: Names, item: Item, steps: number): TableModel | null {
  const known = item.checked && tableOfType(item.checked.signature.type);
  if (known) return known;
  const inside: Names = { open: n.open, module: item.module };
  const { statement } = item;
  const quiet = { expression: () => {} };
  const { locals } = statement.clauses;
  switch (statement.kind) {
    case 'entry':
      return tableOf(inside, localScope(item, locals, null, quiet), statement.value, steps);
    case 'column':
      return tableOf(inside, localScope(item, locals, rowScope(inside, statement.table, null), quiet), statement.value, steps);
    case 'function':
      return tableOf(inside, localScope(item, locals, parameterScope(item, statement.parameters, quiet), quiet), statement.body, steps);
    default:
      return null;
  }
}

function tableOfType(type: Type): TableModel | null {
  if (type.is === 'row' || type.is === 'table') return type.table;
  return type.is === 'list' ? tableOfType(type.of) : null;
}
