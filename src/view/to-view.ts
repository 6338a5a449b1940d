// From the answer of a run to the view model: one row a statement.
import type { FunctionDefinition } from '../language/ast.ts';
import type { CellResult, SheetResult, StatementResult } from '../run/result.ts';
import type { ResultRow } from '../sheet/results-block.ts';
import { lineMap } from '../text/lines.ts';
import type { FormulaContext } from './math/formula.ts';
import type { Scope } from './math/scope.ts';
import type { Functions } from './math/unfold.ts';
import type { CellView, RowView, SheetView } from './model.ts';
import { columnRow } from './rows/column.ts';
import { problemOf, type RowContext } from './rows/context.ts';
import { curveRow, tabulationRow } from './rows/curve.ts';
import { entryRow } from './rows/entry.ts';
import { functionRow } from './rows/function.ts';
import { recordedOf } from './rows/recorded.ts';
import { actionRow, instrumentRow, unreadableRow, useRow } from './rows/register.ts';
import { requirementRow } from './rows/requirement.ts';

export interface ViewOptions {
  /** Numbers of the cells to make, in any order; all where it is not given. */
  readonly cells?: ReadonlySet<number>;
  /**
   * Rows of the file's results blocks by number of the calc cell. Where they differ from this run, a row tells what it `was`. Left out,
   * nothing is compared.
   */
  readonly recorded?: ReadonlyMap<number, readonly ResultRow[]>;
  /** False marks everything as made from an older text. */
  readonly current?: boolean;
}

/** The view of a sheet's cells, in the order of the sheet. */
export function toView(result: SheetResult, options: ViewOptions = {}): SheetView {
  const formula = { functions: functionsOf(result), values: valuesOf(result) };
  const names = namesOf(result);
  const cells = result.cells.filter((cell) => options.cells?.has(cell.cell) ?? true);
  return { cells: cells.map((cell) => cellView(cell, result, formula, names, options)) };
}

function cellView(
  cell: CellResult,
  result: SheetResult,
  formula: FormulaContext,
  names: ReadonlySet<string>,
  options: ViewOptions,
): CellView {
  const recorded = recordedOf(cell, options.recorded?.get(cell.cell) ?? []);
  const context: RowContext = { result, cell, lines: lineMap(cell.code), formula, names, recorded };
  const told = new Set(cell.statements.flatMap((s) => s.problems));
  return {
    cell: cell.cell,
    rows: distinct(cell.statements.map((s) => rowOf(s, context))),
    problems: cell.problems.filter((p) => !told.has(p)).map((p) => problemOf(p, context)),
    current: options.current ?? true,
    gone: recorded.gone,
  };
}

function rowOf(of: StatementResult, context: RowContext): RowView {
  switch (of.kind) {
    case 'entry':
      return entryRow(of, context);
    case 'column':
      return columnRow(of, context);
    case 'function':
      return functionRow(of, context);
    case 'requirement':
      return requirementRow(of, context);
    case 'curve':
      return curveRow(of, context);
    case 'tabulation':
      return tabulationRow(of, context);
    case 'instrument':
      return instrumentRow(of, context);
    case 'action':
      return actionRow(of, context);
    case 'use':
      return useRow(of, context);
    case 'unreadable':
      return unreadableRow(of, context);
    default:
      return of satisfies never;
  }
}

// Two statements that read alike get keys of their own.
function distinct(rows: readonly RowView[]): RowView[] {
  const seen = new Map<string, number>();
  return rows.map((row) => {
    const count = (seen.get(row.key) ?? 0) + 1;
    seen.set(row.key, count);
    return count === 1 ? row : { ...row, key: `${row.key} ${count}` };
  });
}

/** The functions of a run that a call can be looked into. */
export function functionsOf(result: SheetResult): Functions {
  const own = new Set<FunctionDefinition>();
  for (const cell of result.cells) for (const of of cell.statements) if (of.kind === 'function') own.add(of.statement);
  return { named: result.functionNamed, own };
}

function namesOf(result: SheetResult): ReadonlySet<string> {
  const statements = result.cells.flatMap((cell) => cell.statements);
  return new Set(statements.flatMap((s) => ('name' in s ? [s.name] : s.kind === 'column' ? [`${s.table}.${s.column}`] : [])));
}

/** Names stand for the values that a run gave them, columns of a chosen row for its cells. */
function valuesOf(result: SheetResult): Scope {
  return (name, column) => {
    const shown = column === null ? result.entries.get(name)?.value : result.row(name).find((cell) => cell.column === column)?.value;
    return shown ? { kind: 'value', shown } : null;
  };
}
