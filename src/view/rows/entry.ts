// The row of an entry: an input, a computed value, a choice or a root.

import type { Expression, TakenBy } from '../../language/ast.ts';
import type { BudgetLine, ChoiceReport, EntryResult } from '../../run/result.ts';
import { dateText } from '../../text/date.ts';
import { type FormulaContext, formulaOf } from '../math/formula.ts';
import { shownText, widthText } from '../math/quantity.ts';
import { symbol } from '../math/symbol.ts';
import type { BudgetView, ChoiceView, EntryRow, FormulaView } from '../model.ts';
import { baseOf, labelOf, linkOf, type RowContext } from './context.ts';
import { valueView } from './value.ts';

export function entryRow(of: EntryResult, context: RowContext): EntryRow {
  return {
    ...baseOf(of, of.name, context),
    kind: 'entry',
    role: of.role,
    name: of.name,
    symbol: symbol(of.name),
    value: of.value && valueView(of.value),
    formula: formula(of, context.formula),
    reading: readingText(of.statement.reading),
    usedBy: context.result.usedBy(of.name).map((name) => linkOf(name, context)),
    budget: budget(of, context),
    choice: of.choice && choice(of, of.choice, context),
  };
}

// A plain literal says no more than its value; one with `±`, or readings, is shown as it was given.
function formula(of: EntryResult, context: FormulaContext): FormulaView | null {
  const { value, clauses } = of.statement;
  if (of.statement.broken || (of.role === 'input' && !isTelling(value))) return null;
  return formulaOf(value, clauses.locals, context);
}

function isTelling(e: Expression): boolean {
  if (e.kind === 'quantity')
    return e.bounds !== null && (e.bounds.kind === 'within' || e.bounds.coverage !== null || isRelative(e.bounds.parts));
  return e.kind === 'readings' || (e.kind === 'list' && e.items.some(isTelling));
}

function isRelative(parts: readonly { readonly unit: { readonly text: string } | null }[]): boolean {
  return parts.length > 1 || parts.some((p) => p.unit?.text === '%' || p.unit?.text === 'ppm');
}

/** `read with DMM_7 on 2026-10-02`. */
export function readingText(by: TakenBy | null): string | null {
  if (by === null) return null;
  return `read with ${by.instrument.name}${by.on === null ? '' : ` on ${dateText(by.on.days)}`}`;
}

// Shares that are nothing but rounding.
const NEGLIGIBLE = 1e-9;

function budget(of: EntryResult, context: RowContext): BudgetView[] {
  if (of.value?.kind !== 'quantity' || of.value.uncertainty === null || of.role === 'input') return [];
  const { unit } = of.value.uncertainty;
  const lines = context.result.budget(of.name).filter((line) => line.share > NEGLIGIBLE);
  return lines.map((line: BudgetLine) => ({
    input: labelOf(line.input, context),
    contribution: widthText(line.contribution, unit),
    share: line.share >= 0.005 ? `${Math.round(line.share * 100)}\u00A0%` : '<\u00A01\u00A0%',
    part: line.share,
  }));
}

function choice(entry: EntryResult, of: ChoiceReport, context: RowContext): ChoiceView {
  const cells = context.result.row(entry.name);
  const next =
    of.undecided &&
    (of.undecided.nextText === null ? 'no other row holds with it' : `${of.undecided.nextText} is the next row that holds with it`);
  return {
    cells: cells.flatMap((cell) => (cell.value ? [{ symbol: symbol(cell.column), value: shownText(cell.value) }] : [])),
    table: of.table,
    rows: of.rows,
    ruledOut: of.ruledOut,
    ties: of.ties,
    undecided: next && `undecided within the uncertainty; ${next}`,
  };
}
