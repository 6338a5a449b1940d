// Reading a curve in the editor: with the pointer, with the keyboard, with a screen reader.
import assert from 'node:assert/strict';
import type { Page } from 'playwright-core';
import { toView } from '../../src/view/to-view.ts';
import { accessibilityFindings, closeBrowser } from '../support/browser.ts';
import { evaluated } from '../support/shown.ts';
import { render, type Stage, stage } from './bundle.ts';

const CODE =
  'curve 110 V - 0.1 V/m * L: V "thin", 110 V - 0.05 V/m * L: V "thick" over L from 0 m to 100 m\n  limit 103 V "pick-up"\ncurve 1 A + 0 A/m * L: A over L from 0 m to 1 m';

const json = (code: string) => JSON.parse(JSON.stringify(toView(evaluated(code).result).cells[0]));

async function drawn(how: Stage = {}, code = CODE): Promise<Page> {
  const page = await stage(how);
  await render(page, 'one', json(code));
  return page;
}

const readout = (page: Page) => page.locator('.aw-readout:visible').first().textContent();
const reader = (page: Page) => page.locator('.aw-reader:visible').first();

describe('a curve in the editor', () => {
  after(closeBrowser);

  it('says below it how it is read, before anyone does', async () => {
    const page = await drawn();
    assert.match((await readout(page)) ?? '', /^Point at the curve/);
    await page.close();
  });

  it('says the values at the point nearest to the pointer, and shows where that is', async () => {
    const page = await drawn();
    const box = (await page.locator('.aw-plot:visible').first().boundingBox())!;
    const axis = (await page.locator('.aw-plot:visible .aw-axis').first().boundingBox())!;
    await page.mouse.move(axis.x + axis.width / 2, box.y + box.height / 2);
    const told = /^L = ([\d.]+) m: thin ([\d.]+) V; thick ([\d.]+) V$/.exec((await readout(page)) ?? '');
    assert.ok(told, (await readout(page)) ?? '');
    const [L, thin, thick] = told.slice(1).map(Number);
    assert.ok(Math.abs(L! - 50) < 2, `${L}`);
    assert.ok(Math.abs(thin! - (110 - 0.1 * L!)) < 0.06 && Math.abs(thick! - (110 - 0.05 * L!)) < 0.06);
    assert.equal(await page.locator('.aw-spot:visible').count(), 2);
    const [hair, spot] = [
      await page.locator('.aw-hair:visible').boundingBox(),
      await page.locator('.aw-spot:visible').first().boundingBox(),
    ];
    assert.ok(Math.abs(hair!.x - (spot!.x + spot!.width / 2)) < 1.5, 'the hair line goes through the spot');
    await page.mouse.move(5, 5);
    assert.match((await readout(page)) ?? '', /^Point at the curve/);
    await page.close();
  });

  it('is walked along with the arrow keys, a page and from end to end', async () => {
    const page = await drawn();
    await reader(page).focus();
    const at = async (key: string) => {
      await page.keyboard.press(key);
      return Number(/^L = ([\d.]+)/.exec((await readout(page)) ?? '')?.[1]);
    };
    assert.equal(await at('Home'), 0);
    const first = await at('ArrowRight');
    assert.ok(first > 0);
    assert.ok((await at('PageUp')) > 8 * first);
    assert.equal(await at('End'), 100);
    assert.equal(await at('ArrowRight'), 100);
    assert.ok((await at('ArrowLeft')) < 100);
    await page.close();
  });

  it('tells a screen reader the values as those of a slider', async () => {
    const page = await drawn();
    assert.equal(await reader(page).getAttribute('role'), 'slider');
    assert.equal(await reader(page).getAttribute('aria-label'), 'Read the curve over L');
    await reader(page).focus();
    await page.keyboard.press('End');
    assert.equal(await reader(page).getAttribute('aria-valuetext'), 'L = 100 m: thin 100 V; thick 105 V');
    assert.equal(await reader(page).getAttribute('aria-valuenow'), await reader(page).getAttribute('aria-valuemax'));
    await page.close();
  });

  it('keeps its keys from the notebook around it, and leaves it all others', async () => {
    const page = await drawn();
    await page.evaluate(() => {
      const seen: string[] = [];
      Object.assign(globalThis, { seen });
      document.addEventListener('keydown', (event) => seen.push(event.key));
    });
    await reader(page).focus();
    for (const key of ['ArrowRight', 'Home', 'Escape', 'a', 'Control+ArrowRight']) await page.keyboard.press(key);
    assert.deepEqual(await page.evaluate(() => (globalThis as unknown as { seen: string[] }).seen), [
      'Escape',
      'a',
      'Control',
      'ArrowRight',
    ]);
    await page.close();
  });

  it('keeps focus and place when results are drawn anew', async () => {
    const sloping = (start: string) => `U = ${start}\ncurve U - 0.1 V/m * L: V over L from 0 m to 100 m`;
    const page = await drawn({}, sloping('110 V'));
    await reader(page).focus();
    await page.keyboard.press('End');
    await render(page, 'one', json(sloping('120 V')));
    assert.equal(await page.evaluate(() => document.activeElement?.getAttribute('role')), 'slider');
    assert.equal(await readout(page), 'L = 100 m: 110 V');
    await page.close();
  });

  it('says where there is no value', async () => {
    const page = await drawn({}, 'curve 1 m / L * 1 V: V over L from 0 m to 1 m');
    await reader(page).focus();
    await page.keyboard.press('Home');
    assert.equal(await readout(page), 'L = 0 m: no value');
    assert.equal(await page.locator('.aw-spot:visible').count(), 0);
    await page.close();
  });

  for (const theme of ['vscode-light', 'vscode-dark', 'vscode-high-contrast'] as const) {
    for (const width of [320, 1000]) {
      it(`has no fault that axe finds while it is read in ${theme} at ${width} pixels`, async () => {
        const page = await drawn({ theme, look: { width } });
        await reader(page).focus();
        await page.keyboard.press('End');
        assert.deepEqual(await accessibilityFindings(page), []);
        await page.close();
      });
    }
  }
});
