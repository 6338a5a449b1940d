// The names of the sheet that stand in its prose: of tables, of their columns, and of values in links.
import { wordEnd } from '../language/name.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import type { ProseValue } from '../sheet/prose-values.ts';
import { span } from '../text/span.ts';
import type { Occurrence } from './occurrences.ts';
import { headName, type Referent, resolve } from './referent.ts';
import type { Names } from './scope.ts';
import { tableOf } from './table-of.ts';

/** All of them in the order of the text; places are in the file. */
export function proseOccurrences(open: OpenSheet): readonly Occurrence[] {
  const { module, sheet } = open.loaded;
  const n: Names = { open, module };
  const captions = [...sheet.tables, ...sheet.csvTables].map(({ name, nameAt }): Occurrence => {
    return { at: nameAt, role: 'definition', referent: resolve(n, null, name) };
  });
  const heads = sheet.tables.flatMap((table) => {
    const model = module.tables.get(table.name);
    if (!model) return [];
    return table.columns.map((column): Occurrence => {
      const at = headName(sheet.text, column, column.name);
      return { at, role: 'definition', referent: { kind: 'column', name: column.name, table: model } };
    });
  });
  return [...captions, ...heads, ...sheet.values.flatMap((value) => linkOccurrences(n, value))].sort((a, b) => a.at.start - b.at.start);
}

/** The name in `[34.40 A](#I_n)`, and the column in `[40 A](#K.I_AC3)`. A link to a heading is none. */
function linkOccurrences(n: Names, value: ProseValue): readonly Occurrence[] {
  const { text } = n.open.loaded.sheet;
  const start = text.indexOf('](#', value.textAt.end) + 3;
  if (value.heading || start < 3 || start >= value.at.end) return [];
  const end = wordEnd(text, start);
  const referent = resolve(n, null, value.name);
  // A percent-encoded name is left alone: what would be written in its place is not what the author wrote.
  if (end === start || text.charAt(end) === '%') return [];
  const name: Occurrence = { at: span(start, end), role: 'use', referent };
  if (value.column === null) return [name];
  return [name, { at: span(end + 1, wordEnd(text, end + 1)), role: 'use', referent: columnBehind(n, referent, value.column) }];
}

function columnBehind(n: Names, referent: Referent | null, column: string): Referent | null {
  if (referent === null) return null;
  const nowhere = { start: 0, end: 0 };
  const table = tableOf(n, null, { kind: 'name', at: nowhere, name: referent.name });
  return table?.columns.has(column) ? { kind: 'column', name: column, table } : null;
}
