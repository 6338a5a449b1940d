// Makes a module of a text's calc cells and tables: what it defines, and who owns a name that is defined twice.

import type * as ast from '../language/ast.ts';
import { latinForm } from '../language/lexer/scripts.ts';
import { parse } from '../language/parser.ts';
import { print } from '../language/print.ts';
import { nameProblem } from '../language/problems/names.ts';
import type { Item, Module, TableModel } from '../language/program.ts';
import type { Table } from '../sheet/table.ts';
import type { Problem } from '../text/problem.ts';
import { addColumns, tableModel } from './table-model.ts';

/** The statements of one calc cell. */
export interface ParsedCell {
  readonly code: string;
  readonly statements: readonly ast.Statement[];
  readonly problems: readonly Problem[];
}

/** Reads a calc cell; its tokens are not kept. */
export function parseCell(code: string): ParsedCell {
  const { statements, problems } = parse(code);
  return { code, statements, problems };
}

/** A module with its items, one a statement, by cell. `problems` are those of its names, by item. */
export interface BuiltModule {
  readonly module: Module;
  readonly cells: (readonly Item[])[];
  readonly problems: ReadonlyMap<Item, readonly Problem[]>;
}

let nextId = 0;

/** `id`: the number of a library's module, or that a used one had when it was loaded before. */
export function buildModule(
  kind: Module['kind'],
  path: string,
  cells: readonly ParsedCell[],
  tables: readonly Table[],
  id?: number,
): BuiltModule {
  const module: Module = {
    id: kind === 'sheet' ? -1 : (id ?? nextId++),
    kind,
    path,
    names: new Map(),
    used: new Map(),
    columns: new Map(),
    tables: new Map(),
  };
  const problems = new Map<Item, Problem[]>();
  for (const [place, table] of tables.entries()) {
    const model = tableModel(module, table, place);
    module.tables.set(table.name, model);
    module.names.set(table.name, { kind: 'table', table: model });
  }
  const items = cells.map((cell, number) => cell.statements.map((statement) => itemOf(module, number, statement)));
  for (const item of items.flat()) own(module, item, problems);
  for (const item of items.flat()) compareLooks(module, item, problems);
  for (const [name, columns] of module.columns) {
    const model = module.tables.get(name);
    if (model !== undefined) setTable(module, addColumns(model, columns));
  }
  return { module, cells: items, problems };
}

function setTable(module: Module, table: TableModel): void {
  module.tables.set(table.name, table);
  const defined = module.names.get(table.name);
  if (defined?.kind === 'table') module.names.set(table.name, { kind: 'table', table });
}

export function itemOf(module: Module, cell: number, statement: ast.Statement): Item {
  return {
    module,
    cell,
    statement,
    label: labelOf(statement),
    checked: null,
    evaluate: null,
    slot: { value: undefined, written: null },
    runProblems: [],
    made: [],
    instances: null,
  };
}

/** What stands for a statement in messages and lists. */
export function labelOf(node: ast.Statement): string {
  switch (node.kind) {
    case 'entry':
    case 'function':
    case 'instrument':
      return node.name.name;
    case 'column':
      return `${node.table.name}.${node.column.name}`;
    case 'requirement':
      return `${node.force} ${print(node.condition)}`;
    case 'unreadable':
      return node.name?.name ?? '';
    default:
      return node.kind;
  }
}

/** The name that a statement owns, even a broken one (Y5); null where it owns none. */
export function ownedName(node: ast.Statement): ast.Identifier | null {
  switch (node.kind) {
    case 'entry':
    case 'function':
    case 'instrument':
    case 'unreadable':
      return node.name;
    default:
      return null;
  }
}

function own(module: Module, item: Item, problems: Map<Item, Problem[]>): void {
  const { statement } = item;
  if (statement.kind === 'column') {
    const columns = module.columns.get(statement.table.name) ?? new Map<string, Item>();
    module.columns.set(statement.table.name, columns);
    const { name, at } = statement.column;
    const first = columns.get(name);
    if (first === undefined) columns.set(name, item);
    else report(problems, item, nameProblem('defined-twice', at, { name: item.label }, [placeOf(first)]));
    return;
  }
  const name = ownedName(statement);
  if (name === null) return;
  const first = module.names.get(name.name);
  if (first === undefined) module.names.set(name.name, { kind: 'item', item });
  else
    report(problems, item, nameProblem('defined-twice', name.at, { name: name.name }, first.kind === 'item' ? [placeOf(first.item)] : []));
}

/** Warns of a name that looks like another one of the module in most typefaces. */
function compareLooks(module: Module, item: Item, problems: Map<Item, Problem[]>): void {
  const name = ownedName(item.statement);
  const latin = name && latinForm(name.name);
  if (latin && module.names.has(latin))
    report(problems, item, nameProblem('looks-like-another', name.at, { name: name.name, other: latin }));
}

function placeOf(item: Item) {
  const { statement } = item;
  const at = statement.kind === 'column' ? statement.column.at : (ownedName(statement)?.at ?? statement.at);
  return { at, label: 'first defined here', cell: item.cell };
}

function report(problems: Map<Item, Problem[]>, item: Item, problem: Problem): void {
  const known = problems.get(item);
  if (known === undefined) problems.set(item, [problem]);
  else known.push(problem);
}
