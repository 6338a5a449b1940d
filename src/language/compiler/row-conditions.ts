// Conditions on the rows of a table: which rows fit, and which part of the condition rules out the others (D5).
import type { RowCondition } from '../checked.ts';
import { AbsentCell } from '../fault.ts';
import type { TableModel } from '../program.ts';
import type { Compiler } from './compiler.ts';
import type { Decide } from './decision.ts';
import { compileDecision } from './decisions.ts';
import type { Evaluate, Frame } from './frame.ts';

/** The condition of a choice or look-up, part by part. */
export interface CompiledCondition {
  readonly row: number;
  readonly parts: readonly { readonly text: string; readonly holds: Evaluate<boolean>; readonly decide: Decide | null }[];
}

export function compileCondition(k: Compiler, where: RowCondition): CompiledCondition {
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
export function ruledOutBy(condition: CompiledCondition, table: TableModel, row: number, f: Frame): number {
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
export function fitting(condition: CompiledCondition, table: TableModel, f: Frame): { rows: number[]; counts: number[]; last: number } {
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

/** Whether a row holds with the uncertainty against it. */
export function decided(condition: CompiledCondition, row: number, f: Frame): boolean {
  f.locals[condition.row] = row;
  return condition.parts.every((p) => (p.decide === null ? p.holds(f) : p.decide(f).outcome === 'holds'));
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
