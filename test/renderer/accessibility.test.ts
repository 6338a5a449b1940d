// Accessibility of what is drawn, by axe-core (WCAG 2.2 A and AA), and that nothing is cut off on a narrow screen.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { workspaceFiles } from '../../src/node/files.ts';
import { auditPage } from '../../src/report/page.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { toView } from '../../src/view/to-view.ts';
import { accessibilityFindings, closeBrowser, LOOKS, overflow, show } from '../support/browser.ts';
import { sheetOf } from '../support/shown.ts';
import { render, stage } from './bundle.ts';

const sample = readFileSync(new URL('../../samples/starter-sizing.ampwright.md', import.meta.url), 'utf8');
const everything = readFileSync(new URL('./everything.ampwright.md', import.meta.url), 'utf8');
/** Pixels between the margins: 180 mm at 96 to the inch. */
const A4 = 680;
const SAMPLES = ['starter-sizing', 'condition-survey', 'control-run', 'motor-list', 'review/dust-fan-a', 'review/dust-fan-b'];
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

  it('has formulas that cover nothing around them in forced colours', async () => {
    const page = await stage({ theme: 'vscode-high-contrast', look: { ...LOOKS['forced colours'], width: 700 } });
    await render(page, 'one', JSON.parse(JSON.stringify(toView(evaluateSheet(everything).result).cells[0])));
    const words = page.locator('.aw-table > thead');
    const before = await words.screenshot();
    await page.addStyleTag({ content: 'math { visibility: hidden; }' });
    assert.deepEqual(await words.screenshot(), before);
    await page.close();
  });

  describe('of every sample in the editor', () => {
    for (const name of SAMPLES) {
      it(`${name} has all its words and formulas within whatever room there is`, async () => {
        const place = new URL(`../../samples/${name}.ampwright.md`, import.meta.url);
        const path = fileURLToPath(place);
        const { cells } = toView(evaluateSheet(readFileSync(place, 'utf8'), workspaceFiles(path)).result);
        const page = await stage();
        await page.evaluate((count) => {
          const places = Array.from({ length: count }, (_, i) => Object.assign(document.createElement('div'), { id: `cell-${i}` }));
          document.querySelector('main')!.replaceChildren(...places);
        }, cells.length);
        for (const [i, cell] of cells.entries()) await render(page, `cell-${i}`, JSON.parse(JSON.stringify(cell)));
        await unfold(page);
        for (const width of [300, 480, 700, 800, 900, 1000, 1400]) {
          await page.setViewportSize({ width, height: 900 });
          assert.deepEqual(await overflow(page), [], `${width} pixels`);
        }
        await page.close();
      });
    }
  });

  it('of paper: the widest table of the samples stands whole within A4, and over nothing', async () => {
    const path = fileURLToPath(new URL('../../samples/condition-survey.ampwright.md', import.meta.url));
    const html = auditPage({ ...evaluateSheet(readFileSync(path, 'utf8'), workspaceFiles(path)), version: '1.0.0' });
    const page = await show(html, { width: A4 });
    await page.emulateMedia({ media: 'print' });
    const found = await page.evaluate((width) => {
      const beyond = [...document.querySelectorAll('table, svg, .aw-math')].filter((e) => e.getBoundingClientRect().right > width + 1);
      const over = [...document.querySelectorAll('.aw-datascroll')].filter((e) => e.scrollHeight > e.clientHeight + 1);
      return [...beyond, ...over].map((e) => `${e.className}: ${e.textContent?.slice(0, 40)}`);
    }, A4);
    assert.deepEqual(found, []);
    await page.close();
  });

  describe('of outputs in the editor', () => {
    const cells = toView(evaluateSheet(everything).result).cells;
    const themes: readonly (readonly [theme: string, width: number, forced?: boolean])[] = [
      ['vscode-light', 300],
      ['vscode-light', 884],
      ['vscode-light', 1400],
      ['vscode-dark', 480],
      ['vscode-dark', 1000],
      ['vscode-high-contrast', 320],
      ['vscode-high-contrast', 800],
      ['vscode-high-contrast', 300, true],
      ['vscode-high-contrast', 1000, true],
    ];
    for (const [theme, width, forced = false] of themes) {
      it(`in ${theme}${forced ? ' with forced colours' : ''} at ${width} pixels`, async () => {
        const page = await stage({ theme, look: { width, forced, colours: theme === 'vscode-light' ? 'light' : 'dark' } });
        await render(page, 'one', JSON.parse(JSON.stringify(cells[0])));
        await unfold(page);
        assert.deepEqual(await accessibilityFindings(page), []);
        assert.deepEqual(await overflow(page), []);
        await page.close();
      });
    }
  });

  for (const [theme, forced] of [
    ['vscode-light', false],
    ['vscode-dark', false],
    ['vscode-high-contrast', false],
    ['vscode-high-contrast', true],
  ] as const) {
    it(`of results that are not current, or recorded otherwise, in ${theme}${forced ? ' with forced colours' : ''}`, async () => {
      const { result } = evaluateSheet(sheetOf('a = 2 A ± 1 %\nb = 3 * a\nshall b <= 7 A'));
      const recorded = new Map([
        [
          0,
          [
            { result: 'b', value: '5.00 A', note: '' },
            { result: 'c', value: '1 A', note: '' },
            { result: 'shall b <= 7 A', value: '8 A ≤ 7 A', note: 'fails' },
          ],
        ],
      ]);
      const page = await stage({ theme, look: { forced, width: 480, colours: theme === 'vscode-light' ? 'light' : 'dark' } });
      await render(page, 'one', JSON.parse(JSON.stringify(toView(result, { recorded, current: false }).cells[0])));
      assert.deepEqual(await accessibilityFindings(page), []);
      assert.deepEqual(await overflow(page), []);
      await page.close();
    });
  }

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
