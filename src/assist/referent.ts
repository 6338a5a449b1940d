// What a name stands for, and where that is defined.
import type * as ast from '../language/ast.ts';
import { isInput } from '../language/checker/entries.ts';
import { findBuiltin, MATHEMATICS } from '../language/functions/index.ts';
import { wordEnd } from '../language/name.ts';
import type { Definition, Item, Module, TableModel } from '../language/program.ts';
import { moduleRead } from '../run/library.ts';
import { ownedName } from '../run/module.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import { calcCells, type Sheet } from '../sheet/sheet.ts';
import type { Table, TableColumn } from '../sheet/table.ts';
import { type Span, span } from '../text/span.ts';
import type { UnitSymbol } from '../units/unit.ts';
import { block, contentOf, type Location, SHEET, type TextId } from './location.ts';
import { type Binding, type Names, type Scope, scopesFrom } from './scope.ts';

/** An `entry` may also be a line that could not be read but says which name it would have defined. */
export type Referent =
  | { readonly kind: 'entry' | 'function' | 'instrument'; readonly name: string; readonly item: Item }
  | { readonly kind: 'table'; readonly name: string; readonly table: TableModel }
  | { readonly kind: 'column'; readonly name: string; readonly table: TableModel }
  | { readonly kind: 'row'; readonly name: 'row'; readonly table: TableModel }
  | { readonly kind: Binding['kind']; readonly name: string; readonly binding: Binding }
  | { readonly kind: 'mathematics'; readonly name: string }
  | { readonly kind: 'unit'; readonly name: string; readonly symbol: UnitSymbol };

/** What a bare name stands for (N1); null where nothing. Where a name is a column and something else, which is an error, it is the column. */
export function resolve(n: Names, scope: Scope, name: string): Referent | null {
  const scopes = [...scopesFrom(scope)];
  for (const at of scopes) if (at.kind === 'row' && at.table?.columns.has(name)) return { kind: 'column', name, table: at.table };
  for (const at of scopes) {
    const binding = at.kind === 'names' ? at.names.get(name) : undefined;
    if (binding) return { kind: binding.kind, name, binding };
  }
  const defined = n.open.world.define(n.module, name);
  if (defined) return definedAs(name, defined);
  return MATHEMATICS.has(name) ? { kind: 'mathematics', name } : null;
}

/** What a name before arguments stands for. */
export function resolveCall(n: Names, name: string): Referent | null {
  if (findBuiltin(name)) return { kind: 'mathematics', name };
  return resolve(n, null, name);
}

export function definedAs(name: string, defined: Definition): Referent {
  if (defined.kind === 'table') return { kind: 'table', name, table: defined.table };
  const { kind } = defined.item.statement;
  return { kind: kind === 'function' || kind === 'instrument' ? kind : 'entry', name, item: defined.item };
}

/** The same text for what is the same thing; null for what has no identity (`row`). */
export function keyOf(referent: Referent): string | null {
  switch (referent.kind) {
    case 'entry':
    case 'function':
    case 'instrument':
      return `${moduleKey(referent.item.module)} ${referent.name}`;
    case 'table':
      return `${moduleKey(referent.table.module)} ${referent.table.name}`;
    case 'column':
      return `${moduleKey(referent.table.module)} ${referent.table.name}.${referent.name}`;
    case 'parameter':
    case 'local':
    case 'variable': {
      const { item, name } = referent.binding;
      return `${moduleKey(item.module)} in ${item.cell} at ${name.at.start}`;
    }
    case 'mathematics':
    case 'unit':
      return `${referent.kind} ${referent.name}`;
    case 'row':
      return null;
    default:
      return referent satisfies never;
  }
}

const moduleKey = ({ kind, path }: Module): string => `${kind} ${path}:`;

/** Where it is defined; null for the mathematics, units and rows. */
export function definitionOf(open: OpenSheet, referent: Referent): Location | null {
  switch (referent.kind) {
    case 'entry':
    case 'function':
    case 'instrument':
      return inItem(open, referent.item, ownedName(referent.item.statement)?.at ?? referent.item.statement.at);
    case 'table': {
      const table = tableRead(open, referent.table);
      return table ? { text: textOfModule(referent.table.module), at: table.nameAt } : null;
    }
    case 'column':
      return columnDefinition(open, referent.table, referent.name);
    case 'parameter':
    case 'local':
    case 'variable':
      return inItem(open, referent.binding.item, referent.binding.name.at);
    case 'mathematics':
    case 'unit':
    case 'row':
      return null;
    default:
      return referent satisfies never;
  }
}

function columnDefinition(open: OpenSheet, model: TableModel, name: string): Location | null {
  const item = model.columns.get(name)?.item;
  if (item) return inItem(open, item, (item.statement as ast.ComputedColumn).column.at);
  const table = tableRead(open, model);
  const column = table?.columns.find((c) => c.name === name);
  if (!table || !column) return null;
  const text = textOfTable(table, model.module);
  return { text, at: headName(contentOf(open, text), column, name) };
}

/** The text in which a table's heads and cells stand. */
export function textOfTable(table: Table, module: Module): TextId {
  if (table.path === null) return textOfModule(module);
  const folder = module.path.split('/').slice(0, -1);
  return { kind: 'file', path: [...folder, table.path].join('/') };
}

/** The name in a head `name / unit`, as it is written in the text, where that is at hand. */
export function headName(content: string | null, { at }: TableColumn, name: string): Span {
  return span(at.start, content === null ? Math.min(at.end, at.start + name.length) : wordEnd(content, at.start));
}

/** The place of a span of the item's statement. */
function inItem(open: OpenSheet, item: Item, at: Span): Location {
  const text = textOfModule(item.module);
  if (text.kind === 'sheet') return { text: block(item.cell), at };
  const start = calcCells(sheetOf(open, item.module)!)[item.cell]?.code.start ?? 0;
  return { text, at: span(at.start + start, at.end + start) };
}

export function textOfModule({ kind, path }: Module): TextId {
  if (kind === 'sheet') return SHEET;
  return kind === 'used' ? { kind: 'file', path } : { kind: 'library', name: path.replace(/\.ampwright\.md$/, '') };
}

function sheetOf(open: OpenSheet, module: Module): Sheet | undefined {
  if (module.kind === 'library') return moduleRead(module)?.sheet;
  return [...open.loaded.uses, open.loaded].find((loaded) => loaded.module === module)?.sheet;
}

/** The table as it was read, with its places. */
export function tableRead(open: OpenSheet, model: TableModel): Table | undefined {
  const { module, name } = model;
  const tables =
    module.kind === 'library'
      ? moduleRead(module)?.sheet.tables
      : [...open.loaded.uses, open.loaded].find((loaded) => loaded.module === module)?.tables;
  return tables?.find((table) => table.name === name);
}

/** What an entry is: given, or calculated. */
export function isGiven(item: Item): boolean {
  return item.statement.kind === 'entry' && isInput(item.statement);
}
