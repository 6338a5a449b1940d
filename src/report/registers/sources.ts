// Register of the sources quoted, with what each of them is quoted for; and of the tables and used sheets.
import type { RowView } from '../../view/model.ts';
import { type Register, rowsOf, table } from './register.ts';

export const sources: Register = {
  id: 'sources',
  title: 'Sources quoted',
  make: ({ view, sheet }) => {
    const quoted = new Map<string, { kind: string; text: string; by: string[] }>();
    const quote = (source: { kind: string; text: string } | null, by: string) => {
      if (source === null) return;
      const key = `${source.kind}\n${source.text}`;
      const known = quoted.get(key) ?? { kind: source.kind, text: source.text, by: [] };
      known.by.push(by);
      quoted.set(key, known);
    };
    for (const { row } of rowsOf(view)) quote(row.source, nameOf(row));
    for (const one of sheet.tables) quote(one.source, `table ${one.name}`);
    const lines = [...quoted.values()].map((q) => [q.text, q.kind, q.by.join(', ')]);
    return lines.length === 0 ? null : table(['Source', 'Kind', 'Quoted for'], lines);
  },
};

export const usedSheets: Register = {
  id: 'used-sheets',
  title: 'Sheets used',
  make: ({ view }) => {
    const lines = rowsOf(view).flatMap(({ row }) =>
      row.kind === 'use' ? [[row.path, row.names === null ? 'everything in it' : row.names.join(', ')]] : [],
    );
    return lines.length === 0 ? null : table(['Sheet', 'Takes'], lines);
  },
};

export const actions: Register = {
  id: 'actions',
  title: 'Actions',
  make: ({ view }) => {
    const lines = rowsOf(view).flatMap(({ row }) =>
      row.kind === 'action' ? [[row.text, row.by ?? 'not given', row.due ?? 'not given']] : [],
    );
    return lines.length === 0 ? null : table(['Action', 'By', 'Due'], lines);
  },
};

function nameOf(row: RowView): string {
  switch (row.kind) {
    case 'requirement':
      return `${row.force} ${row.condition.written}`;
    case 'column':
      return `${row.table}.${row.column}`;
    case 'entry':
    case 'function':
    case 'instrument':
      return row.name;
    default:
      return `line ${row.line}`;
  }
}
