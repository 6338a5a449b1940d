// Accessibility of what is drawn, by axe-core (WCAG 2.2 A and AA), and that nothing is cut off on a narrow screen.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { auditPage } from '../../src/report/page.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { toView } from '../../src/view/to-view.ts';
import { accessibilityFindings, closeBrowser, LOOKS, overflow, show } from '../support/browser.ts';
import { render, stage } from './bundle.ts';

const sample = readFileSync(new URL('../../samples/starter-sizing.ampwright.md', import.meta.url), 'utf8');
const everything = readFileSync(new URL('./everything.ampwright.md', import.meta.url), 'utf8');
const sheets = { 'the sample': sample, 'a sheet with everything': everything };

function unfold(page: Page): Promise<void> {
  return page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
}

describe('accessibility', () => {
  after(closeBrowser);

  for (const [name, text] of Object.entries(sheets)) {
    describe(`of the page of ${name}`, () => {
      const html = auditPage({ ...evaluateSheet(text), version: '1.0.0' });
      for (const [look, how] of Object.entries(LOOKS)) {
        it(`in ${look}`, async () => {
          const page = await show(html, how);
          await unfold(page);
          assert.deepEqual(await accessibilityFindings(page), []);
          await page.close();
        });
      }

      for (const width of [300, 600, 1000, 1600]) {
        it(`has all its words within ${width} pixels`, async () => {
          const page = await show(html, { width });
          await unfold(page);
          assert.deepEqual(await overflow(page), []);
          await page.close();
        });
      }
    });
  }

  describe('of outputs in the editor', () => {
    const cells = toView(evaluateSheet(everything).result).cells;
    const themes: readonly (readonly [theme: string, width: number])[] = [
      ['vscode-light', 1000],
      ['vscode-dark', 1000],
      ['vscode-high-contrast', 1000],
      ['vscode-dark', 320],
    ];
    for (const [theme, width] of themes) {
      it(`in ${theme} at ${width} pixels`, async () => {
        const page = await stage({ theme, look: { width } });
        await render(page, 'one', JSON.parse(JSON.stringify(cells[0])));
        await unfold(page);
        assert.deepEqual(await accessibilityFindings(page), []);
        assert.deepEqual(await overflow(page), []);
        await page.close();
      });
    }
  });

  it('tells statuses apart without colour', async () => {
    const page = await show(auditPage({ ...evaluateSheet(everything), version: '1.0.0' }), LOOKS['forced colours']);
    const said = await page.evaluate(() =>
      [...document.querySelectorAll('.aw-ledger .aw-status')].map((s) => `${s.textContent?.trim()} ${s.querySelector('svg')?.innerHTML}`),
    );
    const shapes = new Map(said.map((s) => [s, s.split(' <')[0]!]));
    assert.deepEqual([...new Set(shapes.values())].sort(), ['fails', 'holds', 'not calculated', 'undecided']);
    assert.equal(shapes.size, 4);
    await page.close();
  });
});
