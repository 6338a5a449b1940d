// Every name in a statement with what it refers to: one reading, from which definition, references, rename and colours are taken.
import type * as ast from '../language/ast.ts';
import type { Item, TableModel } from '../language/program.ts';
import { resolvePath } from '../run/files.ts';
import { ownedName } from '../run/module.ts';
import type { Span } from '../text/span.ts';
import { definedAs, type Referent, resolve, resolveCall } from './referent.ts';
import { type Binding, type Names, type Scope, tableNamed } from './scope.ts';
import { walkScoped } from './scoped-walk.ts';
import { rowInScope, tableOf } from './table-of.ts';
import { unitPlaces, unitsIn, unitsOfLiteral } from './units-in.ts';

/** A name where it stands; `referent` is null where it refers to nothing. */
export interface Occurrence {
  readonly at: Span;
  readonly role: 'definition' | 'use';
  readonly referent: Referent | null;
}

/** The occurrences in an item's statement, in the order of the text. `code` is the text that the statement stands in. */
export function occurrencesOf(n: Names, item: Item, code: string): readonly Occurrence[] {
  const units = (places: readonly Span[]) => places.flatMap((at) => unitsIn(code, at)).map(({ at, referent }) => use(at, referent));
  const found: Occurrence[] = [...ownNames(n, item), ...units(unitPlaces(item.statement))];
  walkScoped(n, item, {
    binding: (binding) => found.push(defines(binding.name.at, boundAs(binding))),
    expression: (node, scope) => {
      const literal = node.kind === 'quantity' || node.kind === 'readings';
      found.push(...(literal ? units(unitsOfLiteral(node)) : namesOf(n, node, scope)));
    },
  });
  return found.filter(({ at }) => at.end > at.start).sort((a, b) => a.at.start - b.at.start);
}

const use = (at: Span, referent: Referent | null): Occurrence => ({ at, role: 'use', referent });
const defines = (at: Span, referent: Referent | null): Occurrence => ({ at, role: 'definition', referent });
const boundAs = (binding: Binding): Referent => ({ kind: binding.kind, name: binding.name.name, binding });

/** The names of a statement that stand in none of its expressions. */
function ownNames(n: Names, item: Item): readonly Occurrence[] {
  const { statement } = item;
  const name = ownedName(statement);
  const own = name ? [defines(name.at, ownReferent(statement, name.name, item))] : [];
  const uses = (names: readonly ast.Identifier[]) => names.map(({ at, name }) => use(at, resolve(n, null, name)));
  switch (statement.kind) {
    case 'entry':
      return [...own, ...uses(statement.reading ? [statement.reading.instrument] : [])];
    case 'column': {
      const table = tableNamed(n, statement.table.name);
      const { name, at } = statement.column;
      const by = statement.reading ? [statement.reading.instrument] : [];
      return [...uses([statement.table, ...by]), defines(at, table && { kind: 'column', name, table })];
    }
    case 'requirement':
      return uses([...(statement.forEach ? [statement.forEach.table] : []), ...statement.throughout.map((range) => range.variable)]);
    case 'use':
      return usedNames(n, item, statement);
    case 'function':
    case 'instrument':
    case 'unreadable':
      return own;
    case 'curve':
    case 'tabulation':
    case 'action':
      return [];
    default:
      return statement satisfies never;
  }
}

function ownReferent({ kind }: ast.Statement, name: string, item: Item): Referent {
  return { kind: kind === 'function' || kind === 'instrument' ? kind : 'entry', name, item };
}

function usedNames(n: Names, item: Item, { path, names }: ast.Use): readonly Occurrence[] {
  const file = resolvePath(item.module.path, path.value);
  const used = n.open.loaded.uses.find((u) => u.path === file);
  return (names ?? []).map(({ at, name }) => {
    const defined = used?.module.names.get(name);
    return use(at, defined ? definedAs(name, defined) : null);
  });
}

function namesOf(n: Names, node: ast.Expression, scope: Scope): readonly Occurrence[] {
  switch (node.kind) {
    case 'name':
      return [use(node.at, resolve(n, scope, node.name))];
    case 'row': {
      const table = rowInScope(scope);
      return [use(node.at, table && { kind: 'row', name: 'row', table })];
    }
    case 'call': {
      const callee = resolveCall(n, node.callee.name);
      const named = node.args.flatMap(({ name }) => (name ? [use(name.at, callee && parameterOf(callee, name.name))] : []));
      return [use(node.callee.at, callee), ...named];
    }
    case 'member':
      return [column(node.column, tableOf(n, scope, node.of))];
    case 'choice':
    case 'lookUp': {
      const table = use(node.table.at, resolve(n, null, node.table.name));
      return node.column ? [column(node.column, tableNamed(n, node.table.name)), table] : [table];
    }
    default:
      return [];
  }
}

function column({ at, name }: ast.Identifier, table: TableModel | null): Occurrence {
  return use(at, table?.columns.has(name) ? { kind: 'column', name, table } : null);
}

/** The parameter that a named argument is for. */
function parameterOf(callee: Referent, name: string): Referent | null {
  if (callee.kind !== 'function' || callee.item.statement.kind !== 'function') return null;
  const parameter = callee.item.statement.parameters.find((p) => p.name.name === name);
  if (!parameter) return null;
  const { item } = callee;
  return boundAs({ kind: 'parameter', name: parameter.name, item, type: parameter.type, value: null, range: null, sees: () => null });
}
