// A row in one plain sentence: for copying, for screen readers, for places that show text alone.
import type { CellView, ProblemView, RequirementRow, RowView, SidesView, ValueView } from './model.ts';

/** The rows of a cell, a sentence a line. */
export function sentences(view: CellView): string {
  return [
    ...(view.current ? [] : ['Not current: the sheet has changed since these results were made.']),
    ...view.problems.map(problemSentence),
    ...view.rows.flatMap(rowSentences),
  ].join('\n');
}

/** One row, and its problems. */
export function rowSentences(row: RowView): readonly string[] {
  return [sentence(row), ...row.problems.map(problemSentence)];
}

/** One row without its problems. */
export function sentence(row: RowView): string {
  return `${statement(row)}${row.description ? ` (${row.description})` : ''}${sourceWords(row)}${row.was === null ? '' : `; recorded: ${row.was}`}.`.replaceAll(
    '\u00A0',
    ' ',
  );
}

function statement(row: RowView): string {
  switch (row.kind) {
    case 'entry':
      return row.value ? `${row.name} = ${valueText(row.value)}` : `${row.name}: ${missingText(row)}`;
    case 'column':
      return `${row.table}.${row.column}: ${row.missing ? missingText(row) : row.values.map((v) => (v === null ? '–' : valueText(v))).join(', ')}`;
    case 'function':
      return `function ${row.name} = ${row.formula.written}`;
    case 'requirement':
      return requirementSentence(row);
    case 'curve':
      return row.missing ? `curve ${missingText(row)}` : `curve of ${row.y.title} over ${row.x.name}`;
    case 'tabulation':
      return row.missing
        ? `tabulation ${missingText(row)}`
        : `tabulation of ${row.heads.map((h) => h.title).join(', ')}: ${row.cells.length} rows`;
    case 'instrument':
      return `instrument ${row.name}${row.limits ? ` ${row.limits}` : ''}${row.serial ? `, serial ${row.serial}` : ''}${row.due ? `, due ${row.due}` : ''}`;
    case 'action':
      return `action: ${row.text}${row.by ? `, by ${row.by}` : ''}${row.due ? `, due ${row.due}` : ''}`;
    case 'use':
      return `uses ${row.path}${row.names ? ` for ${row.names.join(', ')}` : ''}`;
    case 'unreadable':
      return `line ${row.line} could not be read`;
    default:
      return row satisfies never;
  }
}

function missingText({ missing }: RowView): string {
  return `not calculated${missing ? `, ${missing}` : ''}`;
}

/** `34.40 A ± 0.69 A (k = 2)`. */
export function valueText(value: ValueView): string {
  return [value.text, value.plusMinus, value.coverage && `(${value.coverage})`].filter((part) => part !== null).join(' ');
}

function requirementSentence(row: RequirementRow): string {
  const sides = row.sides ? `: ${sidesText(row.sides)}` : '';
  const status = row.status === 'not calculated' ? missingText(row) : row.status;
  const because = row.because ? `, because ${row.because}` : '';
  const accepted = row.concession ? `, accepted by ${row.concession.by} until ${row.concession.until}` : '';
  return `${row.force} ${row.condition.written}${sides}: ${status}${row.sides?.margin ? `, ${row.sides.margin}` : ''}${because}${accepted}`;
}

/** `34.40 A ≤ 40 A`. */
export function sidesText(sides: SidesView): string {
  return `${sides.left.text} ${sides.relation} ${sides.right.text}`;
}

function sourceWords(row: RowView): string {
  return row.source ? `, from ${row.source.kind} "${row.source.text}"` : '';
}

function problemSentence(problem: ProblemView): string {
  const mends = problem.mends.length > 0 ? ` (${problem.mends.join('; ')})` : '';
  return `${problem.severity}, line ${problem.line}: ${problem.message}${mends}.`;
}
