// Look-ups at work: the one row that fits, or what is near the one that was not found.
import { dateText } from '../../text/date.ts';
import { displayUnit } from '../../units/display-unit.ts';
import { fromSI } from '../../units/quantity.ts';
import type { CheckedLookUp } from '../checked.ts';
import { Fault, raise } from '../fault.ts';
import { valueProblem } from '../problems/values.ts';
import type { ColumnModel, TableModel } from '../program.ts';
import { best, type Uncertain } from '../uncertainty/dual.ts';
import { sameText } from './comparisons.ts';
import type { Compiler } from './compiler.ts';
import type { Evaluate, Frame } from './frame.ts';
import { compileCondition, decided, fitting, rowLabel, ruledOutBy } from './row-conditions.ts';
import { cellReader } from './values.ts';

export function compileLookUp(k: Compiler, node: CheckedLookUp): Evaluate {
  const { table } = node;
  const condition = compileCondition(k, node.where);
  const cell = k.compile(node.cell);
  const uncertain = condition.parts.some((p) => p.decide !== null);
  const keys = node.keys.map((key) => key && { column: key.column, sought: k.compile(key.sought) });
  return (f) => {
    const { rows, last } = fitting(condition, table, f);
    if (rows.length === 1) {
      const row = rows[0]!;
      if (uncertain && !f.run.shifting && !decided(condition, row, f)) f.run.notes.push(valueProblem('undecided', node.at, {}));
      f.locals[condition.row] = row;
      return present(cell, f, node);
    }
    if (rows.length > 1) {
      const labels = rows.slice(0, 4).map((r) => rowLabel(table, r));
      return raise(
        valueProblem('several-rows', node.at, {
          table: table.name,
          count: rows.length,
          rows: labels.join(', ') + (rows.length > 4 ? ', …' : ''),
        }),
      );
    }
    // Rows that the parts before the last one left: among them the one that was looked for has its neighbours.
    const left = [...Array(table.rowCount).keys()].filter((row) => ruledOutBy(condition, table, row, f) === last);
    const before = condition.parts.slice(0, last).map((p) => p.text);
    const key = keys[last];
    const sought = key?.sought(f);
    const wanted = key ? `${key.column.name} = ${soughtText(table, key.column, sought, left)}` : (condition.parts[last]?.text ?? '');
    const neighbours = key ? neighboursOf(table, key.column, sought, left) : '';
    return raise(valueProblem('no-such-row', node.at, { table: table.name, wanted, where: before.join(' and '), neighbours }));
  };
}

function present(cell: Evaluate, f: Frame, node: CheckedLookUp): unknown {
  try {
    return cell(f);
  } catch (fault) {
    if (!(fault instanceof Fault) || fault.reason !== 'absent') throw fault;
    const row = f.locals[node.where.row] as number;
    return raise(valueProblem('empty-cell', node.at, { table: node.table.name, column: node.column.name, row: row + 1 }));
  }
}

/** In these rows the next values below and above of a number, the known texts of a text. */
function neighboursOf(table: TableModel, column: ColumnModel, sought: unknown, rows: readonly number[]): string {
  const values = valuesOf(table, column, rows);
  if (typeof sought === 'string') {
    const known = [...new Set(values as string[])].filter((v) => !sameText(v, sought));
    return known.slice(0, 6).join(', ') + (known.length > 6 ? ', …' : '');
  }
  const numbers = (values as Uncertain[]).map(best).sort((a, b) => a - b);
  const x = best(sought as Uncertain);
  const below = numbers.filter((v) => v < x).at(-1);
  const above = numbers.find((v) => v > x);
  return [below, above]
    .filter((v) => v !== undefined)
    .map((v) => shownCell(column, v))
    .join(' and ');
}

/** What was looked for, in as few digits as tell it from every cell: `24.81 hp` where the table has 25 hp. */
function soughtText(table: TableModel, column: ColumnModel, sought: unknown, rows: readonly number[]): string {
  const cells = new Set(valuesOf(table, column, rows).map((v) => shownCell(column, v)));
  for (let digits = 4; digits < 10; digits++) {
    const text = shownCell(column, sought, digits);
    if (!cells.has(text)) return text;
  }
  return shownCell(column, sought);
}

/** The cells of these rows that have a value. */
function valuesOf(table: TableModel, column: ColumnModel, rows: readonly number[]): readonly unknown[] {
  const read = cellReader(table, column, table.at);
  const values: unknown[] = [];
  for (const row of rows) {
    try {
      values.push(read(row));
    } catch (fault) {
      if (!(fault instanceof Fault)) throw fault;
    }
  }
  return values;
}

/** A value of a column as a table would have it, in so many significant digits at most. */
function shownCell(column: ColumnModel, value: unknown, digits = 10): string {
  if (typeof value === 'string') return `"${value}"`;
  if (column.type.is === 'date') return dateText(value as number);
  const si = best(value as Uncertain);
  const { type, display } = column;
  const unit = display === 'auto' && type.is === 'quantity' ? displayUnit(type.dimension, type.power, type.point, si) : display;
  if (unit === null || unit === 'auto') return `${Number(si.toPrecision(digits))}`;
  return `${Number(fromSI(si, unit).toPrecision(digits))} ${unit.text}`.trimEnd();
}
