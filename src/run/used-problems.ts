// The errors of a used sheet, with their places in its file or in the file of a table.

import type * as ast from '../language/ast.ts';
import type { Item } from '../language/program.ts';
import { calcCells } from '../sheet/sheet.ts';
import type { Problem } from '../text/problem.ts';
import { type Span, span } from '../text/span.ts';
import { resolvePath } from './files.ts';
import type { Loaded } from './load.ts';
import { useProblem } from './problems.ts';

/** A problem with its place in a file: the sheet's own (`path` null), or a file that it uses. */
export interface LocatedProblem {
  readonly problem: Problem;
  readonly at: Span;
  readonly path: string | null;
}

const known = new WeakMap<Loaded, readonly LocatedProblem[]>();

/** The errors of a used sheet that has been run, those of its file first; what it uses itself counts where it uses it. */
export function usedErrors(used: Loaded): readonly LocatedProblem[] {
  const errors = known.get(used) ?? findErrors(used);
  known.set(used, errors);
  return errors;
}

function findErrors(used: Loaded): readonly LocatedProblem[] {
  const codes = calcCells(used.sheet).map((cell) => cell.code.start);
  const inFile = used.sheet.problems.map((problem) => ({ problem, at: problem.at, path: used.path }));
  const inTables = used.tableProblems.map(({ problem, path }) => ({ problem, at: problem.at, path: path ?? used.path }));
  const inCells = used.parsed.flatMap(({ problems }, number) => {
    const all = [...problems, ...used.cells[number]!.flatMap((item) => problemsOf(used, item))];
    return all.map((problem) => ({ problem, at: moved(problem.at, codes[number] ?? 0), path: used.path }));
  });
  return [...inFile, ...inTables, ...inCells].filter(({ problem }) => problem.severity === 'error');
}

function problemsOf(used: Loaded, item: Item): readonly Problem[] {
  const { statement, checked, runProblems } = item;
  const ofUse = statement.kind === 'use' ? problemsOfUse(used, statement) : [];
  return [...(used.problems.get(item) ?? []), ...ofUse, ...(checked?.problems ?? []), ...runProblems];
}

/** What is wrong with a `use`: its own problems, and that the sheet that it uses has errors. */
export function problemsOfUse(loaded: Loaded, statement: ast.Use): readonly Problem[] {
  const own = loaded.useProblems.get(statement) ?? [];
  const { value: path, at } = statement.path;
  const used = loaded.uses.find((u) => u.path === resolvePath(loaded.path, path));
  const errors = used === undefined ? [] : usedErrors(used);
  const [first] = errors;
  return first === undefined ? own : [...own, useProblem('use-errors', at, { path, count: errors.length, first: first.problem.message })];
}

/** A place of a calc cell's code as one of the file. */
export function moved(at: Span, by: number): Span {
  return span(at.start + by, at.end + by);
}
