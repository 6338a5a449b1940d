// A sheet of five hundred cells: opened, edited at both ends and saved like a small one.
import assert from 'node:assert';
import { block, closeAll, edit, openSheet, readFile, resultSaying, sheetOf } from '../support/sheet.ts';

const CELLS = 500;

/** A row of starters on one bus: each cell adds its current to the sum of those before it. */
const starters = (): string[] =>
  Array.from({ length: CELLS - 1 }, (_, i) => `I_${i + 1} = 2 A from plate "invented"\nsum_${i + 1}: A = sum_${i} + I_${i + 1}`);

describe('a sheet of 500 cells', () => {
  afterEach(closeAll);

  it('opens with all results, follows an edit to its last cell, and is saved with them', async () => {
    const notebook = await openSheet(sheetOf('sum_0 = 0 A', ...starters()));
    await resultSaying(notebook, CELLS - 1, 'sum_499 = 998.0 A');
    assert.equal(notebook.isDirty, false);
    await edit(block(notebook, 1), 'I_1 = 2 A', 'I_1 = 1 A');
    await resultSaying(notebook, CELLS - 1, 'sum_499 = 997.0 A');
    await edit(block(notebook, CELLS - 1), 'I_499 = 2 A', 'I_499 = 1 A');
    await resultSaying(notebook, CELLS - 1, 'sum_499 = 996.0 A');
    assert.ok(await notebook.save());
    assert.equal(notebook.isDirty, false);
    const saved = await readFile(notebook.uri);
    const [first, ...others] = starters();
    const last = others.pop()!;
    const written = sheetOf('sum_0 = 0 A', first!.replace('2 A', '1 A'), ...others, last.replace('2 A', '1 A'));
    assert.ok(
      saved.replace(/\n<!-- results -->[\s\S]*?<!-- end results -->\n/g, '') === written,
      'the file has the edits, and all else as it was',
    );
    assert.match(saved, /\| sum_1 \| 1\.000 A \| \|/);
    assert.match(saved, /\| sum_499 \| 996\.0 A \| \|/);
  });
});
