// The notebook renderer in a real browser: it draws what the page draws, keeps its state, and trusts nothing.
import assert from 'node:assert/strict';
import { ledger } from '../../src/view/ledger.ts';
import type { CellView } from '../../src/view/model.ts';
import { toHtml } from '../../src/view/node.ts';
import { toView } from '../../src/view/to-view.ts';
import { closeBrowser } from '../support/browser.ts';
import { evaluated } from '../support/shown.ts';
import { bundle, messages, render, stage } from './bundle.ts';

const CODE = `U = 400 V ± 2 % from plate "p" "rated voltage"
I: A = U / 10 ohm
shall I <= 45 A because "duty"
curve 2 V/m * L: V over L from 0 m to 5 m
z = 5 kw`;

function viewOf(code: string): CellView {
  return JSON.parse(JSON.stringify(toView(evaluated(code).result).cells[0]));
}

describe('the notebook renderer', () => {
  after(closeBrowser);

  it('is a module of less than 100 kB', async () => assert.ok((await bundle()).length < 100_000, `${(await bundle()).length}`));

  it('runs where the page forbids inline styles, scripts and the network', async () => {
    assert.doesNotMatch(
      await bundle(),
      /\.innerHTML|outerHTML|insertAdjacentHTML|document\.write|eval\(|fetch\(|XMLHttpRequest|new Function/,
    );
  });

  it('draws the same elements as the page', async () => {
    const page = await stage();
    await render(page, 'one', viewOf(CODE));
    const [drawn, parsed] = await page.evaluate(
      (html) => {
        const written = document.createElement('div');
        written.innerHTML = html;
        // What only a script can do is laid over the drawings.
        const shown = document.getElementById('one')!.cloneNode(true) as HTMLElement;
        for (const added of shown.querySelectorAll('.aw-reader, .aw-readout')) added.remove();
        for (const box of shown.querySelectorAll('.aw-plotbox')) box.replaceWith(...box.childNodes);
        return [shown.innerHTML, written.innerHTML];
      },
      toHtml(ledger(viewOf(CODE))),
    );
    assert.equal(drawn, parsed);
    const namespaces = await page.evaluate(() =>
      ['math', 'svg', 'mfrac', 'path'].map((tag) => document.querySelector(`#one ${tag}`)?.namespaceURI),
    );
    assert.deepEqual(namespaces, [
      'http://www.w3.org/1998/Math/MathML',
      'http://www.w3.org/2000/svg',
      'http://www.w3.org/1998/Math/MathML',
      'http://www.w3.org/2000/svg',
    ]);
    await page.close();
  });

  it('typesets formulas: a fraction is higher than a letter', async () => {
    const page = await stage();
    await render(page, 'one', viewOf(CODE));
    const [fraction, letter] = await page.evaluate(() =>
      ['.aw-formula mfrac', '.aw-symbol mi'].map((s) => document.querySelector(s)!.getBoundingClientRect().height),
    );
    assert.ok(fraction! > 1.5 * letter!, `${fraction} ${letter}`);
    await page.close();
  });

  it('tells the editor which symbol was clicked, in rows, lists and formulas', async () => {
    const page = await stage();
    await render(page, 'one', viewOf(CODE));
    await page.click('[data-key="entry I"] .aw-quantity a');
    await page.click('[data-key="entry I"] .aw-formula [data-name="U"]');
    assert.deepEqual(await messages(page), [
      { type: 'reveal', name: 'I' },
      { type: 'reveal', name: 'U' },
    ]);
    await page.close();
  });

  it('works by keyboard: what unfolds and every symbol of its list can be reached and used', async () => {
    const page = await stage();
    await render(page, 'one', viewOf('a = 2\nb = a + 1'));
    const seen: string[] = [];
    for (let i = 0; i < 12; i++) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() =>
        `${document.activeElement?.localName} ${document.activeElement?.getAttribute('data-name') ?? ''}`.trim(),
      );
      seen.push(at);
      if (at === 'summary') await page.keyboard.press('Enter');
      if (at === 'body') break;
    }
    assert.deepEqual(seen.slice(0, 6), ['a a', 'summary', 'a b', 'a b', 'summary', 'a a']);
    await page.focus('[data-key="entry b"] details a');
    await page.keyboard.press('Enter');
    assert.deepEqual(await messages(page), [{ type: 'reveal', name: 'a' }]);
    await page.close();
  });

  it('lets the Tab key come to a table that scrolls, and only while it does', async () => {
    const page = await stage();
    const table = `Table motors — Motors, invented  from drawing "invented"\n\n| tag | I / A | P / kW |\n| --- | --: | --: |\n| M-12 | 34.5 | 18.5 |\n`;
    const code = Array.from({ length: 4 }, (_, i) => `motors.column_number_${i}: A = I`).join('\n');
    await render(page, 'one', JSON.parse(JSON.stringify(toView(evaluated(code, table).result).cells[0])));
    const scroller = page.locator('.aw-datascroll');
    await page.waitForFunction(() => !document.querySelector('.aw-datascroll')!.hasAttribute('tabindex'));
    await page.setViewportSize({ width: 300, height: 600 });
    await page.waitForFunction(() => document.querySelector('.aw-datascroll')!.getAttribute('tabindex') === '0');
    assert.deepEqual([await scroller.getAttribute('role'), await scroller.getAttribute('aria-label')], ['group', 'Table motors, 1 row']);
    await page.close();
  });

  it('sends nothing where it has no messages', async () => {
    const page = await stage({ messaging: false });
    await render(page, 'one', viewOf(CODE));
    await page.click('[data-key="entry I"] .aw-formula [data-name="U"]');
    assert.deepEqual(await messages(page), []);
    await page.close();
  });

  it('keeps open what was open, and the focus, when an output is replaced', async () => {
    const page = await stage();
    await render(page, 'one', viewOf('a = 2\nb = a + 1\nc = b + 1'));
    await page.click('[data-key="entry b"] summary');
    await page.focus('[data-key="entry b"] summary');
    await render(page, 'one', viewOf('a = 3\nb = a + 1\nc = b + 1'));
    const state = await page.evaluate(() => [...document.querySelectorAll('details')].map((d) => [d.dataset['key'], d.open]));
    assert.deepEqual(state, [
      ['entry a', false],
      ['entry b', true],
      ['entry c', false],
    ]);
    assert.equal(await page.evaluate(() => document.activeElement?.closest('tr')?.dataset['key']), 'entry b');
    assert.match((await page.textContent('[data-key="entry b"] .aw-value')) ?? '', /4/);
    await page.close();
  });

  it('draws outputs beside each other without mixing them', async () => {
    const page = await stage();
    await render(page, 'one', viewOf('a = 2'));
    await render(page, 'two', viewOf('b = 3'));
    assert.deepEqual(
      await page.evaluate(() => ['one', 'two'].map((id) => document.getElementById(id)!.querySelectorAll('.aw-entry').length)),
      [1, 1],
    );
    await page.close();
  });

  describe('refuses with words what is no view model', () => {
    const good = viewOf('a = 2');
    const rows: readonly (readonly [title: string, json: unknown])[] = [
      ['nothing', null],
      ['a text', 'x'],
      ['a row of an unknown kind', { ...good, rows: [{ ...good.rows[0], kind: 'applet' }] }],
      ['a missing field', { ...good, rows: [{ kind: 'entry' }] }],
      ['a number for a text', { ...good, rows: [{ ...good.rows[0], name: 3 }] }],
      ['a tree that is none', { ...good, rows: [{ ...good.rows[0], symbol: { tag: 'mi', attributes: { a: 1 }, children: [] } }] }],
    ];
    for (const [title, json] of rows) {
      it(title, async () => {
        const page = await stage();
        await render(page, 'one', json);
        assert.match(
          (await page.textContent('#one')) ?? '',
          /^These results can't be shown \(.+\)\. They are made again when the sheet is edited\.$/,
        );
        await page.close();
      });
    }
  });

  it('leaves out elements and attributes that a view may not hold', async () => {
    const page = await stage();
    const symbol = {
      tag: 'mrow',
      attributes: { onclick: 'globalThis.bad = 1', style: 'color: red' },
      children: [
        { tag: 'script', attributes: {}, children: ['globalThis.bad = 1'] },
        { tag: 'img', attributes: { src: 'x', onerror: 'globalThis.bad = 1' }, children: [] },
        { tag: 'a', attributes: { href: 'javascript:globalThis.bad = 1' }, children: ['x'] },
      ],
    };
    const view = viewOf('a = 2');
    await render(page, 'one', { ...view, rows: [{ ...view.rows[0], symbol }] });
    assert.equal(await page.evaluate(() => (globalThis as unknown as { bad?: number }).bad), undefined);
    assert.equal(
      await page.evaluate(() => document.querySelectorAll('#one :is(script, img, [onclick], [style], a[href^="java"])').length),
      0,
    );
    await page.close();
  });
});
