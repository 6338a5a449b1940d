// What a statement adds to the names of its sheet, and where in it they are seen (N1 to N8): parameters, locals, variables, rows.
import type * as ast from '../language/ast.ts';
import type { Item, Module, TableModel } from '../language/program.ts';
import type { OpenSheet } from '../run/open-sheet.ts';

/** A name of one statement. `value` is a local's expression, which is read in the scope `sees`; a range's ends for a variable. */
export interface Binding {
  readonly kind: 'parameter' | 'local' | 'variable';
  readonly name: ast.Identifier;
  readonly item: Item;
  readonly type: ast.TypeMark | null;
  readonly value: ast.Expression | null;
  readonly range: ast.Range | null;
  readonly sees: () => Scope;
}

/** Innermost first; null is the text of the sheet itself. */
export type Scope =
  | { readonly kind: 'names'; readonly names: ReadonlyMap<string, Binding>; readonly outer: Scope }
  | { readonly kind: 'row'; readonly table: TableModel | null; readonly outer: Scope }
  | null;

/** The text in which names are looked up: the open sheet, or one that it uses. */
export interface Names {
  readonly open: OpenSheet;
  readonly module: Module;
}

/** What is told of each expression of a statement, and of each name that the statement defines for itself. */
export interface Visitor {
  readonly expression: (node: ast.Expression, scope: Scope) => void;
  readonly binding?: (binding: Binding) => void;
}

export function tableNamed(n: Names, name: string): TableModel | null {
  const defined = n.open.world.define(n.module, name);
  return defined?.kind === 'table' ? defined.table : null;
}

/** The scopes from the innermost one outwards. */
export function* scopesFrom(scope: Scope): Iterable<NonNullable<Scope>> {
  for (let at = scope; at !== null; at = at.outer) yield at;
}

export const rowScope = (n: Names, table: ast.Identifier, outer: Scope): Scope => ({
  kind: 'row',
  table: tableNamed(n, table.name),
  outer,
});

/** With the variable of a range in sight. */
export function variableScope(item: Item, range: ast.Range, outer: Scope, visitor: Visitor | null): Scope {
  const { variable: name } = range;
  const binding: Binding = { kind: 'variable', name, item, type: null, value: null, range, sees: () => outer };
  visitor?.binding?.(binding);
  return { kind: 'names', names: new Map([[name.name, binding]]), outer };
}

export function parameterScope(item: Item, parameters: readonly ast.Parameter[], visitor: Visitor): Scope {
  const bindings = parameters.map(({ name, type }): Binding => {
    return { kind: 'parameter', name, item, type, value: null, range: null, sees: () => null };
  });
  return { kind: 'names', names: byName(bindings, visitor), outer: null };
}

/** With the locals of a `with` in sight, which see each other too. */
export function localScope(item: Item, locals: readonly ast.Local[], outer: Scope, visitor: Visitor): Scope {
  if (locals.length === 0) return outer;
  const bindings = locals.map(({ name, type, value }): Binding => {
    return { kind: 'local', name, item, type, value, range: null, sees: () => scope };
  });
  const scope: Scope = { kind: 'names', names: byName(bindings, visitor), outer };
  return scope;
}

/** The first of a name counts. */
function byName(bindings: readonly Binding[], visitor: Visitor): ReadonlyMap<string, Binding> {
  const names = new Map<string, Binding>();
  for (const binding of bindings) {
    visitor.binding?.(binding);
    if (!names.has(binding.name.name)) names.set(binding.name.name, binding);
  }
  return names;
}
