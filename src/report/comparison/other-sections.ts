// Functions, tables and the other statements in a comparison.
import type { Comparison, DefinitionChange, TableChange, Texts } from '../../review/comparison.ts';
import { changedText, code, differenceOf, joined, nameCell, plain, section } from './cells.ts';
import type { Cell, Row, Section } from './sections.ts';
import { rewritten } from './wording.ts';

export function functions({ functions: all }: Comparison): Section | null {
  const rows = all.map(({ change, name, oldName, written, source, description, line }: DefinitionChange): Row => {
    const clauses = change === 'changed' ? [changedText('source', source), changedText('description', description)] : [];
    const note = change === 'added' ? 'new' : change === 'removed' ? 'removed' : '';
    return { cells: [nameCell(name, oldName), joined([plain(note), written ? rewritten(written) : [], ...clauses], '; ')], line };
  });
  return section('Functions', ['function', 'what changed'], rows, true);
}

export function tables({ tables: all }: Comparison): Section | null {
  return section('Tables', ['table', 'before', 'after', 'change'], all.flatMap(tableRows), true);
}

/** The table as a whole, its columns and rows, then cell by cell. */
function tableRows(table: TableChange): readonly Row[] {
  const { change, name, oldName, line } = table;
  const row = (what: Cell, before: Cell, after: Cell, note: Cell): Row => ({
    cells: [joined([nameCell(name, oldName), what], ' '), before, after, note],
    line,
  });
  if (change !== 'changed')
    return [
      row(
        [],
        plain(change === 'removed' ? table.caption!.old : null),
        plain(change === 'added' ? table.caption!.new : null),
        plain(change === 'added' ? 'new' : 'removed'),
      ),
    ];
  const parts: readonly (readonly [string, Texts | null])[] = [
    ['caption', table.caption],
    ['source', table.source],
    ['file', table.path],
  ];
  const heads = parts.flatMap(([what, texts]) => (texts === null ? [] : [row(plain(what), plain(texts.old), plain(texts.new), [])]));
  const columns = table.columns.map(({ name: column, head }) =>
    row(
      joined([plain('column'), code(column)], ' '),
      code(head.old),
      code(head.new),
      plain(head.old === null ? 'new' : head.new === null ? 'removed' : ''),
    ),
  );
  const rows = table.rows.map((its) => {
    const cells = plain(its.text);
    return its.change === 'added'
      ? row(plain(rowName(its.row)), [], cells, plain('new'))
      : row(plain(rowName(its.row)), cells, [], plain('removed'));
  });
  const cells = table.cells.map(({ row: its, column, value }) =>
    row(joined([plain(its), code(column)], ', '), plain(value.old ?? '–'), plain(value.new ?? '–'), plain(differenceOf(value))),
  );
  const more = table.cellCount - table.cells.length;
  return [
    ...(oldName === null ? [] : [row([], [], [], plain('another name'))]),
    ...heads,
    ...columns,
    ...rows,
    ...(table.reordered ? [row([], [], [], plain('rows in another order'))] : []),
    ...cells,
    ...(more > 0 ? [row([], [], [], plain(`${more} more cells changed`))] : []),
  ];
}

export function statements({ statements: all }: Comparison): Section | null {
  const rows = all.map(({ change, kind, label, written, results, line }): Row => {
    const note = change === 'added' ? 'new' : change === 'removed' ? 'removed' : '';
    const what = written === null ? [code(label), plain(results)] : [plain(note), rewritten(written)];
    return { cells: [plain(kind), joined(what, '; ')], line };
  });
  return section('Other lines', ['what', 'what changed'], rows, true);
}

function rowName(label: string): string {
  return /^row \d+$/.test(label) ? label : `row ${label}`;
}
