// The rows of a curve and of a tabulation.
import type { CurveResult, Shown, TabulationResult } from '../../run/result.ts';
import { numberText, shownText, unitText } from '../math/quantity.ts';
import type { CurveRow, TabulationRow } from '../model.ts';
import { baseOf, type RowContext } from './context.ts';

export function curveRow(of: CurveResult, context: RowContext): CurveRow {
  return {
    ...baseOf(of, `${of.y.title} over ${of.variable}`, context),
    kind: 'curve',
    x: { name: of.variable, unit: unitText(of.x.unit), from: of.x.from, to: of.x.to, log: of.x.log },
    y: { title: of.y.title, unit: unitText(of.y.unit) },
    traces: of.traces,
    marks: of.marks,
    limits: of.limits,
  };
}

export function tabulationRow(of: TabulationResult, context: RowContext): TabulationRow {
  return {
    ...baseOf(of, of.heads.map((h) => h.title).join(' '), context),
    kind: 'tabulation',
    heads: of.heads.map((h) => ({ title: h.title, unit: unitText(h.unit) })),
    cells: of.rows.map((row) => row.map((shown) => shown && cellText(shown))),
    were: context.recorded.tabulation(of),
  };
}

// The unit stands in the head.
function cellText(shown: Shown): string {
  return shown.kind === 'quantity' ? numberText(shown.number) : shownText(shown);
}
