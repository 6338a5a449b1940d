// What every statement's result has.
import type { Item } from '../language/program.ts';
import type { Problem } from '../text/problem.ts';

export interface Base {
  readonly cell: number;
  readonly problems: readonly Problem[];
  readonly reads: readonly string[];
}

/** Cell, problems (`outside`: those of syntax and names, found before the check) in the order of the text, and the names of what it reads of this sheet or used ones. */
export function baseOf(item: Item, outside: readonly Problem[]): Base {
  const own = [...outside, ...(item.checked?.problems ?? []), ...item.runProblems];
  return {
    cell: item.cell,
    problems: own.sort((a, b) => a.at.start - b.at.start),
    reads: (item.checked?.reads ?? []).filter((read) => read.module.kind !== 'library').map((read) => read.label),
  };
}
