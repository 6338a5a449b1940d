// Names, cells, columns, lists and literals: reading what is already there.
import type { Problem } from '../../text/problem.ts';
import type { Span } from '../../text/span.ts';
import type * as checked from '../checked.ts';
import { spreadOfReadings } from '../checker/literals.ts';
import { AbsentCell, Fault, raise } from '../fault.ts';
import { typeProblem } from '../problems/types.ts';
import { valueProblem } from '../problems/values.ts';
import type { ColumnModel, Item, TableModel } from '../program.ts';
import { add, Dual, multiply, type Uncertain } from '../uncertainty/dual.ts';
import type { Component } from '../uncertainty/input.ts';
import { type Compiler, forgetLets } from './compiler.ts';
import type { Evaluate } from './frame.ts';
import { makeInput } from './made-input.ts';

/** A row as a value. */
export class RowValue {
  constructor(
    readonly table: TableModel,
    readonly index: number,
  ) {}
}

export function compileConstant(node: checked.CheckedConstant): Evaluate {
  const { value } = node;
  return () => value;
}

export function compileInput(node: checked.CheckedInput): Evaluate {
  const { input } = node;
  return () => input.current;
}

export function compileReading(k: Compiler, node: checked.CheckedReading): Evaluate {
  const of = k.compile(node.of);
  const { row } = node;
  return row === null ? (f) => readBy(node, of(f) as Uncertain) : (f) => readBy(node, of(f) as Uncertain, f.locals[row] as number);
}

/** A reading by an instrument: value · (1 + gain) + offset, of a column the row's own (U12). */
export function readBy({ gain, offsets }: checked.CheckedReading, value: Uncertain, row = 0): Uncertain {
  const withGain = gain === null ? value : multiply(value, add(1, gain.current));
  const offset = offsets[row];
  return offset === undefined ? withGain : add(withGain, offset.current);
}

/** `readings` of a computed list (U11): the mean as an exact value, the spread as a made input. */
export function compileReadings(k: Compiler, node: checked.CheckedReadings): Evaluate {
  const of = k.compile(node.of);
  return (f) => {
    const values = of(f) as readonly number[];
    if (values.length < 2) raise(typeProblem('readings-count', node.at, {}));
    const { mean, spread } = spreadOfReadings(values);
    const components: Component[] = [...spread.components];
    const limits = node.limits?.(mean);
    if (limits !== undefined) components.push({ u: limits.u, nu: null });
    return add(mean, makeInput(f, 'readings', node.at.start, { components, limits: null }));
  };
}

export function compileEntry(node: checked.CheckedEntry): Evaluate {
  const { item } = node;
  const { slot } = item;
  return () => {
    const { value } = slot;
    return typeof value === 'number' ? value : present(value, item);
  };
}

function present(value: unknown, item: Item): unknown {
  if (value instanceof Fault || value === undefined) throw new Fault('not calculated', null, item.label);
  return value;
}

/** A local; a `with` name is evaluated when it is first used. */
export function compileLocal(k: Compiler, node: checked.CheckedLocal): Evaluate {
  const { index } = node;
  const code = k.lets[index]?.code;
  if (node.type.is === 'row') {
    const { table } = node.type;
    if (code === undefined) {
      return (f) => {
        const value = f.locals[index];
        return typeof value === 'number' ? new RowValue(table, value) : value;
      };
    }
  }
  if (code === undefined) return (f) => f.locals[index];
  return (f) => {
    const known = f.locals[index];
    if (known !== undefined) return known;
    const value = code(f);
    f.locals[index] = value;
    return value;
  };
}

/** Puts the code of `with` names where their uses find it. The names see each other, whatever their order. */
export function defineLets(k: Compiler, locals: checked.CheckedLets['locals']): readonly number[] {
  for (const { index, value } of locals) {
    let code: Evaluate | null = null;
    const compiled: Evaluate = (f) => {
      code ??= k.compile(value);
      return code(f);
    };
    k.lets[index] = { code: compiled, value, decided: null };
  }
  return locals.map((l) => l.index);
}

export function compileLets(k: Compiler, node: checked.CheckedLets): Evaluate {
  const indexes = defineLets(k, node.locals);
  const body = k.compile(node.body);
  return (f) => {
    forgetLets(k, indexes, f);
    return body(f);
  };
}

export function compileList(k: Compiler, node: checked.CheckedList): Evaluate {
  const items = node.items.map(k.compile);
  return (f) => items.map((item) => item(f));
}

export function compileTable(node: checked.CheckedTable): Evaluate {
  const { table } = node;
  return () => table;
}

/** A whole column; a cell without value is an error there (T8). */
export function compileColumn(node: checked.CheckedColumn): Evaluate {
  const { table, column, at } = node;
  if (column.item === null && !column.uncertain && column.cells!.every((cell) => cell !== null && cell !== undefined)) {
    const { cells } = column;
    return () => cells;
  }
  const read = presentCellReader(table, column, at);
  return () => Array.from({ length: table.rowCount }, (_, row) => read(row));
}

/** The cell of a row. In the `where` of its own table an empty one rules the row out; elsewhere it is an error (T8). */
export function compileCell(k: Compiler, node: checked.CheckedCell): Evaluate {
  const { table, column, at } = node;
  if (node.row.kind === 'local' && k.lets[node.row.index] === undefined) {
    const { index } = node.row;
    const exact = exactCells(column);
    if (exact !== null) {
      return (f) => {
        const row = f.locals[index];
        return exact[typeof row === 'number' ? row : (row as RowValue).index];
      };
    }
    const read = cellReader(table, column, at);
    return (f) => {
      const row = f.locals[index];
      return read(typeof row === 'number' ? row : (row as RowValue).index);
    };
  }
  const read = presentCellReader(table, column, at);
  const row = k.compile(node.row);
  return (f) => read((row(f) as RowValue).index);
}

export function compileCells(k: Compiler, node: checked.CheckedCells): Evaluate {
  const rows = k.compile(node.rows);
  const read = presentCellReader(node.table, node.column, node.at);
  return (f) => (rows(f) as readonly RowValue[]).map((row) => read(row.index));
}

/** The numbers of a column of data where every row has one, exactly; else null. */
function exactCells({ cells, item }: ColumnModel): readonly number[] | null {
  return item === null && cells!.every((cell) => typeof cell === 'number') ? (cells as readonly number[]) : null;
}

/** Reads one cell: data as they are, computed ones from their statement's slot. Throws a Fault for a cell without value. */
export function cellReader(table: TableModel, column: ColumnModel, at: Span): (row: number) => unknown {
  const { cells, item } = column;
  if (item !== null) {
    return (row) => {
      const { value } = item.slot;
      if (!Array.isArray(value)) throw new Fault('not calculated', null, item.label);
      const cell: unknown = value[row];
      if (cell instanceof Fault)
        throw cell.reason === 'absent' ? new AbsentCell(table.name, column.name, row, at) : new Fault('not calculated', null, item.label);
      return cell;
    };
  }
  return (row) => {
    const cell = cells![row];
    if (cell === null) throw new AbsentCell(table.name, column.name, row, at);
    if (cell === undefined) throw new Fault('not calculated', null, `${table.name}.${column.name}`);
    return cell instanceof Dual ? cell.inputs[0]!.current : cell;
  };
}

/** The same where an absent cell is an error that names its place. */
function presentCellReader(table: TableModel, column: ColumnModel, at: Span): (row: number) => unknown {
  const read = cellReader(table, column, at);
  return (row) => {
    try {
      return read(row);
    } catch (fault) {
      if (!(fault instanceof AbsentCell)) throw fault;
      return raise(emptyCell(fault));
    }
  };
}

/** An absent cell as an error that names its place. */
export function emptyCell({ table, column, row, at }: AbsentCell): Problem {
  return valueProblem('empty-cell', at, { table, column, row: row + 1 });
}
