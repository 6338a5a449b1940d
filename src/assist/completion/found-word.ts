// What the placeholder at the cursor stands for in the tree: found by its name, with the scope that it is read in.
import type * as ast from '../../language/ast.ts';
import type { Item } from '../../language/program.ts';
import { type Binding, type Names, type Scope, tableNamed } from '../scope.ts';
import { walkScoped } from '../scoped-walk.ts';
import { tableOf } from '../table-of.ts';
import type { Place } from './site.ts';

/** Null where the parser passed the word over. */
export function findWord(n: Names, item: Item, word: string): Place | null {
  let found = inHead(item.statement, word);
  walkScoped(n, item, {
    binding: ({ name }: Binding) => {
      if (name.name === word) found = { kind: 'fresh' };
    },
    expression: (node, scope) => {
      found = inExpression(n, node, scope, word) ?? found;
    },
  });
  return found;
}

/** In the names of a statement that stand in none of its expressions. */
function inHead(statement: ast.Statement, word: string): Place | null {
  const is = (name: ast.Identifier | null | undefined) => name?.name === word;
  switch (statement.kind) {
    case 'entry':
      return is(statement.reading?.instrument) ? { kind: 'instrument' } : null;
    case 'column':
      if (is(statement.reading?.instrument)) return { kind: 'instrument' };
      return is(statement.column) ? { kind: 'fresh' } : null;
    case 'requirement':
      if (is(statement.forEach?.table)) return { kind: 'table' };
      return statement.throughout.some((range) => is(range.variable)) ? { kind: 'range' } : null;
    case 'instrument':
      return is(statement.name) ? { kind: 'fresh' } : null;
    case 'use':
      return statement.names?.some(is) ? { kind: 'used', path: statement.path.value } : null;
    default:
      return null;
  }
}

function inExpression(n: Names, node: ast.Expression, scope: Scope, word: string): Place | null {
  switch (node.kind) {
    case 'name':
      return node.name === word ? { kind: 'value', scope } : null;
    case 'call':
      return node.callee.name === word || node.args.some((argument) => argument.name?.name === word) ? { kind: 'value', scope } : null;
    case 'member':
      return node.column.name === word ? { kind: 'column', table: tableOf(n, scope, node.of), of: node.of, scope } : null;
    case 'choice':
    case 'lookUp':
      if (node.table.name === word) return { kind: 'table' };
      return node.column?.name === word ? { kind: 'column', table: tableNamed(n, node.table.name), of: null, scope } : null;
    default:
      return null;
  }
}
