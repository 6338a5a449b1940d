// The units that a sheet has already: what is written next is likely to be in one of them.
import type * as ast from '../../language/ast.ts';
import { expressionsOf, walk } from '../../language/walk.ts';
import type { OpenSheet } from '../../run/open-sheet.ts';
import type { Unit } from '../../units/unit.ts';

/** In their one spelling, those of the text before those of tables. */
export function unitsOfSheet(open: OpenSheet): ReadonlySet<string> {
  const found = new Set<string>();
  const add = (unit: Unit | null) => {
    if (unit && unit.text !== '') found.add(unit.text);
  };
  for (const { statement } of open.cells.flatMap((cell) => cell.items)) {
    add(declared(statement));
    for (const expression of expressionsOf(statement)) walk(expression, (node) => node.kind === 'quantity' && add(node.unit));
  }
  for (const table of open.loaded.tables) for (const { type } of table.columns) if (type.kind === 'number') add(type.unit);
  return found;
}

function declared(statement: ast.Statement): Unit | null {
  const type = statement.kind === 'entry' || statement.kind === 'column' ? statement.type : null;
  return type?.kind === 'unit' ? type.unit : null;
}
