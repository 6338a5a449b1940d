// The columns of the rows: which of them replace inputs of the sheet, and which are carried along.

import { describe } from '../../language/checker/describe.ts';
import { isInput } from '../../language/checker/entries.ts';
import type { Item, Module } from '../../language/program.ts';
import { DATE, disagreement, TEXT, type Type, typeOfUnit } from '../../language/type.ts';
import type { ColumnType } from '../../sheet/table.ts';
import type { RawCell } from '../../sheet/table-columns.ts';
import { type Head, readHead, writeHead } from '../../sheet/table-head.ts';
import { tableProblem } from '../../sheet/table-problems.ts';
import { nearSpellings } from '../../text/near.ts';
import type { Problem } from '../../text/problem.ts';
import { type Span, span } from '../../text/span.ts';
import type { Unit } from '../../units/unit.ts';
import { batchProblem } from './problems.ts';

/** A column whose cells replace an input. */
export interface InputColumn {
  /** Its place in a row. */
  readonly index: number;
  readonly item: Item;
  readonly type: ColumnType;
}

export interface RowColumns {
  readonly inputs: readonly InputColumn[];
  /** The heads of the other columns. */
  readonly carried: readonly string[];
  /** Those of them that are names, with their places. */
  readonly carriedAt: ReadonlyMap<string, Span>;
  readonly problems: readonly Problem[];
}

/** Finds the inputs that the heads name. `inputs` are all of the sheet, by name. */
export function readColumns(heads: readonly RawCell[], module: Module, inputs: ReadonlyMap<string, Item>): RowColumns {
  const problems: Problem[] = [];
  const found: InputColumn[] = [];
  const carried: string[] = [];
  const carriedAt = new Map<string, Span>();
  const seen = new Set<string>();
  heads.forEach((raw, index) => {
    const ofHead: Problem[] = [];
    const head = readHead(raw.text, raw.at, ofHead);
    if (head === null) {
      carried.push(raw.text);
      return;
    }
    if (seen.has(head.name)) problems.push(tableProblem('column-twice', raw.at, { name: head.name }));
    seen.add(head.name);
    const item = inputs.get(head.name);
    const what = item === undefined ? otherThan(module, head.name) : isSingle(item) ? null : 'a list, and a cell holds one value';
    if (what !== null) problems.push(batchProblem('column-no-input', raw.at, { name: head.name, what }));
    else if (item === undefined) {
      carried.push(raw.text);
      carriedAt.set(head.name, raw.at);
    } else if (head.type === null) problems.push(...ofHead);
    else if (agrees(item, head, head.type, problems)) found.push({ index, item, type: head.type });
  });
  if (found.length === 0 && problems.length === 0) {
    const all = [...inputs].filter(([, item]) => isSingle(item)).map(([, item]) => headOf(item));
    problems.push(batchProblem('no-input-column', span(0, heads.at(-1)?.at.end ?? 0), { inputs: all }));
  }
  const free = [...inputs.keys()].filter((name) => !seen.has(name));
  for (const [name, at] of carriedAt) {
    const near = nearSpellings(name, free);
    if (near.length > 0) problems.push(batchProblem('column-near', at, { name, near }));
  }
  return { inputs: found, carried, carriedAt, problems };
}

/** The inputs of a sheet by name: entries made of literals alone (T10). */
export function inputsOf(module: Module): ReadonlyMap<string, Item> {
  const inputs = new Map<string, Item>();
  for (const [name, definition] of module.names) {
    if (definition.kind === 'item' && isInputItem(definition.item)) inputs.set(name, definition.item);
  }
  return inputs;
}

export function isInputItem({ statement }: Item): boolean {
  return statement.kind === 'entry' && isInput(statement);
}

/** What a name stands for that is no input of the sheet; null where it stands for nothing here. */
function otherThan(module: Module, name: string): string | null {
  const own = module.names.get(name);
  const definition = own ?? module.used.get(name);
  if (definition === undefined) return null;
  if (definition.kind === 'table') return 'a table';
  const { kind } = definition.item.statement;
  if (kind !== 'entry') return kind === 'unreadable' ? 'an entry in error' : kind === 'instrument' ? 'an instrument' : 'a function';
  return own === undefined ? `defined in \`${definition.item.module.path}\`` : 'calculated in the sheet';
}

function isSingle(item: Item): boolean {
  return typeOf(item).is !== 'list';
}

const typeOf = (item: Item): Type => item.checked!.signature.type;

/** Whether a head's unit, or its absence, is of the input's kind; else a problem with the head to write. */
function agrees(item: Item, head: Head, column: ColumnType, problems: Problem[]): boolean {
  const wanted = typeOf(item);
  const { type: found, unit } = columnType(column);
  const fact = { name: head.name, found: describe(found, unit), wanted: describe(wanted, displayOf(item)), head: headOf(item) };
  const refuse = () => {
    problems.push(batchProblem('column-kind', head.at, fact));
    return false;
  };
  if (wanted.is !== 'quantity' || found.is !== 'quantity') {
    return (wanted.is === 'yesno' ? 'text' : wanted.is) === found.is || refuse();
  }
  if (wanted.point !== found.point || disagreement(wanted.dimension, found.dimension) !== null) return refuse();
  if (wanted.power !== null && found.power !== null && wanted.power !== found.power) {
    problems.push(batchProblem('column-power', head.at, { name: head.name, found: found.power, wanted: wanted.power }));
  }
  return true;
}

function columnType(column: ColumnType): { readonly type: Type; readonly unit: Unit | null } {
  switch (column.kind) {
    case 'text':
      return { type: TEXT, unit: null };
    case 'date':
      return { type: DATE, unit: null };
    case 'number':
      return { type: typeOfUnit(column.unit.text === '' ? null : column.unit), unit: column.unit };
  }
}

function displayOf(item: Item): Unit | null {
  const { display } = item.checked!.signature;
  return display === 'auto' ? null : display;
}

/** The head that a column for this input has. */
function headOf(item: Item): string {
  const type = typeOf(item);
  return headText(item.label, type, displayOf(item));
}

/** `I_n / A`, `n / 1`, `due / date`, or the name alone for texts. */
export function headText(name: string, type: Type, unit: Unit | null): string {
  if (type.is === 'date') return `${name} / date`;
  if (type.is !== 'quantity') return name;
  return writeHead(name, unit?.text ?? '');
}
