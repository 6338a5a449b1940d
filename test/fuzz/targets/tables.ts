// Pipe tables under a caption: columns of equal length, each cell with its value or a problem.
import assert from 'node:assert/strict';
import { readSheet } from '../../../src/sheet/read-sheet.ts';
import type { Table } from '../../../src/sheet/table.ts';
import { maker, wordsOf } from '../grammar.ts';
import { TABLE } from '../grammars/sheet.ts';
import { checkPlace, checkProblems, type Target } from '../target.ts';

export const tables: Target = {
  name: 'tables',
  make: maker(TABLE, 'table'),
  words: wordsOf(TABLE),
  check(table) {
    const text = `Table motors — Motors, invented  from plate "x"\n\n${table}\n`;
    const sheet = readSheet(text);
    checkProblems(sheet.problems, text);
    for (const its of sheet.tables) checkTable(its, text);
  },
};

/** What holds of any table; `text` is what the places of its cells are in. */
export function checkTable({ columns, rowCount }: Table, text: string): void {
  assert.equal(new Set(columns.map((column) => column.name)).size, columns.length, 'two columns of one name');
  for (const { cells, type, at } of columns) {
    checkPlace(at, text, 'head');
    assert.equal(cells.length, rowCount);
    for (const cell of cells) {
      checkPlace(cell.at, text, 'cell');
      if (cell.value === null || cell.value === undefined) continue;
      assert.equal(typeof cell.value, type.kind === 'text' ? 'string' : 'number');
      if (type.kind !== 'text') assert.ok(Number.isFinite(cell.value), `${cell.text} is ${cell.value}`);
      if (cell.bounds) assert.ok(cell.bounds.halfWidth >= 0 && Number.isFinite(cell.bounds.halfWidth), cell.text);
    }
  }
}
