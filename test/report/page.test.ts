// The audit sheet: self-contained, safe, complete, the same bytes for the same sheet.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { cssText } from '../../src/report/page/style.ts';
import { auditPage } from '../../src/report/page.ts';
import { isSafeLink } from '../../src/report/prose.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { digest } from '../../src/sheet/digest.ts';

const sample = readFileSync(new URL('../../samples/starter-sizing.ampwright.md', import.meta.url), 'utf8');

function pageOf(text: string): string {
  return auditPage({ ...evaluateSheet(text), version: '1.2.3' });
}

function sheet(code: string, { front = '', prose = '' } = {}): string {
  return `---\nampwright: 1\ntitle: Trial\n${front}---\n\n${prose}\n\n\`\`\`ampwright\n${code}\n\`\`\`\n`;
}

const text = (html: string) =>
  html
    .replace(/<style>.*?<\/style>/s, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/[\s\u00A0]+/g, ' ');

/** The part of a page under a register's heading. */
function register(html: string, id: string): string {
  const section = new RegExp(`<section[^>]*id="register-${id}".*?</section>`, 's').exec(html);
  return section ? text(section[0]) : '';
}

describe('the audit sheet', () => {
  const page = pageOf(sample);

  it('is one file that runs, loads and sends nothing', () => {
    assert.doesNotMatch(page, /<script|<iframe|<object|<embed|<form|<img|<link|@import|url\(|\son\w+=/i);
    assert.doesNotMatch(page, /\b(src|srcset|poster|data|action)=/i);
    assert.match(
      page,
      /http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"/,
    );
  });

  it('is the same bytes each time', () => assert.equal(pageOf(sample), page));

  it('has every place that a link of it leads to, once', () => {
    const ids = [...page.matchAll(/\sid="([^"]*)"/g)].map((m) => m[1]!);
    assert.equal(new Set(ids).size, ids.length);
    for (const [, to] of page.matchAll(/href="#([^"]*)"/g)) assert.ok(ids.includes(to!), to);
  });

  it('has a title block with the fields of ISO 7200, the digest and the version', () => {
    for (const words of [
      /Legal owner Lindrow Mill/,
      /Identification number CALC-0412/,
      /Revision A/,
      /Date of issue 2026-11-20/,
      /Document status for review/,
      /Calculation sheet Starter for kiln drum motor M-12/,
    ]) {
      assert.match(text(page), words);
    }
    assert.match(text(page), /Ampwright 1\.2\.3/);
    assert.ok(page.includes(digest(sample)));
  });

  it('says of a field that is missing that it is not given', () => {
    assert.match(text(pageOf('Just prose.')), /Calculation sheet without a title .*Legal owner not given/);
  });

  it('says how the sheet stands', () => {
    assert.match(text(pageOf(sheet('shall 1 < 2\nshall 2 < 1\nx = 3'))), /1 requirement holds · 1 fails · 1 input without a source/);
    assert.match(text(pageOf(sheet('x = 1/0'))), /This sheet has 1 error;/);
  });

  it('says of a signature whether it still covers the sheet', () => {
    const signed = (covers: string) =>
      sheet('x = 2 from plate "p"', {
        front: `signatures:\n  - role: prepared\n    name: R. Osei\n    date: 2026-11-20\n    covers: ${covers}\n`,
      });
    const now = digest(signed('sha256:…'));
    assert.match(text(pageOf(signed(now))), /prepared R\. Osei 2026-11-20 covers this sheet/);
    assert.match(text(pageOf(signed(`sha256:${'0'.repeat(64)}`))), /prepared R\. Osei 2026-11-20 out of date/);
  });

  it('says beside a signature what changed since, and what else speaks against it, and never more than that it is a record', () => {
    const entry = (role: string, covers: string) =>
      `  - role: ${role}\n    name: R. Osei\n    date: 2026-11-20\n    covers: ${covers}\n    version: 1.0.0\n`;
    const signed = (value: string, covers: string) =>
      sheet(`x = ${value} from plate "p"`, { front: `signatures:\n${entry('prepared', covers)}${entry('checked', covers)}` });
    const old = signed('2', digest(signed('2', 'sha256:…')));
    const said = text(
      auditPage({
        ...evaluateSheet(old.replace('x = 2', 'x = 3')),
        version: '1.2.3',
        covered: () => ({ evaluation: evaluateSheet(old), revision: '1a2b3c4d5e of 2026-11-20' }),
      }),
    );
    assert.match(said, /prepared R\. Osei 2026-11-20 out of date: it covers 1a2b3c4d5e of 2026-11-20; since then: 1 input changed checked/);
    assert.match(said, /checked R\. Osei 2026-11-20 out of date: it covers .*1 input changed; the same person prepared the sheet/);
    assert.match(said, /no electronic signature in law and no professional engineer’s seal/);
  });

  it('shows the values of this run in the prose, whatever the file says', () => {
    const html = pageOf(sheet('I = 34.4 A from plate "p"\nbad = 1/0', { prose: 'Draws [99 A](#I), or [7 A](#bad).' }));
    assert.match(html, /Draws <a href="#entry-I">34\.4 A<\/a>, or <a href="#entry-bad">not calculated<\/a>\./);
  });

  it('states the decision rule and the cautions', () => {
    assert.match(text(page), /guarded acceptance .*guard band is U/);
    for (const words of [
      /prove the tester, prove dead, prove the tester again/,
      /arc-flash boundary/,
      /by hand on a live circuit/,
      /Foreign control voltages/,
      /licensed, person/,
    ]) {
      assert.match(register(page, 'cautions'), words);
    }
  });

  describe('has registers', () => {
    const rows: readonly (readonly [id: string, words: RegExp])[] = [
      ['requirements', /Requirement .*holds .*32\.77 A ≤ 34\.40 A .*in hand, U = 0\.68 A .*block 1/],
      ['inputs', /Plate .*rated shaft power 18\.5 kW M-12, photo of 2026-10-02 .*Measurement .*Datasheet /],
      ['assumptions', /50 °C tray above the kiln the surface of the tray had 46 °C/],
      ['budgets', /34\.40 A ± 0\.68 A \(k = 2\) .*%/],
      ['functions', /fla_3ph .*handbook: /],
      ['sources', /maker's sheet rev 2, 4\/4 load; tolerance of IEC 60034-1 datasheet eta, pf/],
    ];
    for (const [id, words] of rows) it(id, () => assert.match(register(page, id), words));

    it('of functions with those that they call', () => {
      const html = pageOf(sheet('f(a) = g(a) + 1 "outer"\ng(a) = 2 * a "inner"\nh(a) = a "unused"\nx = f(3)'));
      assert.match(register(html, 'functions'), /outer .*inner/);
      assert.doesNotMatch(register(html, 'functions'), /unused/);
    });

    it('of instruments, actions and tables', () => {
      const table = 'Table range — Contactors from datasheet "invented"\n\n| type | I / A |\n| --- | --: |\n| K4 | 30 |';
      const html = pageOf(
        sheet(
          'instrument DMM_7 ± 2 % serial "B41" due 2027-03-01\nU_a = 3 V by DMM_7 on 2026-10-02\nrange.I_m: A = I by DMM_7 on 2026-10-02\naction "Renew" by "maintenance" due 2026-12-15',
          { prose: table },
        ),
      );
      assert.match(register(html, 'instruments'), /B41 due 2027-03-01 U_a, range\.I_m/);
      assert.match(text(html), /read with DMM_7 on 2026-10-02/);
      assert.match(register(html, 'actions'), /Renew maintenance 2026-12-15/);
      assert.match(
        register(html, 'tables'),
        /range Contactors 1 row, 2 columns datasheet: invented in the text; computed columns in block 1/,
      );
      assert.match(register(html, 'inputs'), /Measurement .*3\.000 V/);
    });

    it('and leaves out those that would be empty', () =>
      assert.doesNotMatch(pageOf('Just prose.'), /id="register-(inputs|actions|requirements)"/));
  });

  describe('never carries active content from a sheet', () => {
    const rows: readonly (readonly [title: string, text: string])[] = [
      ['HTML in prose', sheet('x = 1', { prose: '<script>alert(1)</script> <img src=x onerror=alert(1)> <b onclick=x>b</b>' })],
      [
        'links that run',
        sheet('x = 1', {
          prose: '[a](javascript:alert(1)) [b](data:text/html,x) [c](command:x) [d](vbscript:x) <javascript:x> [e]( JaVaScRiPt:x)',
        }),
      ],
      ['pictures', sheet('x = 1', { prose: '![p](https://example.org/x.png) ![q](x.svg "t")' })],
      ['a title with markup', sheet('x = 1').replace('title: Trial', "title: '</title><script>x</script>\"><img src=x>'")],
      ['a title that ends the style', sheet('x = 1').replace('title: Trial', "title: '\"; } </style><script>x</script>'")],
      ['fields with markup', sheet('x = 1', { front: "owner: '<script>x</script>'\nlanguage: 'en\" onload=\"x'\n" })],
      ['texts in a block', sheet('x = 1 from plate "</td><script>x</script>"\n<script>y</script>')],
      ['a fence of another language', sheet('x = 1', { prose: '```html\n<script>x</script>\n```' })],
    ];
    for (const [title, source] of rows) {
      it(title, () => {
        const html = pageOf(source).replace(/&[a-z]+;[^<]*/g, '');
        assert.doesNotMatch(html, /<(script|img|iframe)|<[^>]*\son\w+=/i);
        assert.doesNotMatch(html, /href="(?!#|https?:|mailto:)/i);
        assert.equal(html.match(/<\/style>/g)?.length, 1);
        assert.equal(html.match(/<\/title>/g)?.length, 1 + (html.match(/<svg[^>]*><title>/g)?.length ?? 0));
      });
    }

    it('and takes links to the web, to mail and to the page itself alone', () => {
      const allowed = ['https://example.org', 'http://x', 'mailto:a@b', '#x', 'HTTPS://X'];
      const refused = ['javascript:x', 'data:x', 'command:x', 'file:///x', '//x', 'x.md', '../x', 'vscode://x', ' javascript:x', 'httpsx:'];
      for (const url of allowed) assert.ok(isSafeLink(url), url);
      for (const url of refused) assert.ok(!isSafeLink(url), url);
    });

    it('and writes no text into its style but as an escaped one', () => {
      assert.equal(cssText('a "b" \\ </style>'), '"a \\000022b\\000022 \\00005c \\00003c\\00002fstyle\\00003e"');
    });
  });

  it('names a file that the sheet links to, and does not lead there', () => {
    const html = pageOf(sheet('x = 1', { prose: '# Trial\n\nSee [the list](motor-list.csv) and [the *plan*](plans/e-1.pdf).' }));
    assert.match(html, /See the list \(motor-list\.csv\) and the <em>plan<\/em> \(plans\/e-1\.pdf\)\./);
    assert.doesNotMatch(html, /href="[^"]*(csv|pdf)/);
  });

  it('heads the axis of a drawing with what is drawn, whatever its traces are called', () => {
    const html = pageOf(sheet('f(x: m): V = 2 V/m * x\ncurve f(L): V "one", 2 * f(L): V "two" over L from 0 m to 9 m'));
    assert.match(html.replace(/<[^>]+>/g, ''), /f\(L\), 2 \* f\(L\) \/ V/);
  });

  it('keeps the levels of headings below its own, and their places', () => {
    const html = pageOf(sheet('x = 1', { prose: '# Trial\n\n## One\n\n### Two\n\n## One' }));
    assert.deepEqual(
      [...html.matchAll(/<h(\d)(?: class="aw-part")? id="((?!register-)[^"]*)">/g)].map((m) => `${m[1]} ${m[2]}`),
      ['2 one', '3 two', '2 one-1', '2 registers'],
    );
    const other = pageOf(sheet('x = 1', { prose: '# Another\n\n## One' }));
    assert.deepEqual(
      [...other.matchAll(/<h(\d)(?: class="aw-part")? id="((?!register-)[^"]*)">/g)].map((m) => `${m[1]} ${m[2]}`),
      ['2 another', '3 one', '2 registers'],
    );
  });

  it('lets a long line of code be scrolled by keyboard', () => {
    for (const prose of ['~~~\nlong\n~~~', '    long'])
      assert.match(pageOf(sheet('x = 1', { prose })), /<pre tabindex="0" role="group" aria-label="Code"><code>long/);
  });

  it('shows a sheet with conflict markers as it stands', () => {
    const html = pageOf('---\nampwright: 1\n---\n\n<<<<<<< a\nx\n=======\ny\n>>>>>>> b\n');
    assert.match(html, /<pre>&lt;&lt;&lt;&lt;&lt;&lt;&lt; a/);
  });
});
