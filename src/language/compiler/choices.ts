// Choices and look-ups at work: which rows each part of the condition rules out, ties, what is undecided (D4, D5).

import { dateText } from '../../text/date.ts';
import { displayUnit } from '../../units/display-unit.ts';
import { numberText } from '../../units/number-text.ts';
import { differenceFromSI, differenceUnit, fromSI } from '../../units/quantity.ts';
import type { CheckedChoice, CheckedLookUp, RowCondition } from '../checked.ts';
import { AbsentCell, Fault, raise } from '../fault.ts';
import { valueProblem } from '../problems/values.ts';
import type { ColumnModel, TableModel } from '../program.ts';
import { elementOf } from '../type.ts';
import { best, type Uncertain } from '../uncertainty/dual.ts';
import { same, sameText } from './comparisons.ts';
import type { Compiler } from './compiler.ts';
import type { Decide, DecidedSides } from './decision.ts';
import { compileDecision } from './decisions.ts';
import type { Evaluate, Frame } from './frame.ts';
import { cellReader, RowValue } from './values.ts';

/** What a choice found. */
export interface ChoiceFound {
  readonly table: TableModel;
  readonly row: number;
  readonly ruledOut: readonly { readonly condition: string; readonly count: number }[];
  readonly ties: number;
  /** Where the chosen row's condition is undecided: the next row in order that holds with U, -1 where none does. Else null. */
  readonly undecided: number | null;
}

interface CompiledCondition {
  readonly row: number;
  readonly parts: readonly { readonly text: string; readonly holds: Evaluate<boolean>; readonly decide: Decide | null }[];
}

function compileCondition(k: Compiler, where: RowCondition): CompiledCondition {
  return {
    row: where.row,
    parts: where.parts.map(({ condition, text }) => ({
      text,
      holds: k.compile(condition) as Evaluate<boolean>,
      decide: condition.uncertain ? compileDecision(k, condition, (f, run) => ({ locals: [...f.locals], run })) : null,
    })),
  };
}

/** The number of the part that rules the row out, -1 where none does. An empty cell of the row rules it out (T8). */
function ruledOutBy(condition: CompiledCondition, table: TableModel, row: number, f: Frame): number {
  f.locals[condition.row] = row;
  const before = f.run.notes.length;
  let p = 0;
  try {
    while (p < condition.parts.length && condition.parts[p]!.holds(f)) p++;
    return p === condition.parts.length ? -1 : p;
  } catch (fault) {
    if (fault instanceof AbsentCell && fault.table === table.name && fault.row === row) return p;
    throw fault;
  } finally {
    f.run.notes.length = before;
  }
}

/** Rows that fit, and how many each part ruled out. */
function fitting(condition: CompiledCondition, table: TableModel, f: Frame): { rows: number[]; counts: number[]; last: number } {
  const rows: number[] = [];
  const counts = condition.parts.map(() => 0);
  let last = 0;
  for (let row = 0; row < table.rowCount; row++) {
    const part = ruledOutBy(condition, table, row, f);
    if (part === -1) rows.push(row);
    else {
      counts[part] = counts[part]! + 1;
      last = Math.max(last, part);
    }
  }
  return { rows, counts, last };
}

export function compileChoice(k: Compiler, node: CheckedChoice): Evaluate {
  const { table, order } = node;
  const condition = compileCondition(k, node.where);
  const by = node.by === null ? null : k.compile(node.by);
  return (f) => {
    const { rows, counts, last } = fitting(condition, table, f);
    const value = (row: number): number | null => {
      f.locals[condition.row] = row;
      return by === null ? null : orderValue(by, f);
    };
    const ranked = rank(by === null ? rows : rows.filter((r) => value(r) !== null), order, (r) => value(r)!);
    const chosen = ranked[0];
    if (chosen === undefined) {
      const ruledOut = condition.parts.map((p, i) => `${p.text}: ${counts[i]}`).join(', ');
      return raise(
        valueProblem('no-row-left', node.at, {
          table: table.name,
          rows: table.rowCount,
          last: condition.parts[last]?.text ?? '',
          ruledOut,
        }),
      );
    }
    const ties = by === null ? 1 : ranked.filter((r) => same(value(r)!, value(chosen)!)).length;
    if (!f.run.shifting) {
      const undecided =
        condition.parts.some((p) => p.decide !== null) && !decided(condition, chosen, f)
          ? (ranked.find((r) => r !== chosen && decided(condition, r, f)) ?? -1)
          : null;
      if (undecided !== null) {
        const next = undecided === -1 ? null : rowLabel(table, undecided);
        const inHand = undecidedMargin(condition, chosen, f);
        f.run.notes.push(valueProblem('choice-undecided', node.at, { row: rowLabel(table, chosen), inHand, next }));
      }
      f.run.choice = {
        table,
        row: chosen,
        ruledOut: condition.parts.map((p, i) => ({ condition: p.text, count: counts[i]! })),
        ties,
        undecided,
      };
    }
    return new RowValue(table, chosen);
  };
}

function orderValue(by: Evaluate, f: Frame): number | null {
  try {
    return best(by(f) as Uncertain);
  } catch (fault) {
    if (fault instanceof Fault && fault.reason === 'absent') return null;
    throw fault;
  }
}

/** Rows from best to worst; equal ones in table order. */
function rank(rows: readonly number[], order: CheckedChoice['order'], value: (row: number) => number): readonly number[] {
  if (order === 'first') return rows;
  const sign = order === 'least' ? 1 : -1;
  const keyed = rows.map((row) => ({ row, key: value(row) }));
  keyed.sort((a, b) => (same(a.key, b.key) ? a.row - b.row : sign * (a.key - b.key)));
  return keyed.map((r) => r.row);
}

/** Whether a row holds with the uncertainty against it. */
function decided(condition: CompiledCondition, row: number, f: Frame): boolean {
  f.locals[condition.row] = row;
  return condition.parts.every((p) => (p.decide === null ? p.holds(f) : p.decide(f).outcome === 'holds'));
}

/** `, 0.16 A in hand against U = 0.76 A`, of the part that is undecided. */
function undecidedMargin(condition: CompiledCondition, row: number, f: Frame): string {
  f.locals[condition.row] = row;
  for (const { decide } of condition.parts) {
    const { outcome, sides } = decide?.(f) ?? { outcome: 'holds', sides: null };
    if (outcome !== 'undecided' || sides === null) continue;
    return `, ${marginText(sides, sides.slack)} in hand against U = ${marginText(sides, sides.combined.expanded)}`;
  }
  return '';
}

/** A difference of both sides, to two digits, in the unit that one of them is shown in. */
function marginText({ leftNode, rightNode }: DecidedSides, si: number): string {
  const type = elementOf(leftNode.type);
  if (type.is !== 'quantity') return '';
  const given = [leftNode, rightNode].map((node) => node.display).find((display) => display !== 'auto');
  const unit = given === undefined ? displayUnit(type.dimension, type.power, false, Math.abs(si)) : given;
  const shown = unit === null ? null : differenceUnit(unit);
  const number = numberText(differenceFromSI(si, shown), 2);
  return shown === null || shown.text === '' ? number : `${number} ${shown.text}`;
}

/** A row's name for people: its first text, else its first cell as written, else its number. */
export function rowLabel(table: TableModel, row: number): string {
  const columns = table.order.map((name) => table.columns.get(name)!);
  const texts = columns.filter((column) => column.type.is === 'text');
  for (const { texts: written, display } of [...texts, ...columns.slice(0, 1)]) {
    const text = written?.[row] ?? '';
    if (text !== '' && text !== '–') return display === null || display === 'auto' ? text : `${text} ${display.text}`;
  }
  return `row ${row + 1}`;
}

// -------------------------------------------------------------------------------------------------------- look-ups

export function compileLookUp(k: Compiler, node: CheckedLookUp): Evaluate {
  const { table } = node;
  const condition = compileCondition(k, node.where);
  const cell = k.compile(node.cell);
  const uncertain = condition.parts.some((p) => p.decide !== null);
  const sought = node.key === null ? null : k.compile(node.key.sought);
  return (f) => {
    const { rows } = fitting(condition, table, f);
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
    const wanted =
      node.key === null || sought === null
        ? node.where.parts.map((p) => p.text).join(' and ')
        : `${node.key.column.name} = ${shownCell(node.key.column, sought(f))}`;
    const neighbours = node.key === null || sought === null ? '' : neighboursOf(table, node.key.column, sought(f));
    return raise(valueProblem('no-such-row', node.at, { table: table.name, wanted, neighbours }));
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

/** The next values below and above of a number, the known texts of a text. */
function neighboursOf(table: TableModel, column: ColumnModel, sought: unknown): string {
  const read = cellReader(table, column, table.at);
  const values: unknown[] = [];
  for (let row = 0; row < table.rowCount; row++) {
    try {
      values.push(read(row));
    } catch (fault) {
      if (!(fault instanceof Fault)) throw fault;
    }
  }
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

function shownCell(column: ColumnModel, value: unknown): string {
  if (typeof value === 'string') return `"${value}"`;
  if (column.type.is === 'date') return dateText(value as number);
  const si = best(value as Uncertain);
  const { type, display } = column;
  const unit = display === 'auto' && type.is === 'quantity' ? displayUnit(type.dimension, type.power, type.point, si) : display;
  if (unit === null || unit === 'auto') return `${Number(si.toPrecision(10))}`;
  return `${Number(fromSI(si, unit).toPrecision(10))} ${unit.text}`.trimEnd();
}
