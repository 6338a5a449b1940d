// A sheet's whole answer from its text.

import type { FunctionDefinition } from '../language/ast.ts';
import type { Definition, Item } from '../language/program.ts';
import { type Contribution, contributions } from '../language/uncertainty/combine.ts';
import { Dual, type Uncertain } from '../language/uncertainty/dual.ts';
import { digest, type UsedFile } from '../sheet/digest.ts';
import { type ProseValue, proseValueProblems } from '../sheet/prose-values.ts';
import { calcCells, type Sheet } from '../sheet/sheet.ts';
import type { Table } from '../sheet/table.ts';
import type { Problem } from '../text/problem.ts';
import { evaluateRaw } from './evaluate-item.ts';
import { NO_FILES, type SheetFiles } from './files.ts';
import { libraryDefinition } from './library.ts';
import { type OpenSheet, openSheet, resultOfItem } from './open-sheet.ts';
import { movedProblem, movement, presentSheet } from './present-sheet.ts';
import type { BudgetLine, CellResult, EntryResult, SheetResult } from './result.ts';
import { rowCells, tableRows } from './row-cells.ts';
import { contributionsOf } from './shifting.ts';
import { type LocatedProblem, moved, usedErrors } from './used-problems.ts';

export type { LocatedProblem } from './used-problems.ts';

export interface SheetEvaluation {
  readonly sheet: Sheet;
  readonly result: SheetResult;
  /** All tables: of the sheet's text and of CSV files. */
  readonly tables: readonly Table[];
  /** In the order of the file; those of used files behind. */
  readonly problems: readonly LocatedProblem[];
  /** Digest of the sheet with every file that it reads (`sha256:…`). */
  readonly digest: string;
  readonly files: readonly UsedFile[];
}

/** Evaluates a sheet. The same text and files give the same answer, always. */
export function evaluateSheet(text: string, files: SheetFiles = NO_FILES): SheetEvaluation {
  return evaluationOf(openSheet(text, files));
}

/** The present answer of an open sheet. */
export function evaluationOf(open: OpenSheet): SheetEvaluation {
  const { tables, files } = open.loaded;
  const sheet = presentSheet(open);
  return { sheet, tables, files, result: resultOf(open), problems: locatedProblems(open, sheet), digest: digest(sheet.text, files) };
}

export function resultOf(open: OpenSheet): SheetResult {
  const cells = open.cells.map((_, number) => cellResult(open, number));
  const entries = new Map<string, EntryResult>();
  const items = new Map<string, Item>();
  for (const { statements } of cells) {
    for (const s of statements) if (s.kind === 'entry' && !entries.has(s.name)) entries.set(s.name, s);
  }
  const { names, used } = open.loaded.module;
  for (const [name, definition] of names) if (definition.kind === 'item') items.set(name, definition.item);
  return {
    cells,
    entries,
    functionNamed: (name) => functionOf(names.get(name) ?? used.get(name) ?? libraryDefinition(name)),
    budget: (name) => budgetOf(items.get(name)),
    row: (name) => rowCells(items.get(name)?.slot.value, open.loaded.sheet.frontMatter.digits),
    rows: (table, count, wanted) => tableRows(open.loaded.module.tables.get(table), count, wanted, open.loaded.sheet.frontMatter.digits),
    usedBy: (name) => usedBy(open, items.get(name) ?? columnItem(open, name)),
  };
}

function cellResult(open: OpenSheet, number: number): CellResult {
  const cell = open.cells[number]!;
  if (cell.result !== null) return cell.result;
  const statements = cell.items.map((item) => resultOfItem(open, item));
  const loose = cell.outside.get(null) ?? [];
  const problems = [...loose, ...statements.flatMap((s) => s.problems)].sort((a, b) => a.at.start - b.at.start);
  cell.result = { cell: number, code: cell.code, statements, problems };
  return cell.result;
}

function functionOf(definition: Definition | undefined): FunctionDefinition | undefined {
  return definition?.kind === 'item' && definition.item.statement.kind === 'function' ? definition.item.statement : undefined;
}

function columnItem(open: OpenSheet, name: string): Item | undefined {
  const [table, column] = name.split('.');
  return column === undefined ? undefined : open.loaded.module.columns.get(table!)?.get(column);
}

function usedBy(open: OpenSheet, item: Item | undefined): readonly string[] {
  const readers = item === undefined ? [] : [...(open.readers.get(item) ?? [])];
  return readers.sort((a, b) => a.cell - b.cell || a.statement.at.start - b.statement.at.start).map((r) => r.label);
}

/** Shares of u_c², largest first. */
function budgetOf(item: Item | undefined): readonly BudgetLine[] {
  const value = item?.slot.value;
  if (item === undefined || !(value instanceof Dual)) return [];
  const parts: readonly Contribution[] = value.kink
    ? contributionsOf(item, value, (run) => evaluateRaw(item, run) as Uncertain).parts
    : contributions(value);
  const lines = parts.map(({ input, slope }) => ({ input: input.name, contribution: Math.abs(slope * input.u) }));
  const variance = lines.reduce((sum, l) => sum + l.contribution * l.contribution, 0);
  if (variance === 0) return [];
  return lines.map((l) => ({ ...l, share: (l.contribution * l.contribution) / variance })).sort((a, b) => b.share - a.share);
}

function locatedProblems(open: OpenSheet, sheet: Sheet): readonly LocatedProblem[] {
  const { tableProblems, uses } = open.loaded;
  const by = movement(open);
  const codes = calcCells(sheet).map((cell) => cell.code.start);
  const inCells = open.cells.flatMap((_, number) =>
    cellResult(open, number).problems.map((problem) => ({ problem, at: moved(problem.at, codes[number] ?? 0), path: null })),
  );
  const inFile = problemsOfFile(open).map((old) => {
    const problem = movedProblem(old, by);
    return { problem, at: problem.at, path: null };
  });
  const inTables = tableProblems.flatMap(({ problem, path }) => (path === null ? [] : [{ problem, at: problem.at, path }]));
  const own = [...inCells, ...inFile].sort((a, b) => a.at.start - b.at.start);
  return [...own, ...inTables, ...uses.flatMap(usedErrors)];
}

/** The problems of the sheet's file outside its blocks: of its form, its front matter, its tables and the links in its prose. */
export function problemsOfFile(open: OpenSheet): readonly Problem[] {
  const { sheet, tableProblems } = open.loaded;
  const inProse = proseValueProblems(sheet.values, (value) => isKnown(open, value));
  return [...sheet.problems, ...inProse, ...tableProblems.flatMap(({ problem, path }) => (path === null ? [problem] : []))];
}

/** Whether a link in prose names an entry, or a column of the row that an entry is; of one in error any column may be. */
function isKnown(open: OpenSheet, { name, column }: ProseValue): boolean {
  const defined = open.loaded.module.names.get(name);
  if (defined?.kind !== 'item' || defined.item.statement.kind !== 'entry') return false;
  const type = defined.item.checked?.signature.type;
  return column === null || type === undefined || type.is === 'unknown' || (type.is === 'row' && type.table.columns.has(column));
}
