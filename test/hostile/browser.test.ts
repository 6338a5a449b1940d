// A page with every attack, as an auditor opens it: in a browser, from a file, with its own rules about content in force.
import assert from 'node:assert/strict';
import { pathToFileURL } from 'node:url';
import { comparisonsPage } from '../../src/report/comparison/page.ts';
import { auditPage } from '../../src/report/page.ts';
import { comparedSheet } from '../../src/review/comparisons.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { startBrowser } from '../editor/host/browser.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { ATTACKS, attackedSheet } from './attacks.ts';

describe('a page with every attack in every place', function () {
  this.timeout(120_000);
  const folder = temporaryFolder();

  const [old, now] = ['1 V', '3 V'].map((value) => evaluateSheet(ATTACKS.map((attack, i) => attackedSheet(attack, value, i)).join('\n')));
  const pages: readonly (readonly [what: string, html: () => string])[] = [
    ['exported', () => auditPage({ ...now!, version: '1.0.0' })],
    ['of a comparison', () => comparisonsPage({ old: 'a', new: 'b', sheets: [comparedSheet('a.ampwright.md', null, old!, now!)] })],
  ];
  for (const [what, html] of pages) {
    it(`${what} asks for nothing, runs nothing and leads to the web alone`, async () => {
      const browser = await startBrowser();
      try {
        const file = pathToFileURL(folder.write('page.html', html())).href;
        const page = await browser.newPage();
        const [asked, ran]: string[][] = [[], []];
        page.on('request', (request) => asked!.push(request.url()));
        page.on('dialog', (dialog) => {
          ran!.push(dialog.message());
          void dialog.dismiss();
        });
        page.on('pageerror', (error) => ran!.push(error.message));
        page.on('popup', (popup) => ran!.push(popup.url()));
        await page.goto(file);
        const found = await page.evaluate(() => ({
          active: document.querySelectorAll('script, iframe, object, embed, form, img, link, base, audio, video, [onerror], [onload], [onclick]').length,
          links: [...document.querySelectorAll('a[href]')].map((a) => (a as HTMLAnchorElement).protocol),
          text: document.body.textContent,
        })); // biome-ignore format: one look
        assert.deepEqual(asked, [file]);
        assert.deepEqual(ran, []);
        assert.equal(found.active, 0);
        assert.deepEqual([...new Set(found.links)].filter((p) => !['file:', 'http:', 'https:', 'mailto:'].includes(p)), []); // biome-ignore format: one step
        assert.match(found.text ?? '', /<script>alert\(1\)<\/script>/);
      } finally {
        await browser.close();
      }
    });
  }
});
