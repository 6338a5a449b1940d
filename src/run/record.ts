// What a sheet records: the rows of its results blocks and the texts of values in prose (F1, F4, F8).

import { print, printRange } from '../language/print.ts';
import type { ProseValue } from '../sheet/prose-values.ts';
import type { ResultRow } from '../sheet/results-block.ts';
import { type Recorded, writeSheet } from '../sheet/write-sheet.ts';
import { dateText } from '../text/date.ts';
import { computedColumns } from './computed-columns.ts';
import type { SheetEvaluation } from './evaluate.ts';
import { marginWords, shortest } from './margin-words.ts';
import type { CellResult, ColumnResult, EntryResult, RequirementResult, Shown, StatementResult, TabulationResult } from './result.ts';

/** The file's text with its results and prose values as the evaluation has them. */
export function recordSheet(evaluation: SheetEvaluation): string {
  return writeSheet(evaluation.sheet, recorded(evaluation));
}

/** What is to be recorded in a sheet's file. */
export function recorded(evaluation: SheetEvaluation): Required<Recorded> {
  return { results: recordedResults(evaluation), valueText: (value) => proseText(value, evaluation) };
}

/** Rows by number of the calc cell; a cell with nothing to show has none. */
export function recordedResults({ result }: Pick<SheetEvaluation, 'result'>): ReadonlyMap<number, readonly ResultRow[]> {
  return new Map(result.cells.map((cell) => [cell.cell, resultRows(cell)]));
}

/** The rows that a calc cell records. */
export function resultRows(cell: CellResult): readonly ResultRow[] {
  const first = new Set<string>();
  return cell.statements.flatMap((s) => {
    if (s.kind !== 'column' || s.missing !== null) return rowsOf(s, cell);
    const isFirst = !first.has(s.table);
    first.add(s.table);
    return [...(isFirst ? tableRows(s, cell) : []), ...columnRows(s)];
  });
}

/** Rows of an extended table that are recorded. */
const ROWS_RECORDED = 100;

/** The computed columns of a table, a line a row of the table; `column` is the first of them. */
function tableRows({ table, labels }: ColumnResult, cell: CellResult): readonly ResultRow[] {
  const columns = computedColumns(cell, table).filter((column) => column.missing === null);
  const rows = labels.slice(0, ROWS_RECORDED).map((label, row) => ({
    result: `${table}: ${label}`,
    value: columns.map((c) => `${c.column} = ${c.values[row]?.text ?? '–'}`).join(', '),
    note: '',
  }));
  const more = labels.length > ROWS_RECORDED ? [{ result: `${table}: … (${labels.length} rows)`, value: '', note: '' }] : [];
  return [...rows, ...more];
}

/** What is to be said of one computed column. */
function columnRows(column: ColumnResult): readonly ResultRow[] {
  return [...notes(column), ...errorsOf(column)].map((note) => ({ result: `${column.table}.${column.column}`, value: '', note }));
}

function rowsOf(statement: StatementResult, cell: CellResult): readonly ResultRow[] {
  switch (statement.kind) {
    case 'entry':
      return entryRow(statement);
    case 'column':
      return [{ result: `${statement.table}.${statement.column}`, value: '', note: missingText(statement) }];
    case 'requirement':
      return [requirementRow(statement), ...eachRows(statement)];
    case 'tabulation':
      return tabulationRows(statement);
    case 'curve':
    case 'function':
    case 'instrument':
    case 'action':
    case 'use':
    case 'unreadable': {
      const errors = errorsOf(statement);
      return errors.length === 0 ? [] : [{ result: sourceOf(statement, cell), value: '', note: join(errors) }];
    }
    default:
      return statement satisfies never;
  }
}

/** Inputs are in the text above already: only those in error are recorded. */
function entryRow(entry: EntryResult): readonly ResultRow[] {
  if (entry.missing !== null) return [{ result: entry.name, value: '', note: missingText(entry) }];
  if (entry.value === null || (entry.role === 'input' && !isUncertain(entry.value))) return [];
  return [
    { result: entry.name, value: entry.value.text, note: join([...choiceNotes(entry), ...shiftNotes(entry.value), ...notes(entry)]) },
  ];
}

function isUncertain(value: Shown): boolean {
  return value.kind === 'list' ? value.items.some(isUncertain) : value.kind === 'quantity' && value.uncertainty !== null;
}

function shiftNotes(value: Shown): readonly string[] {
  return value.kind === 'quantity' && value.uncertainty?.shifted ? ['evaluated by shifting'] : [];
}

function choiceNotes(entry: EntryResult): readonly string[] {
  const { choice } = entry;
  if (choice === null) return [];
  const ruledOut = choice.ruledOut.filter((part) => part.count > 0).map((part) => `${part.count} by ${part.condition}`);
  return [
    `row ${choice.row + 1} of ${choice.rows}`,
    ...(ruledOut.length === 0 ? [] : [`ruled out: ${ruledOut.join(', ')}`]),
    ...(choice.ties > 1 ? [`${choice.ties} rows are equal, the first is taken`] : []),
  ];
}

const RELATION_MARKS: Readonly<Record<string, string>> = { '<=': '≤', '>=': '≥', '!=': '≠', '==': '=', is: '=', 'is not': '≠' };

function requirementRow(r: RequirementResult): ResultRow {
  const result = `${r.force} ${r.condition}${scopeText(r.statement)}`;
  if (r.status === 'not calculated') return { result, value: '', note: missingText(r) };
  const worst = r.rows[0] === undefined ? [] : [`worst: ${r.rows[0].label}`];
  const at = r.worstAt.map((w) => `${w.name} = ${w.value.text}`);
  const { concession } = r.statement;
  const accepted = concession === null ? [] : [`accepted by ${concession.by.value} until ${dateText(concession.until.days)}`];
  return {
    result,
    value: sidesText(r.sides),
    note: join([
      verdict(r.status, r.sides).join(', '),
      ...worst,
      ...(at.length > 0 ? [`at ${at.join(', ')}`] : []),
      ...accepted,
      ...notes(r),
    ]),
  };
}

/** ` for each motors where I_n > 3 A throughout U_0 from 104.5 V to 115.5 V`. */
function scopeText({ forEach, throughout }: RequirementResult['statement']): string {
  const where = forEach?.where == null ? '' : ` where ${print(forEach.where)}`;
  const each = forEach === null ? '' : ` for each ${forEach.table.name}${where}`;
  return each + (throughout.length === 0 ? '' : ` throughout ${throughout.map(printRange).join(', ')}`);
}

function eachRows(r: RequirementResult): readonly ResultRow[] {
  return r.rows
    .filter((row) => row.status !== 'holds')
    .slice(1)
    .map((row) => ({ result: `  ${row.label}`, value: sidesText(row.sides), note: verdict(row.status, row.sides).join(', ') }));
}

/** `34.40 A ≤ 40 A`. */
export function sidesText(sides: RequirementResult['sides']): string {
  if (sides === null) return '';
  return `${sides.left.short} ${RELATION_MARKS[sides.relation] ?? sides.relation} ${sides.right.short}`;
}

/** `holds`, `14 % in hand`, `U 0.69 A`. */
export function verdict(status: string, sides: RequirementResult['sides']): readonly string[] {
  if (sides === null) return [status];
  const parts = [status, marginWords(sides, shortest), sides.uncertainty && `U ${sides.uncertainty}`];
  return parts.filter((part) => part !== null);
}

function tabulationRows(t: TabulationResult): readonly ResultRow[] {
  if (t.missing !== null) return [{ result: 'tabulate', value: '', note: missingText(t) }];
  return t.rows.map((row) => ({
    result: `${t.heads[0]!.title} = ${row[0]?.text ?? ''}`,
    value: row
      .slice(1)
      .map((cell) => cell?.text ?? '–')
      .join(', '),
    note: '',
  }));
}

export function missingText(s: StatementResult & { readonly missing: EntryResult['missing'] }): string {
  if (s.missing?.kind === 'not calculated') return `not calculated: needs ${s.missing.because.join(', ')}`;
  const errors = errorsOf(s);
  return errors.length === 0 ? 'not calculated' : join(errors);
}

function errorsOf(s: StatementResult): readonly string[] {
  return s.problems.filter((p) => p.severity === 'error').map((p) => `error: ${p.message}`);
}

/** Notes of the value; warnings about the text belong to the editor and `verify`. */
function notes(s: StatementResult): readonly string[] {
  return s.problems.filter((p) => p.severity === 'note' && p.code !== 'hides-library').map((p) => p.message);
}

function sourceOf(s: StatementResult, cell: CellResult): string {
  return cell.code
    .slice(s.statement.at.start, s.statement.at.end)
    .split(/\r\n|\r|\n/, 1)[0]!
    .trim();
}

const join = (parts: readonly string[]) => parts.join('; ');

/** The text of a value in prose; null where the link stands for none. */
function proseText(value: ProseValue, { result }: SheetEvaluation): string | null {
  if (value.heading) return null;
  const entry = result.entries.get(value.name)?.value ?? null;
  const shown = value.column === null ? entry : (result.row(value.name).find((cell) => cell.column === value.column)?.value ?? null);
  return shown && (value.withUncertainty ? shown.text : shown.short);
}

/** A list of values in one line, shortened as F6 has it. */
export function listText(values: readonly (Shown | null)[]): string {
  const more = values.length > 8 ? `, … (${values.length} values)` : '';
  return `[${values
    .slice(0, 8)
    .map((v) => v?.text ?? '–')
    .join(', ')}${more}]`;
}
