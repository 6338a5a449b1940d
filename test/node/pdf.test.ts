// The sheet as PDF.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { pdfOf } from '../../src/node/pdf.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';

const sample = readFileSync(new URL('../../samples/starter-sizing.ampwright.md', import.meta.url), 'utf8');

describe('the sheet as PDF', () => {
  it('is the same bytes each time', async () => {
    const make = async () => {
      const outcome = await pdfOf({ ...evaluateSheet(sample), version: '1.2.3' }, 'a4');
      assert.equal(outcome.kind, 'made');
      return outcome.kind === 'made' ? Buffer.from(outcome.bytes) : Buffer.alloc(0);
    };
    const first = await make();
    assert.equal(first.subarray(0, 5).toString(), '%PDF-');
    assert.ok(first.equals(await make()));
  });
});
