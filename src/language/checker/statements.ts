// The checker's one switch over all kinds of statement.
import type { Dimension } from '../../units/dimension.ts';
import type * as ast from '../ast.ts';
import type { CheckedStatement } from '../checked.ts';
import { MATHEMATICS } from '../functions/index.ts';
import { nameProblem } from '../problems/names.ts';
import { typeProblem } from '../problems/types.ts';
import type { Item } from '../program.ts';
import { expressionsOf, walk } from '../walk.ts';
import { checkColumn } from './columns.ts';
import { type Context, contextFor, type World } from './context.ts';
import { checkCurve, checkTabulation } from './curves.ts';
import { checkEntry } from './entries.ts';
import { dispatch } from './expression.ts';
import { finish, hopeless } from './finish.ts';
import { checkFunction } from './function-definitions.ts';
import { checkInstrument } from './instruments.ts';
import { checkRequirement } from './requirements.ts';

/** Checks one item; `missing` lists items whose signature it needs first: then the result is to be thrown away. */
export function checkItem(
  world: World,
  item: Item,
  options: { readonly sourcesRequired: boolean },
): { checked: CheckedStatement; missing: readonly Item[] } {
  const c = contextFor(world, item, dispatch);
  const checked = item.statement.broken ? hopeless(c) : checkStatement(c, item.statement, options.sourcesRequired);
  return { checked: isFirst(item) ? checked : { ...checked, failed: true }, missing: c.missing };
}

/** Whether it is the definition of its name: of two, the first one stands and the second has no value. */
function isFirst(item: Item): boolean {
  const { statement, module } = item;
  if (statement.kind === 'column') return module.columns.get(statement.table.name)?.get(statement.column.name) === item;
  if (statement.kind !== 'entry' && statement.kind !== 'function' && statement.kind !== 'instrument') return true;
  const defined = module.names.get(statement.name.name);
  return defined?.kind === 'item' && defined.item === item;
}

function checkStatement(c: Context, node: ast.Statement, sourcesRequired: boolean): CheckedStatement {
  checkOwnName(c, node);
  warnOfUnitNames(c, node);
  switch (node.kind) {
    case 'entry':
      return checkEntry(c, node, sourcesRequired);
    case 'column':
      return checkColumn(c, node);
    case 'function':
      return checkFunction(c, node);
    case 'requirement':
      return checkRequirement(c, node);
    case 'curve':
      return checkCurve(c, node);
    case 'tabulation':
      return checkTabulation(c, node);
    case 'instrument':
      return checkInstrument(c, node);
    case 'action':
    case 'use':
      return finish(c, null, { kind: 'nothing' });
    case 'unreadable':
      return hopeless(c);
    default:
      return node satisfies never;
  }
}

/** K4: the mathematics can't be redefined, a library name may be hidden. */
function checkOwnName(c: Context, node: ast.Statement): void {
  if (node.kind !== 'entry' && node.kind !== 'function' && node.kind !== 'instrument') return;
  const { name, at } = node.name;
  if (MATHEMATICS.has(name)) c.problems.push(nameProblem('redefines-mathematics', at, { name }));
  else if (c.module.kind !== 'library' && c.world.inLibrary(name)) c.problems.push(nameProblem('hides-library', at, { name }));
}

/** L4: a unit joined behind another that is also a name of the unit's own dimension. */
function warnOfUnitNames(c: Context, node: ast.Statement): void {
  for (const expression of expressionsOf(node))
    walk(expression, (part) => {
      if (part.kind !== 'quantity' || part.unit === null || part.unit.parts.length < 2) return;
      for (const { symbol } of part.unit.parts.slice(1)) {
        const defined = c.module.names.get(symbol.symbol);
        if (defined?.kind !== 'item' || literalDimension(defined.item.statement)?.si !== symbol.dimension.si) continue;
        const mend = `${part.number} ${part.unit.parts[0]!.symbol.symbol} * ${symbol.symbol}`;
        c.problems.push(
          typeProblem('unit-name-clash', part.unitAt ?? part.at, { symbol: symbol.symbol, unit: `the unit ${symbol.name}`, mend }),
        );
      }
    });
}

/** The dimension that an entry says it has: declared, or of its literal. */
export function literalDimension(node: ast.Statement): Dimension | null {
  if (node.kind !== 'entry') return null;
  if (node.type?.kind === 'unit') return node.type.unit.dimension;
  return node.value.kind === 'quantity' ? (node.value.unit?.dimension ?? null) : null;
}
