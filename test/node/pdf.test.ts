// The sheet as PDF, opened by a reader that shares nothing with the writer.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import jsQR from 'jsqr';
import { digest } from '../../src/sheet/digest.ts';
import { type Made, made, sheet, wordsOf } from '../support/made-pdf.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

/** The package is CommonJS with a default of its own. */
const read = (jsQR as unknown as { default: typeof jsQR }).default;

const sample = readFileSync(new URL('../../samples/starter-sizing.ampwright.md', import.meta.url), 'utf8');

describe('the sheet as PDF', function () {
  this.timeout(120_000);
  let whole: Made;
  before(async () => {
    whole = await made(sample);
  });

  it('is PDF/A-2a: tagged, with the metadata that says so', () => {
    assert.equal(Buffer.from(whole.bytes.subarray(0, 8)).toString(), '%PDF-1.7');
    assert.ok(whole.pdf.tagged);
    assert.match(whole.pdf.metadata, /<pdfaid:part>2<\/pdfaid:part><pdfaid:conformance>A<\/pdfaid:conformance>/);
  });

  it('is the same bytes each time', async () => assert.ok(Buffer.from((await made(sample)).bytes).equals(whole.bytes)));

  it('is dated by its date of issue, asking no clock', () => {
    assert.match(whole.pdf.metadata, /<xmp:CreateDate>2026-11-20T00:00:00Z</);
    assert.doesNotMatch(whole.pdf.metadata, /(Create|Modify|Metadata)Date>(?!2026-11-20T00:00:00Z|<)\d/);
  });

  it('has the title block, how the sheet stands, and the contents on its first page', () => {
    const [first] = whole.pdf.pages;
    for (const words of [
      /Calculation sheet Starter for kiln drum motor M-12/,
      /Legal owner Lindrow Mill \(invented\)/,
      /Identification number CALC-0412/,
      /Date of issue 2026-11-20/,
      new RegExp(`Sheet 1 of ${whole.pdf.pages.length} `),
      /Ampwright 1\.2\.3/,
      /\d+ requirements hold/,
      /Sources quoted/,
    ]) {
      assert.match(first!.text, words);
    }
    assert.ok(first!.text.replaceAll(' ', '').includes(digest(sample)));
  });

  it('has the digest as a code that a camera reads', async () => {
    const { data, width, height } = await whole.pdf.pages[0]!.picture(2);
    assert.equal(read(data, width, height)?.data, digest(sample));
  });

  it('has number, revision, title and page on every page', () => {
    const { pages } = whole.pdf;
    pages.forEach((page, i) => {
      if (i > 0) assert.match(page.text, /CALC-0412 · revision A · Starter for kiln drum motor M-12/);
      assert.match(page.text, new RegExp(`page ${i + 1} of ${pages.length}`));
    });
  });

  it('has formulas, values put in, results and their sources', () => {
    for (const words of [
      /34\.40 A ± 0\.68 A \(k = 2\)/,
      /rated shaft power 18\.5 kW plate M-12, photo of 2026-10-02/,
      /least .* of contactors where/,
    ])
      assert.match(wordsOf(whole), words);
  });

  it('has a text for every formula and every picture', () => {
    const tags = whole.pdf.pages.flatMap((page) => page.tags).filter(({ role }) => role === 'Formula' || role === 'Figure');
    assert.ok(tags.filter(({ role }) => role === 'Formula').length > 50);
    for (const { role, alt } of tags) assert.ok(alt !== null && alt.trim() !== '', role);
    const texts = tags.map(({ alt }) => alt);
    assert.ok(texts.includes('P_n/(√(3) · U_n · η · pf)'), texts.join('\n'));
    assert.ok(texts.some((alt) => /^coil_voltage.* over L from 0 m to 300 m/.test(alt!)));
    assert.ok(texts.some((alt) => /below the limit|above the limit/.test(alt!)));
  });

  it('has heads in its tables, headings in order, and bookmarks', () => {
    const roles = whole.pdf.pages.flatMap((page) => page.tags.map(({ role }) => role));
    for (const role of ['H1', 'H2', 'H3', 'P', 'Table', 'THead', 'TH', 'TBody', 'TD', 'L', 'LI']) assert.ok(roles.includes(role), role);
    for (const title of ['Motor', 'Registers', 'Requirements', 'Sources quoted', 'Cautions'])
      assert.ok(whole.pdf.outline.includes(title), title);
  });

  it('has what unfolds on screen where it decides, and no head of what stays folded', async () => {
    const table = 'Table t — Two from datasheet "p"\n\n| type | I / A |\n| --- | --: |\n| K1 | 1 |\n| K2 | 9 |';
    const one = await made(sheet('t.J: A = 2 * I\nshall J <= 10 A for each t', { prose: table }));
    assert.match(wordsOf(one), /Row by row, worst first .*K2 fails 18\.?0* A ≤ 10 A .*K1 holds/);
    assert.doesNotMatch(wordsOf(one), /Depends on|Used by|Data of the curve/);
  });

  it('has the registers of the page, the decision rule, the cautions and what a signature is worth', () => {
    for (const words of [
      /Requirements Requirement Status Sides and margin/,
      /Actions .*Inputs by kind of source .*Assumptions .*Instruments .*Uncertainty budgets .*Functions used .*Tables .*Sources quoted/,
      /guarded acceptance after JCGM 106:2012/,
      /isolate, lock out, prove the tester, prove dead, prove the tester again/,
      /no electronic signature in law/,
    ]) {
      assert.match(wordsOf(whole), words);
    }
  });

  it('has the changes of the file, or says why not', async () => {
    const changes = [{ short: '0123456789', date: '2026-10-05', author: 'R. Osei', subject: 'Relay set to $x$ #1' }];
    const known = await made(sheet('x = 1'), { history: { changes, complete: true, uncommitted: false } });
    assert.match(wordsOf(known), /Change history Date Commit Author Change 2026-10-05 0123456789 R\. Osei Relay set to \$x\$ #1/);
    const unknown = await made(sheet('x = 1'), { history: { because: 'its file is in no git repository' } });
    assert.match(wordsOf(unknown), /The changes of this sheet are not known: its file is in no git repository\./);
  });

  it('fits A4 and Letter', async () => {
    assert.deepEqual(whole.pdf.pages[0]!.size.map(Math.round), [595, 842]);
    const letter = await made(sample, { paper: 'letter' });
    assert.deepEqual(letter.pdf.pages[0]!.size.map(Math.round), [612, 792]);
  });

  it('says of a signature whether it still covers the sheet', async () => {
    const signatures = `title: Trial\nsignatures:\n  - role: prepared\n    name: R. Osei\n    date: 2026-11-20\n    covers: sha256:${'0'.repeat(64)}\n`;
    assert.match(wordsOf(await made(sheet('x = 1', { front: signatures }))), /prepared R\. Osei 2026-11-20 out of date: /);
  });

  describe('is read by Debian’s reader as well, where it is installed (package poppler-utils)', () => {
    const folder = temporaryFolder();
    const installed = !spawnSync('pdfinfo', ['-v']).error;
    (installed ? it : it.skip)('with its pages, tags and text', () => {
      const file = folder.write('sheet.pdf', whole.bytes);
      const info = spawnSync('pdfinfo', [file], { encoding: 'utf8' }).stdout;
      assert.match(info, /Tagged:\s+yes/);
      assert.match(info, /JavaScript:\s+no/);
      assert.match(info, new RegExp(`Pages:\\s+${whole.pdf.pages.length}\\n`));
      assert.match(spawnSync('pdfinfo', ['-struct', file], { encoding: 'utf8' }).stdout, /Table[\s\S]*THead[\s\S]*Formula/);
      assert.match(spawnSync('pdftotext', [file, '-'], { encoding: 'utf8' }).stdout, /Starter for kiln drum motor M-12/);
    });
  });
});
