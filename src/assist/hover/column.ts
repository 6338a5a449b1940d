// A column: its head, its table, how it is computed, and the value in the row that was chosen.
import type * as ast from '../../language/ast.ts';
import { print, printTyped } from '../../language/print.ts';
import type { TableModel } from '../../language/program.ts';
import { resultOf } from '../../run/evaluate.ts';
import type { OpenSheet } from '../../run/open-sheet.ts';
import { answerText } from '../answer-text.ts';
import { columnHead } from '../column-head.ts';
import { resolve } from '../referent.ts';
import { walkScoped } from '../scoped-walk.ts';
import { type PlacedOccurrence, usersOf } from '../sheet-occurrences.ts';
import { code, described, fact, type HoverPart, listed, shortened, sourced, text } from './part.ts';

interface ColumnReferent {
  readonly name: string;
  readonly table: TableModel;
}

export function columnParts(open: OpenSheet, { name, table }: ColumnReferent, occurrence: PlacedOccurrence): readonly HoverPart[] {
  const column = table.columns.get(name);
  if (!column) return [];
  const statement = column.item?.statement.kind === 'column' ? column.item.statement : null;
  const chosen = rowNamed(open, occurrence);
  const result = resultOf(open);
  const value = chosen === null ? null : result.row(chosen).find((cell) => cell.column === name)?.value;
  const computed = result.cells.flatMap((cell) => cell.statements).find((s) => s.kind === 'column' && s.statement === statement);
  const values = computed ? answerText(computed) : column.texts && listed(column.texts.filter((t) => t !== ''));
  return [
    code(
      statement
        ? shortened(`${table.name}.${printTyped(name, statement.type)} = ${print(statement.value)}`)
        : `${table.name}.${columnHead(column)}`,
    ),
    ...(value ? [text(`= ${value.text}`)] : []),
    text(`a column of \`${table.name}\`${statement ? ', computed' : ''}`),
    ...(statement ? [...described(statement.clauses), ...sourced(statement.clauses)] : []),
    ...fact('values', values),
    ...fact('used by', listed(usersOf(open, { kind: 'column', name, table }))),
  ];
}

/** The entry whose row is read in `K.I_AC3`; null where the column is read otherwise. */
function rowNamed(open: OpenSheet, { text: of, at }: PlacedOccurrence): string | null {
  if (of.kind !== 'block') return null;
  const n = { open, module: open.loaded.module };
  const item = open.cells[of.number]?.items.find(({ statement }) => statement.at.start <= at.start && at.end <= statement.at.end);
  let found: string | null = null;
  const expression = (node: ast.Expression, scope: Parameters<typeof resolve>[1]) => {
    if (node.kind !== 'member' || node.column.at.start !== at.start || node.of.kind !== 'name') return;
    const row = resolve(n, scope, node.of.name);
    if (row?.kind === 'entry') found = row.name;
  };
  if (item) walkScoped(n, item, { expression });
  return found;
}
