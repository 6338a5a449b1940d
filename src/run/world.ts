// What names mean across modules (N1): the text's own, what it uses, the library's; tables with the columns that this text adds.
import type { World } from '../language/checker/context.ts';
import type { Definition, Module } from '../language/program.ts';
import { inLibrary, library, libraryDefinition } from './library.ts';
import { addColumns } from './table-model.ts';

/** How many different combinations of argument types functions of `any` may be used with in a sheet (T4). */
const INSTANCES = 1000;

/** Names of a text that an unknown one is compared with: a thousand unknown names among a thousand known ones are a million pairs. */
const COMPARED = 300;

export function makeWorld(): World {
  let instances = 0;
  return {
    define(module, name) {
      const own = module.names.get(name);
      if (own !== undefined) return own;
      const other = module.used.get(name) ?? libraryDefinition(name);
      return other === undefined ? null : withOwnColumns(module, other);
    },
    *namesOf(module, of) {
      for (const names of [module.names, module.used, library().names]) {
        let left = COMPARED;
        for (const [name, definition] of names) {
          if (kindOf(definition) !== of && (of !== 'value' || kindOf(definition) !== 'table')) continue;
          if (left-- === 0) break;
          yield name;
        }
      }
    },
    signature: (item) => item.checked?.signature ?? null,
    inLibrary,
    countInstance: () => ++instances <= INSTANCES,
  };
}

function kindOf(definition: Definition): 'value' | 'function' | 'table' {
  if (definition.kind === 'table') return 'table';
  return definition.item.statement.kind === 'function' ? 'function' : 'value';
}

/** A used or a library table as this module sees it: with the columns that the module computes. */
function withOwnColumns(module: Module, definition: Definition): Definition {
  if (definition.kind !== 'table') return definition;
  const columns = module.columns.get(definition.table.name);
  if (columns === undefined) return definition;
  const known = module.tables.get(definition.table.name);
  const table = known ?? addColumns(definition.table, columns);
  module.tables.set(table.name, table);
  return { kind: 'table', table };
}
