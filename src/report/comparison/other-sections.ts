// Functions, tables and the other statements in a comparison.
import type { Comparison, DefinitionChange, TableChange, Texts } from '../../review/comparison.ts';
import { changedText, code, differenceOf, joined, nameCell, plain, section } from './cells.ts';
import type { Cell, Row, Section } from './sections.ts';

export function functions({ functions: all }: Comparison): Section | null {
  const row = ({ name, oldName, written, source, description, line }: DefinitionChange): Row => ({
    cells: [
      nameCell(name, oldName),
      code(written?.old ?? null),
      code(written?.new ?? null),
      joined([changedText('source', source), changedText('description', description)], '; '),
    ],
    line,
  });
  return section('Functions', ['function', 'before', 'after', 'what else changed'], all.map(row), true);
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
      ? row(plain(`row ${its.row}`), [], cells, plain('new'))
      : row(plain(`row ${its.row}`), cells, [], plain('removed'));
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
  const rows = all.map(({ kind, label, written, results, line }): Row => {
    if (results !== null) return { cells: [plain(kind), code(label), [], plain(results)], line };
    return {
      cells: [
        plain(kind),
        code(written!.old),
        code(written!.new),
        plain(written!.old === null ? 'new' : written!.new === null ? 'removed' : ''),
      ],
      line,
    };
  });
  return section('Other lines', ['what', 'before', 'after', 'change'], rows, true);
}
