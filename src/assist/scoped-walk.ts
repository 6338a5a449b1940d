// Going through a statement with what is in scope at each of its expressions, as the checker has it.
import type * as ast from '../language/ast.ts';
import type { Item } from '../language/program.ts';
import { children } from '../language/walk.ts';
import { localScope, type Names, parameterScope, rowScope, type Scope, type Visitor, variableScope } from './scope.ts';

/** Visits every expression of the item's statement, each before those inside it, with the scope that it is read in. */
export function walkScoped(n: Names, item: Item, visitor: Visitor): void {
  const walk: Walk = { n, item, visitor };
  for (const part of partsOfStatement(walk, item.statement)) visit(walk, part);
}

interface Walk {
  readonly n: Names;
  readonly item: Item;
  readonly visitor: Visitor;
}

/** Expressions that are read in one scope. */
interface Part {
  readonly scope: Scope;
  readonly nodes: readonly ast.Expression[];
}

function partsOfStatement(walk: Walk, statement: ast.Statement): readonly Part[] {
  const { n, item, visitor } = walk;
  switch (statement.kind) {
    case 'entry':
      return partsOfEntry(walk, statement);
    case 'column':
      return [withLocals(walk, rowScope(n, statement.table, null), [statement.value])];
    case 'function':
      return [withLocals(walk, parameterScope(item, statement.parameters, visitor), [statement.body])];
    case 'requirement': {
      const { forEach, condition, throughout } = statement;
      const row = forEach === null ? null : rowScope(n, forEach.table, null);
      const where: Part = { scope: row, nodes: forEach?.where ? [forEach.where] : [] };
      return [withLocals(walk, row, [condition]), where, { scope: null, nodes: throughout.flatMap(ends) }];
    }
    case 'curve':
    case 'tabulation': {
      const outside = statement.kind === 'curve' ? statement.marks.map((mark) => mark.value) : [statement.step];
      const limits = statement.kind === 'curve' ? statement.limits.map((limit) => limit.value) : [];
      const inside = withLocals(walk, variableScope(item, statement.over, null, visitor), [
        ...statement.traces.map((trace) => trace.value),
        ...limits,
      ]);
      return [inside, { scope: null, nodes: [...ends(statement.over), ...outside] }];
    }
    case 'instrument':
    case 'action':
    case 'use':
    case 'unreadable':
      return [];
    default:
      return statement satisfies never;
  }
}

/** What stands in a statement whose `with` sees `outer`. */
function withLocals({ item, visitor }: Walk, outer: Scope, inside: readonly ast.Expression[]): Part {
  const { locals, needs } = item.statement.clauses;
  const scope = localScope(item, locals, outer, visitor);
  return { scope, nodes: [...inside, ...locals.map((local) => local.value), ...needs.map((need) => need.condition)] };
}

/** The locals of a root that is the whole right side see its variable (N5). */
function partsOfEntry(walk: Walk, { value, clauses }: ast.Entry): readonly Part[] {
  if (value.kind !== 'rootOf' || clauses.locals.length === 0) return [withLocals(walk, null, [value])];
  const inside = withLocals(walk, variableScope(walk.item, value.over, null, null), []);
  const scope = inside.scope?.kind === 'names' ? { ...inside.scope, outer: null } : null;
  return [{ scope, nodes: [value] }, inside];
}

function visit(walk: Walk, { scope, nodes }: Part): void {
  for (const node of nodes) {
    walk.visitor.expression(node, scope);
    for (const part of partsOfExpression(walk, node, scope)) visit(walk, part);
  }
}

function partsOfExpression({ n, item, visitor }: Walk, node: ast.Expression, scope: Scope): readonly Part[] {
  switch (node.kind) {
    case 'choice':
    case 'lookUp':
      return [{ scope: rowScope(n, node.table, scope), nodes: children(node) }];
    case 'rootOf':
      return [
        { scope: variableScope(item, node.over, scope, visitor), nodes: [node.equation] },
        { scope, nodes: ends(node.over) },
      ];
    default:
      return [{ scope, nodes: children(node) }];
  }
}

const ends = (range: ast.Range): readonly ast.Expression[] => [range.from, range.to];
