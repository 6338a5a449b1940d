// The row of a computed column.
import type { ColumnResult } from '../../run/result.ts';
import { formulaOf } from '../math/formula.ts';
import type { ColumnRow } from '../model.ts';
import { baseOf, columnSymbol, type RowContext } from './context.ts';
import { readingText } from './entry.ts';
import { extendedOf } from './extended.ts';
import { valueView } from './value.ts';

export function columnRow(of: ColumnResult, context: RowContext): ColumnRow {
  const { value, clauses } = of.statement;
  return {
    ...baseOf(of, `${of.table}.${of.column}`, context),
    kind: 'column',
    table: of.table,
    column: of.column,
    symbol: columnSymbol(of.table, of.column),
    formula: formulaOf(value, clauses.locals, context.formula),
    reading: readingText(of.statement.reading),
    labels: of.labels,
    values: of.values.map((v) => v && valueView(v)),
    were: context.recorded.column(of),
    extended: extendedOf(of, context),
  };
}
