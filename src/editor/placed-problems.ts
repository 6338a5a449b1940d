// The problems of an open sheet with the text that each of them stands in. Those in a used sheet are told at its `use`.
import { block, SHEET, type TextId } from '../assist/location.ts';
import { problemsOfFile } from '../run/evaluate.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import type { SheetResult } from '../run/result.ts';
import type { Problem } from '../text/problem.ts';

export interface PlacedProblem {
  readonly problem: Problem;
  readonly text: TextId;
}

export function placedProblems({ open, result }: { readonly open: OpenSheet; readonly result: SheetResult }): readonly PlacedProblem[] {
  const inBlocks = result.cells.flatMap(({ cell, problems }) => problems.map((problem) => ({ problem, text: block(cell) })));
  return [...inBlocks, ...problemsOfFile(open).map((problem) => ({ problem, text: SHEET }))];
}
