// Register of tables: what each is, where it comes from and where it is shown. What stands in a file and nowhere on the page follows in full.
import type { ColumnType, Table } from '../../sheet/table.ts';
import { writeHead } from '../../sheet/table-head.ts';
import { type Child, type ElementNode, element } from '../../view/node.ts';
import { blockLink, type Register, type RegisterInput, table } from './register.ts';

/** Rows of a table that are shown; the rest is counted. */
const ROWS_SHOWN = 500;

export const tables: Register = {
  id: 'tables',
  title: 'Tables',
  make: (input) => {
    const blocks = blocksByTable(input);
    const lines = input.tables.map((t): Child[] => [
      t.name,
      t.caption,
      `${counted(t.rowCount, 'row')}, ${counted(t.columns.length, 'column')}`,
      t.path ?? '',
      t.source ? `${t.source.kind}: ${t.source.text}` : 'without a source',
      element('span', {}, ...placesOf(t, blocks.get(t.name) ?? [])),
    ]);
    if (lines.length === 0) return null;
    return element('div', {}, table(['Table', 'Caption', 'Size', 'File', 'Source', 'Shown'], lines), ...input.tables.flatMap(fileTable));
  },
};

const counted = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;

/** Where the page has the table itself, and the blocks that show it with its computed columns. */
function placesOf(t: Table, blocks: readonly number[]): Child[] {
  const own = t.path === null ? 'in the text' : 'below';
  return [own, ...blocks.flatMap((block, i): Child[] => [i === 0 ? '; computed columns in ' : ', ', blockLink(block)])];
}

/** The numbers of the blocks that have computed columns of a table. */
function blocksByTable({ result }: RegisterInput): ReadonlyMap<string, readonly number[]> {
  const blocks = new Map<string, number[]>();
  for (const { cell, statements } of result.cells) {
    const extended = new Set(statements.flatMap((s) => (s.kind === 'column' && s.missing === null ? [s.table] : [])));
    for (const name of extended) {
      const known = blocks.get(name);
      if (known) known.push(cell + 1);
      else blocks.set(name, [cell + 1]);
    }
  }
  return blocks;
}

/** A table from a file in full, as it was read. */
function fileTable(t: Table): readonly ElementNode[] {
  if (t.path === null) return [];
  const heads = t.columns.map((c) => headOf(c.name, unitOf(c.type)));
  const rows = Array.from({ length: Math.min(t.rowCount, ROWS_SHOWN) }, (_, row): Child[] =>
    t.columns.map((c) => c.cells[row]?.text ?? ''),
  );
  const more = t.rowCount > ROWS_SHOWN ? [element('p', {}, `… and ${t.rowCount - ROWS_SHOWN} more rows.`)] : [];
  return [element('div', { class: 'aw-scroll', tabindex: '0', role: 'group', 'aria-label': 'Table' }, table(heads, rows, t.name)), ...more];
}

function headOf(name: string, unit: string | null): string {
  return unit === null ? name : writeHead(name, unit);
}

function unitOf(type: ColumnType): string | null {
  return type.kind === 'number' && type.unit.text !== '' ? type.unit.text : type.kind === 'date' ? 'date' : null;
}
