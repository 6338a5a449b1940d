// The reader of sheets: cells that cover the file to the byte, and results that are written and read back.
import assert from 'node:assert/strict';
import { digest } from '../../../src/sheet/digest.ts';
import { readSheet } from '../../../src/sheet/read-sheet.ts';
import { type CalcCell, calcCells } from '../../../src/sheet/sheet.ts';
import { writeSheet } from '../../../src/sheet/write-sheet.ts';
import { maker, wordsOf } from '../grammar.ts';
import { SHEET } from '../grammars/sheet.ts';
import { checkPlace, checkProblems, type Target } from '../target.ts';

export const sheetReader: Target = {
  name: 'sheet-reader',
  make: maker(SHEET, 'sheet'),
  words: wordsOf(SHEET),
  check(text, random) {
    const sheet = readSheet(text);
    assert.equal(sheet.lead + sheet.cells.map((cell) => cell.raw + cell.after).join(''), text);
    for (const cell of sheet.cells) assert.equal(text.slice(cell.at.start, cell.at.end), cell.raw);
    for (const cell of calcCells(sheet)) assert.equal(text.slice(cell.code.start, cell.code.end), cell.text);
    for (const value of sheet.values) checkPlace(value.textAt, text, 'value');
    checkProblems(sheet.problems, text);
    assert.match(digest(text), /^sha256:[0-9a-f]{64}$/);
    assert.equal(writeSheet(sheet, {}), text);
    if (random.chance(30)) checkWriting(text);
  },
};

const ROWS = [
  { result: 'a', value: '1 V | 2', note: '' },
  { result: 'shall a <= `b`', value: '<!-- end results -->', note: '\\|*_[x](y) &lt; ~~s~~\nline' },
];

function checkWriting(text: string): void {
  const sheet = readSheet(text);
  const cells = calcCells(sheet);
  const written = writeSheet(sheet, {
    results: new Map(cells.map((cell) => [cell.number, ROWS])),
    valueText: (value) => (value.name === 'a' ? '34.40 A [`|' : null),
  });
  const again = readSheet(written);
  assert.equal(writeSheet(again, {}), written);
  if (sheet.conflicts.length > 0) assert.equal(written, text);
  else checkResults(cells, calcCells(again));
}

function checkResults(cells: readonly CalcCell[], after: readonly CalcCell[]): void {
  assert.deepEqual(
    after.map((cell) => cell.text),
    cells.map((cell) => cell.text),
  );
  for (const [i, cell] of cells.entries()) {
    if (!cell.closed) continue;
    assert.deepEqual(after[i]!.results?.rows, [ROWS[0], { ...ROWS[1], note: '\\|*_[x](y) &lt; ~~s~~ line' }]);
  }
}
