// The pages of the reference: complete, linked, self-contained, readable in every look.
import assert from 'node:assert/strict';
import { LIBRARY_SHEETS } from '../../src/library/index.ts';
import { referencePages } from '../../src/report/reference.ts';
import { functionList } from '../../src/run/function-list.ts';
import { library } from '../../src/run/library.ts';
import { accessibilityFindings, closeBrowser, LOOKS, overflow, show } from '../support/browser.ts';

const pages = referencePages('1.2.3');
const byFile = new Map(pages.map((page) => [page.file, page.html]));

const idsOf = (html: string) => [...html.matchAll(/\sid="([^"]*)"/g)].map((m) => m[1]!);

/** The section of a function as words. */
function section(file: string, name: string): string {
  const found = new RegExp(`<section[^>]*id="function-${name}".*?</section>`, 's').exec(byFile.get(file)!);
  assert.ok(found, `${file} has no section for ${name}`);
  return found[0]
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
    .replace(/[\s\u00A0\u2061]+/g, ' ');
}

describe('the reference', () => {
  after(closeBrowser);

  it('has an index, a page for each library sheet, and pages for the notation and the mathematics', () => {
    assert.deepEqual(
      [...byFile.keys()],
      ['index.html', ...LIBRARY_SHEETS.map((s) => `${s.name}.html`), 'notation.html', 'mathematics.html'],
    );
  });

  it('is the same bytes each time', () => assert.deepEqual(referencePages('1.2.3'), pages));

  it('runs, loads and sends nothing', () => {
    for (const { file, html } of pages) {
      assert.doesNotMatch(
        html,
        /<script|<iframe|<object|<embed|<form|<img|<link|@import|url\(|\son\w+=|\b(src|srcset|data|action)=/i,
        file,
      );
      assert.match(html, /http-equiv="Content-Security-Policy" content="default-src 'none';/, file);
    }
  });

  it('has every place once, and every link leads to a place', () => {
    const places = new Map(pages.map(({ file, html }) => [file, new Set(idsOf(html))]));
    for (const { file, html } of pages) {
      assert.equal(places.get(file)!.size, idsOf(html).length, `${file} has an id twice`);
      for (const [, to] of html.matchAll(/href="([^"]*)"/g)) {
        const [page, place] = to!.split('#') as [string, string?];
        const target = places.get(page === '' ? file : page);
        assert.ok(target, `${file} links to ${to}`);
        if (place !== undefined) assert.ok(target.has(place), `${file} links to ${to}`);
      }
    }
  });

  it('explains every function under an anchor of its own: form, description, formula, parameters, source', () => {
    for (const f of functionList()) {
      const words = section(f.library === null ? 'mathematics.html' : `${f.library}.html`, f.name);
      const squeezed = words.replaceAll(' ', '');
      for (const part of [f.form, f.description!.slice(1), f.source!.replace(/^\w+ "|"$/g, '')])
        assert.ok(squeezed.includes(part.replaceAll(' ', '')), `${f.name}: ${part}`);
      assert.match(words, /Formula .*Parameters .*Example .*Source /, f.name);
      for (const need of f.needs) assert.ok(words.includes(need.because!), `${f.name}: ${need.because}`);
    }
  });

  it('runs every example and shows its result', () => {
    for (const f of functionList()) {
      const words = section(f.library === null ? 'mathematics.html' : `${f.library}.html`, f.name);
      assert.ok(words.includes(`Example ${f.example} = `), `${f.name}: ${f.example}`);
    }
    assert.match(section('motors.html', 'fla_3ph'), /Example fla_3ph\(18\.5 kW, 400 V, 92\.4 %, 0\.84\) = 34\.40 A /);
    assert.match(section('mathematics.html', 'hypot'), /Example hypot\([^=]*\) = [\d.]+/);
  });

  it('has every table in full with its source', () => {
    for (const { name, sheet } of library().modules) {
      const html = byFile.get(`${name}.html`)!;
      for (const table of sheet.tables) {
        const found = new RegExp(`<section[^>]*id="table-${table.name}".*?</section>`, 's').exec(html)?.[0] ?? '';
        assert.equal(found.match(/<tr>/g)?.length, table.rowCount + 1, table.name);
        assert.match(found, new RegExp(`<span class="aw-kind">${table.source!.kind}</span>`), table.name);
      }
    }
  });

  it('shows the checks of the library with the publication beside them, all of which hold', () => {
    assert.match(byFile.get('motors.html')!, /ch\. 16, example 12, p\. 253: 40 A<\/th>/);
    for (const { file, html } of pages) assert.doesNotMatch(html, /aw-status aw-(fails|undecided|none)/, file);
  });

  it('shows the examples of the notation with their results, and what messages quote as code', () => {
    const html = byFile.get('notation.html')!;
    assert.match(
      html,
      /<td[^>]*>missing<\/td>\n<td[^>]*><\/td>\n<td[^>]*>error: No row of <code>contactors<\/code> has I_AC3 = 35 A; neighbours: 31\.5 A and 40 A<\/td>/,
    );
    assert.equal(/<!-- |results --|`/.exec(html.slice(html.indexOf('<main>'))), null);
  });

  it('leads from a name in the prose, and from a formula, to where the name is explained', () => {
    assert.match(
      byFile.get('balance.html')!,
      /A <code>shall<\/code> on <a href="#function-voltage_band_mg1"><code>voltage_band_mg1<\/code><\/a>/,
    );
    assert.match(section('motors.html', 'flc_nec_3ph'), /Uses .*nec_430_250/);
  });

  const looks: readonly (readonly [file: string, looks: readonly string[]])[] = [
    ['index.html', ['light', 'narrow']],
    ['safety.html', Object.keys(LOOKS)],
    ['conductors.html', ['narrow']],
    ['notation.html', ['light', 'narrow']],
    ['mathematics.html', ['narrow']],
  ];
  for (const [file, names] of looks) {
    for (const look of names) {
      it(`is accessible in ${look}, with all its words in view: ${file}`, async () => {
        const page = await show(byFile.get(file)!, LOOKS[look]!);
        assert.deepEqual(await accessibilityFindings(page), []);
        assert.deepEqual(await overflow(page), []);
        await page.close();
      });
    }
  }
});
