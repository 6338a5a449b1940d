// Rows stream through: at no time is more than a piece of them held, whatever comes before and behind.
import assert from 'node:assert/strict';
import { calculatedRows } from '../../src/cli/batch-rows.ts';
import { csvRows, LONGEST_ROW } from '../../src/node/csv-rows.ts';
import { openBatch } from '../../src/run/batch.ts';
import { NO_FILES } from '../../src/run/files.ts';
import { openSheet } from '../../src/run/open-sheet.ts';

const ROWS = 30_000;
const PIECE_ROWS = 100;
const HEADS = ['tag', 'P_n / kW'];
const SHEET = '```ampwright\nP_n = 18.5 kW\nI_n: A = P_n / (sqrt(3) * 400 V * 0.8)\nshall I_n <= 40 A\n```\n';

function batch() {
  const heads = HEADS.map((text) => ({ text, at: { start: 0, end: text.length } }));
  return openBatch(openSheet(SHEET, NO_FILES), heads).batch!;
}

describe('rows of a batch', () => {
  it('are asked for only when those before them have been taken', async () => {
    let given = 0;
    async function* source(): AsyncGenerator<Uint8Array> {
      const encoder = new TextEncoder();
      yield encoder.encode(`${HEADS.join(',')}\n`);
      while (given < ROWS) {
        const lines = Array.from({ length: PIECE_ROWS }, (_, i) => `M-${given + i},${1 + ((given + i) % 20)}\n`);
        given += PIECE_ROWS;
        yield encoder.encode(lines.join(''));
      }
    }
    const rows = await csvRows(source());
    const count = { rows: 0, errors: 0, fail: 0, undecided: 0 };
    let written = 0;
    let held = 0;
    for await (const piece of calculatedRows(rows, batch(), count, () => {})) {
      held = Math.max(held, given - written);
      written += piece.split('\n').length - 1;
    }
    assert.equal(written, ROWS + 1);
    assert.equal(count.rows, ROWS);
    assert.ok(held < ROWS / 4, `${held} of ${ROWS} rows were held at once`);
  });

  it('are held as long as the longest row may be, where a quotation mark is never closed', async () => {
    let given = 0;
    async function* source(): AsyncGenerator<Uint8Array> {
      yield new TextEncoder().encode('tag,P_n / kW\n"M');
      for (;;) {
        given += 1 << 16;
        yield new Uint8Array(1 << 16).fill(65);
      }
    }
    await assert.rejects(async () => {
      for await (const _ of (await csvRows(source())).groups);
    }, /row 1 has more than 1 million characters; most likely a quotation mark in it is never closed/);
    assert.ok(given < 2 * LONGEST_ROW, `${given} bytes were read`);
  });
});
