// A calc block in its regular form: spacing inside statements, clauses and comments in columns. Its meaning stays the same.
import type { Statement } from './ast.ts';
import { columnGaps } from './format/columns.ts';
import { formatLines } from './format/lines.ts';
import { type Parsed, parse } from './parser.ts';

/**
 * Formats the text of a calc block: a space between number and unit, around operators and `=`, behind commas; clauses of consecutive
 * lines in one column, and comments likewise. Indentation, line breaks and blank lines stay, and so do statements with errors.
 * Idempotent.
 */
export function format(text: string): string {
  const parsed = parse(text);
  const lines = formatLines(text, parsed, soundStatements(parsed));
  const clauseGaps = columnGaps(lines.map((line) => (line.clauses === '' ? null : line.head)));
  const code = lines.map((line, i) => line.head + clauseGaps[i]! + line.clauses);
  const commentGaps = columnGaps(lines.map((line, i) => (line.comment === '' ? null : code[i]!)));
  return lines.map((line, i) => code[i]! + commentGaps[i]! + line.comment + line.ending).join('');
}

/** Statements without an error of form or layout: the others are left as they are. */
function soundStatements({ statements, problems }: Parsed): Statement[] {
  const errors = problems.filter((problem) => problem.severity === 'error');
  let next = 0;
  return statements.filter((statement) => {
    while (next < errors.length && errors[next]!.at.end < statement.at.start) next++;
    return !statement.broken && !(next < errors.length && errors[next]!.at.start <= statement.at.end);
  });
}
