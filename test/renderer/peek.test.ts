// A look at what a row unfolds to, with the pointer and with the keyboard.
import assert from 'node:assert/strict';
import type { Page } from 'playwright-core';
import { toView } from '../../src/view/to-view.ts';
import { accessibilityFindings, closeBrowser } from '../support/browser.ts';
import { evaluated } from '../support/shown.ts';
import { messages, render, type Stage, stage } from './bundle.ts';

const CODE = 'U = 400 V ± 2 %\nI: A = U / 10 ohm\nP: kW = U * I\nshall I <= 45 A\nq = 3\nlast = q';

async function drawn(how: Stage = {}): Promise<Page> {
  const page = await stage(how);
  await render(page, 'one', JSON.parse(JSON.stringify(toView(evaluated(CODE).result).cells[0])));
  return page;
}

const row = (page: Page, key: string) => page.locator(`tr[data-key="${key}"]`);
const peek = (page: Page) => page.locator('.aw-peek');
const heights = (page: Page) =>
  page.evaluate(() => [...document.querySelectorAll('.aw-table > tbody > tr')].map((r) => r.getBoundingClientRect().top));

describe('a look at a row', () => {
  after(closeBrowser);

  it('shows dependencies and uncertainty budget while the pointer rests on the result, and moves nothing', async () => {
    const page = await drawn();
    const before = await heights(page);
    await row(page, 'entry I').locator('summary').hover();
    await peek(page).waitFor();
    const text = ((await peek(page).textContent()) ?? '').replaceAll('\u00A0', ' ');
    assert.match(text, /Depends on.*U 400\.0 V.*Uncertainty budget.*100 %.*Used by/);
    assert.deepEqual(await heights(page), before);
    await page.mouse.move(2, 2);
    await peek(page).waitFor({ state: 'detached' });
    await page.close();
  });

  it('shows them when the keyboard comes to the result; Escape puts them away, Enter unfolds in place', async () => {
    const page = await drawn();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await peek(page).waitFor();
    assert.match((await peek(page).textContent()) ?? '', /Used by/);
    await page.keyboard.press('Escape');
    assert.equal(await peek(page).count(), 0);
    await page.keyboard.press('Enter');
    assert.equal(await row(page, 'entry U').locator('details[open]').count(), 1);
    assert.equal(await peek(page).count(), 0);
    await page.close();
  });

  it('stays while the pointer goes into it, and its symbols can be clicked', async () => {
    const page = await drawn();
    await row(page, 'entry I').locator('summary').hover();
    await peek(page).waitFor();
    await peek(page).locator('a').first().click();
    assert.deepEqual(await messages(page), [{ type: 'reveal', name: 'U' }]);
    await page.close();
  });

  it('is whole in a ledger that is too low for it, which makes room until the pointer has left', async () => {
    const page = await stage();
    const { result } = evaluated('U = 400 V ± 2 %\nR = 10 ohm ± 1 %\nI: A = U / R');
    const view = { ...toView(result).cells[0]!, rows: toView(result).cells[0]!.rows.slice(-1) };
    await render(page, 'one', JSON.parse(JSON.stringify(view)));
    const height = () => page.locator('#one').evaluate((one) => one.getBoundingClientRect().height);
    const before = await height();
    await row(page, 'entry I').locator('summary').hover();
    await peek(page).waitFor();
    const [own, output] = [(await peek(page).boundingBox())!, (await page.locator('#one').boundingBox())!];
    assert.ok(output.height > before, 'the ledger alone is too low');
    assert.ok(own.y >= output.y && own.y + own.height <= output.y + output.height + 1, 'the look lies in the output');
    assert.ok(await peek(page).evaluate((look) => look.scrollHeight <= look.clientHeight), 'nothing of it is cut off');
    await page.mouse.move(900, 700);
    await peek(page).waitFor({ state: 'detached' });
    assert.equal(await height(), before);
    await page.close();
  });

  it('stays within the ledger, at its foot and on a narrow screen too', async () => {
    for (const width of [320, 1000]) {
      const page = await drawn({ look: { width } });
      for (const key of ['entry U', 'entry I', 'entry P', 'requirement I <= 45 A', 'entry last']) {
        await row(page, key).locator('summary').hover();
        await page.waitForFunction((k) => document.querySelector('.aw-peek') && document.querySelector(`tr[data-key="${k}"]:hover`), key);
        const [own, ledger] = [(await peek(page).boundingBox())!, (await page.locator('#one .aw-ledger').boundingBox())!];
        assert.ok(own.x >= ledger.x - 1 && own.x + own.width <= ledger.x + ledger.width + 1, `${key} at ${width}`);
        const { y: top, height } = (await page.locator('#one').boundingBox())!;
        assert.ok(own.y >= top - 1 && own.y + own.height <= top + height + 1, `${key} at ${width}`);
        await page.mouse.move(2, 2);
        await peek(page).waitFor({ state: 'detached' });
      }
      await page.close();
    }
  });

  it('is nothing that a screen reader or the Tab key meets a second time', async () => {
    const page = await drawn();
    await row(page, 'entry I').locator('summary').focus();
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Tab');
    await peek(page).waitFor();
    assert.equal(await peek(page).getAttribute('aria-hidden'), 'true');
    assert.equal(await peek(page).locator('a:not([tabindex="-1"])').count(), 0);
    assert.deepEqual(await accessibilityFindings(page), []);
    await page.close();
  });
});
