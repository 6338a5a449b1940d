// The page of a comparison in a real browser.
import assert from 'node:assert/strict';
import { comparisonsPage } from '../../../src/report/comparison/page.ts';
import { accessibilityFindings, closeBrowser, LOOKS, show } from '../../support/browser.ts';
import { FULL, MARKUP, NOTHING, SEVERAL } from './compared.ts';

describe('a comparison as a page', function () {
  this.timeout(120_000);
  after(closeBrowser);

  it('shows every sheet with its headline, and every change with its lines', async () => {
    const page = await show(comparisonsPage(SEVERAL));
    const headings = await page.locator('h2').allTextContents();
    assert.deepEqual(
      headings.map((text) => text.replace(/\s+/g, ' ')),
      [
        'Starter for M-12 (a.ampwright.md)',
        'Starter for M-12 (b.ampwright.md)',
        'Starter for M-12 (c.ampwright.md)',
        'Starter for M-12 (kiln/d.ampwright.md)',
        'e.ampwright.md',
      ],
    );
    assert.match((await page.textContent('main'))!, /new sheet: .*not compared: byte 3.*1 more sheet without a change in meaning/s);
    const row = page.locator('tr', { hasText: 'holds → fails' }).first();
    assert.match((await row.getAttribute('data-key'))!, /^0:\d+:\d+$/);
    assert.match((await row.textContent())!, /its own line did not change/);
    await page.close();
  });

  it('says when nothing changed', async () => {
    const page = await show(comparisonsPage(NOTHING));
    assert.match((await page.textContent('main'))!, /Nothing: inputs, formulas, results and words are the same/);
    await page.close();
  });

  it('is one file without network, script or anything that a sheet brings along', async () => {
    const html = comparisonsPage(MARKUP);
    const page = await show('<p></p>');
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.setContent(html);
    assert.deepEqual(asked, []);
    assert.equal(await page.locator('script, img, iframe, link, object, a[href^="http"]').count(), 0);
    assert.match((await page.textContent('main'))!, /<img src=x onerror=alert\(1\)>/);
    await page.close();
  });

  for (const [name, look] of Object.entries(LOOKS)) {
    it(`has no fault that axe-core finds: ${name}`, async () => {
      const page = await show(comparisonsPage(FULL), look);
      await page.evaluate(() => {
        for (const details of document.querySelectorAll('details')) details.open = true;
      });
      assert.deepEqual(await accessibilityFindings(page), []);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), 'the page itself scrolls sideways');
      await page.close();
    });
  }
});
