// How a block stands, and the whole sheet, in one sentence: for the line below a cell, and for the status bar.
import { resultOf } from '../run/evaluate.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import type { CellResult, SheetResult, Status } from '../run/result.ts';
import type { Problem } from '../text/problem.ts';

/** `level` is the worst of it. */
export interface BlockStatus {
  readonly level: 'error' | 'fails' | 'undecided' | 'warning' | 'holds';
  /** `2 hold · 1 fails · 1 input without source`. */
  readonly text: string;
}

/** Null for a block with nothing to decide and nothing wrong. */
export function blockStatus(open: OpenSheet, number: number): BlockStatus | null {
  const cell = resultOf(open).cells[number];
  return cell ? statusOf(cell) : null;
}

/** The same for all blocks together, and what the file has around them. */
export function sheetStatus({ cells }: SheetResult, around: readonly Problem[]): BlockStatus | null {
  const problems = [...cells.flatMap((cell) => cell.problems), ...around];
  return statusOf({ statements: cells.flatMap((cell) => cell.statements), problems });
}

function statusOf(cell: Pick<CellResult, 'statements' | 'problems'>): BlockStatus | null {
  const requirements = cell.statements.filter((statement) => statement.kind === 'requirement');
  const count = (status: Status) => requirements.filter((requirement) => requirement.status === status).length;
  const withoutSource = cell.problems.filter(({ code }) => code === 'no-source' || code === 'source-required');
  const bare = withoutSource.length;
  const errors = cell.problems.filter((problem) => problem.severity === 'error' && !withoutSource.includes(problem)).length;
  const parts = [
    { level: 'error', words: counted(errors, 'error', 'errors') },
    { level: 'holds', words: counted(count('holds'), 'holds', 'hold') },
    { level: 'fails', words: counted(count('fails'), 'fails', 'fail') },
    { level: 'undecided', words: counted(count('undecided'), 'is undecided', 'are undecided') },
    { level: 'error', words: counted(count('not calculated'), 'is not calculated', 'are not calculated') },
    {
      level: withoutSource.some(({ severity }) => severity === 'error') ? 'error' : 'warning',
      words: counted(bare, 'input without source', 'inputs without source'),
    },
  ] as const;
  const said = parts.filter(({ words }) => words !== null);
  const worst = LEVELS.find((level) => said.some((part) => part.level === level));
  return worst ? { level: worst, text: said.map(({ words }) => words).join(' · ') } : null;
}

const LEVELS = ['error', 'fails', 'undecided', 'warning', 'holds'] as const;

function counted(count: number, one: string, many: string): string | null {
  return count === 0 ? null : `${count} ${count === 1 ? one : many}`;
}
