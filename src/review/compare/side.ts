// One of the two sheets that are compared, with what every part of the comparison asks of it.
import type { SheetEvaluation } from '../../run/evaluate.ts';
import type { StatementResult } from '../../run/result.ts';
import { calcCells } from '../../sheet/sheet.ts';
import type { Table } from '../../sheet/table.ts';
import { positionAt } from '../../text/lines.ts';
import type { Lines, Texts } from '../comparison.ts';
import type { Renames } from './meaning.ts';

export interface Side {
  readonly evaluation: SheetEvaluation;
  readonly statements: readonly StatementResult[];
  /** By name. */
  readonly tables: ReadonlyMap<string, Table>;
  /** Line in the file, from 1, of an offset in it. */
  readonly lineAt: (offset: number) => number;
  readonly lineOf: (of: StatementResult) => number;
  /** A statement as it stands in the file, on one line. */
  readonly textOf: (of: StatementResult) => string;
}

/** Both sheets, and how the old one's names are called in the new one. */
export interface Pair {
  readonly old: Side;
  readonly new: Side;
  readonly renames: Renames;
}

export function sideOf(evaluation: SheetEvaluation): Side {
  const { sheet, result } = evaluation;
  const starts = calcCells(sheet).map((cell) => cell.code.start);
  const lineAt = (offset: number) => positionAt(sheet.lines, offset).line + 1;
  return {
    evaluation,
    statements: result.cells.flatMap((cell) => cell.statements),
    tables: new Map(evaluation.tables.map((table) => [table.name, table] as const).reverse()),
    lineAt,
    lineOf: ({ cell, statement }) => lineAt((starts[cell] ?? 0) + statement.at.start),
    textOf: ({ cell, statement: { at } }) => oneLine(result.cells[cell]!.code.slice(at.start, at.end)),
  };
}

/** Blanks and line ends as one blank. */
export function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

/** Where a statement stands on both sides. */
export function linesOf(pair: Pair, old: StatementResult | null, now: StatementResult | null): Lines {
  return { old: old && pair.old.lineOf(old), new: now && pair.new.lineOf(now) };
}

/** Whether something is on one side alone or on both. */
export function changeOf(old: unknown, now: unknown): 'added' | 'removed' | 'changed' {
  return old === null ? 'added' : now === null ? 'removed' : 'changed';
}

/** Both texts where they differ, else null. */
export function textsOf(old: string | null, now: string | null): Texts | null {
  return old === now ? null : { old, new: now };
}
