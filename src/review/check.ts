// What the checks of a sheet are given.
import type { StatementResult } from '../run/result.ts';
import { calcCells } from '../sheet/sheet.ts';
import type { Span } from '../text/span.ts';
import type { Finding } from './finding.ts';
import type { SignedSheet } from './signature-standing.ts';

export interface Review extends SignedSheet {
  /** The day on which concessions count, in days since 1970-01-01: the core has no clock of its own. */
  readonly on: number;
  /** Roles that must have signed. */
  readonly require: readonly string[];
}

/** Finds one kind of thing in a sheet. */
export type Check = (review: Review) => readonly Finding[];

/** A place of a statement in the sheet's file. */
export function inFile(review: Review, result: StatementResult, at: Span = result.statement.at): Span {
  const start = calcCells(review.evaluation.sheet)[result.cell]?.code.start ?? 0;
  return { start: start + at.start, end: start + at.end };
}

/** All statements of the sheet, in the order of the text. */
export function statements(review: Review): readonly StatementResult[] {
  return review.evaluation.result.cells.flatMap((cell) => cell.statements);
}
