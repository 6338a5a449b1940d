// A table: its caption, columns, rows and source.
import type { TableModel } from '../../language/program.ts';
import type { OpenSheet } from '../../run/open-sheet.ts';
import { columnHead } from '../column-head.ts';
import { tableRead, textOfTable } from '../referent.ts';
import { usersOf } from '../sheet-occurrences.ts';
import { code, fact, type HoverPart, listed, text } from './part.ts';

export function tableParts(open: OpenSheet, model: TableModel): readonly HoverPart[] {
  const table = tableRead(open, model);
  const place = table && textOfTable(table, model.module);
  return [
    code(`Table ${model.name}`),
    ...(table?.caption ? [text(table.caption)] : []),
    ...fact('columns', [...model.columns.values()].map(columnHead).join(', ')),
    ...fact('rows', String(model.rowCount)),
    ...fact('from', table?.source && `${table.source.kind} "${table.source.text}"`),
    ...fact('used by', listed(usersOf(open, { kind: 'table', name: model.name, table: model }))),
    ...fact('defined in', place?.kind === 'file' ? place.path : place?.kind === 'library' ? `library, ${place.name}` : null),
    ...(place?.kind === 'library' ? [{ kind: 'reference', page: place.name, of: 'table', name: model.name } as const] : []),
  ];
}
