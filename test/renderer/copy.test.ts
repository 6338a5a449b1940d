// Copying from the ledger: rows become sentences, words within a cell stay what they are.
import assert from 'node:assert/strict';
import type { Page } from 'playwright-core';
import { toView } from '../../src/view/to-view.ts';
import { closeBrowser } from '../support/browser.ts';
import { evaluated } from '../support/shown.ts';
import { render, stage } from './bundle.ts';

const CODE =
  'U = 400 V ± 2 % from plate "M-12" "rated voltage"\nI: A = U / 10 ohm\nshall I <= 45 A because "duty"\ntabulate 2 * L: m over L from 0 m to 1 m step 1 m\nz = 5 kw';

/** What a copy of the selection from one element to another puts on the clipboard; null: what the browser itself would. */
async function copied(page: Page, from: string, to: string): Promise<string | null> {
  return page.evaluate(
    ([start, end]) => {
      const range = document.createRange();
      range.setStartBefore(document.querySelector(start!)!);
      range.setEndAfter(document.querySelector(end!)!);
      const selection = document.getSelection()!;
      selection.removeAllRanges();
      selection.addRange(range);
      const clipboardData = new DataTransfer();
      const event = new ClipboardEvent('copy', { clipboardData, bubbles: true, cancelable: true });
      document.querySelector(start!)!.dispatchEvent(event);
      return event.defaultPrevented ? clipboardData.getData('text/plain') : null;
    },
    [from, to],
  );
}

const row = (key: string) => `tr[data-key="${key}"]`;

describe('copying from the ledger', () => {
  after(closeBrowser);
  let page: Page;
  before(async () => {
    page = await stage();
    await render(page, 'one', JSON.parse(JSON.stringify(toView(evaluated(CODE).result).cells[0])));
  });

  it('gives a sentence for each row', async () => {
    assert.equal(
      await copied(page, row('entry U'), `${row('requirement I <= 45 A')} .aw-source`),
      [
        'U = 400.0 V ± 8.0 V (rated voltage), from plate "M-12".',
        'I = 40.00 A ± 0.80 A.',
        'shall I <= 45 A: 40.00 A ≤ 45 A: holds, 5.00 A (11 %) in hand, because duty.',
      ].join('\n'),
    );
  });

  it('gives the sentence of a row of which several cells are selected', async () => {
    assert.equal(await copied(page, `${row('entry I')} .aw-formula`, `${row('entry I')} .aw-result`), 'I = 40.00 A ± 0.80 A.');
  });

  it('gives problems with their mends', async () => {
    assert.match(
      (await copied(page, row('entry z'), `${row('entry z')} .aw-source`)) ?? '',
      /^z: not calculated, .*\nerror, line 5: .*kw.*Write/,
    );
  });

  it('leaves words within a cell, and numbers within a table of data, as they are', async () => {
    assert.equal(await copied(page, `${row('entry U')} .aw-value`, `${row('entry U')} .aw-plusminus`), null);
    assert.equal(await copied(page, '.aw-tabulation tbody tr', '.aw-tabulation tbody tr:last-child'), null);
  });
});
