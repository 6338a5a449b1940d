// A sheet for many rows: compiled once, its inputs replaced by each row's cells, and only what depends on them evaluated.
import type { Item } from '../language/program.ts';
import { withoutBlanks } from '../sheet/pipe-row.ts';
import type { RawCell } from '../sheet/table-columns.ts';
import type { Problem } from '../text/problem.ts';
import { inputsOf, isInputItem, type RowColumns, readColumns } from './batch/columns.ts';
import { replaceInput } from './batch/inputs.ts';
import { entryColumns, type Field, type OutputColumn, requirementColumns } from './batch/outputs.ts';
import { batchProblem, rowWords } from './batch/problems.ts';
import { type RequirementStep, requirementStep, valueStep } from './batch/steps.ts';
import { evaluationOf } from './evaluate.ts';
import { evaluationOrder, type OpenSheet } from './open-sheet.ts';
import type { Status } from './result.ts';
import type { LocatedProblem } from './used-problems.ts';

export interface Batch {
  /** Heads of the columns that a row gets behind its own. */
  readonly heads: readonly string[];
  /** Names of the inputs that rows replace, and of those that stay as the sheet has them. */
  readonly replaced: readonly string[];
  readonly kept: readonly string[];
  /** Names of the columns that replace nothing. */
  readonly carried: readonly string[];
  /** Calculates one row from its fields. */
  readonly run: (fields: readonly string[]) => BatchRow;
}

export interface BatchRow {
  /** The cells behind the row's own, the last one with what is wrong; null where there is nothing. */
  readonly cells: readonly Field[];
  /** What is wrong in the row; empty where nothing is. */
  readonly errors: readonly string[];
  /** The worst of what the sheet demands with `shall`; an error says more. */
  readonly verdict: Status;
}

export interface OpenedBatch {
  /** Null where the heads or the sheet have errors. */
  readonly batch: Batch | null;
  /** Of the heads; places are in the line of the heads. */
  readonly problems: readonly Problem[];
  /** Errors of the sheet that no row can mend. */
  readonly errors: readonly LocatedProblem[];
}

/** Makes a sheet ready for rows with these heads. The sheet is taken over: afterwards it holds the values of the last row. */
export function openBatch(open: OpenSheet, heads: readonly RawCell[]): OpenedBatch {
  const inputs = inputsOf(open.loaded.module);
  const columns = readColumns(heads, open.loaded.module, inputs);
  const replaced = columns.inputs.map(({ item }) => item);
  const reach = reachOf(open, replaced);
  const errors = errorsBeyond(open, reach);
  if (errors.length > 0) return { batch: null, problems: columns.problems, errors };

  const items = open.cells.flatMap((cell) => cell.items);
  const requirements = items.filter((item) => item.statement.kind === 'requirement').map(requirementStep);
  const outputs = outputsOf(items, requirements);
  const problems = [...columns.problems, ...clashes(outputs, columns)];
  if (problems.some((p) => p.severity === 'error')) return { batch: null, problems, errors };

  const names = replaced.map((item) => item.label);
  const batch: Batch = {
    heads: [...outputs.map((o) => o.head), ERROR],
    replaced: names,
    kept: [...inputs.keys()].filter((name) => !names.includes(name)),
    carried: columns.carried,
    run: rowRunner(heads.length, columns, reach, requirements, outputs),
  };
  return { batch, problems, errors };
}

function rowRunner(
  width: number,
  columns: RowColumns,
  reach: ReadonlySet<Item>,
  requirements: readonly RequirementStep[],
  outputs: readonly OutputColumn[],
): Batch['run'] {
  const inputs = columns.inputs.map((column) => ({ ...column, replace: replaceInput(column) }));
  const values = evaluationOrder(reach, (item) => reach.has(item))
    .filter(hasValue)
    .map(valueStep);
  const steps = [...values, ...requirements.filter(({ item }) => reach.has(item)).map(({ decide }) => decide)];
  for (const { item, decide } of requirements) if (!reach.has(item)) decide([]);
  const demands = requirements.filter(({ item }) => item.statement.kind === 'requirement' && item.statement.force === 'shall');
  return (fields) => {
    const errors: string[] = [];
    if (fields.length !== width) {
      errors.push(rowWords.ragged(fields.length, width));
      return { cells: [...outputs.map(() => null), errors[0]!], errors, verdict: 'not calculated' };
    }
    for (const { index, item, replace } of inputs) {
      const because = replace(withoutBlanks(fields[index]!));
      if (because !== null) errors.push(`${item.label}: ${because}`);
    }
    for (const step of steps) step(errors);
    const cells: Field[] = outputs.map((output) => output.field());
    cells.push(errors.length === 0 ? null : errors.join('; '));
    return { cells, errors, verdict: worstOf(demands) };
  };
}

/** The column that says what is wrong in a row. */
const ERROR = 'error';

function outputsOf(items: readonly Item[], requirements: readonly RequirementStep[]): readonly OutputColumn[] {
  const entries = items.filter((item) => item.statement.kind === 'entry' && !isInputItem(item));
  return [...entries.flatMap(entryColumns), ...requirementColumns(requirements)];
}

/** Columns that are carried along under a name that the results have. */
function clashes(outputs: readonly OutputColumn[], { carriedAt }: RowColumns): readonly Problem[] {
  const names = [...outputs.map(({ head }) => head.split(' / ')[0]!), ERROR];
  return names.flatMap((name) => {
    const own = carriedAt.get(name);
    return own === undefined ? [] : [batchProblem('column-written', own, { name })];
  });
}

/** Everything that reads one of the items, directly or not. */
function reachOf(open: OpenSheet, replaced: readonly Item[]): ReadonlySet<Item> {
  const reach = new Set<Item>();
  const waiting = [...replaced];
  for (let item = waiting.pop(); item !== undefined; item = waiting.pop()) {
    for (const reader of open.readers.get(item) ?? []) {
      if (reach.has(reader)) continue;
      reach.add(reader);
      waiting.push(reader);
    }
  }
  return reach;
}

/** Errors other than of values that rows calculate anew. */
function errorsBeyond(open: OpenSheet, reach: ReadonlySet<Item>): readonly LocatedProblem[] {
  const { problems } = evaluationOf(open);
  const ofRows = new Set([...reach].flatMap((item) => item.runProblems));
  return problems.filter(({ problem }) => problem.severity === 'error' && !ofRows.has(problem));
}

function hasValue({ checked }: Item): boolean {
  return checked?.plan.kind === 'value' || checked?.plan.kind === 'column';
}

const RANK: Readonly<Record<Status, number>> = { fails: 0, 'not calculated': 1, undecided: 2, holds: 3 };

function worstOf(requirements: readonly RequirementStep[]): Status {
  let worst: Status = 'holds';
  for (const { status } of requirements) if (RANK[status()] < RANK[worst]) worst = status();
  return worst;
}
