// The ledger's HTML: what stands where, and that nothing of a sheet becomes markup.
import assert from 'node:assert/strict';
import { ledger } from '../../src/view/ledger.ts';
import { type ElementNode, textOf, toHtml } from '../../src/view/node.ts';
import { STYLE } from '../../src/view/style.ts';
import { toView } from '../../src/view/to-view.ts';
import { golden } from '../support/golden.ts';
import { evaluated } from '../support/shown.ts';

const RANGE =
  'Table range — Contactors, invented  from datasheet "invented"\n\n| type | I / A |\n| --- | --: |\n| K4 | 30 |\n| K5 | 40 |\n';

function htmlOf(code: string, before = ''): string {
  return toView(evaluated(code, before).result)
    .cells.map((cell) => toHtml(ledger(cell)))
    .join('\n');
}

function text(html: string): string {
  return html
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&gt;', '>')
    .replace(/[\s\u00A0]+/g, ' ')
    .trim();
}

function all(tree: ElementNode, of: (node: ElementNode) => boolean): ElementNode[] {
  const children = tree.children.filter((c): c is ElementNode => typeof c !== 'string');
  return [...(of(tree) ? [tree] : []), ...children.flatMap((c) => all(c, of))];
}

const tree = (code: string, before = '') => ledger(toView(evaluated(code, before).result).cells[0]!);

describe('the ledger', () => {
  const rows: readonly (readonly [title: string, code: string, words: RegExp])[] = [
    [
      'shows description, value, uncertainty, coverage and source of an input',
      'x = 400 V ± 8 V (k=2) from plate "M-12" "rated voltage"',
      /x rated voltage .*400\.0 V ± 8\.0 V \(k = 2\) .*plate M-12/,
    ],
    [
      'shows the status word of a requirement, the margin in hand and the reason',
      'shall 30 A <= 40 A because "AC-3 duty"',
      /shall .*holds .*10\.00 A \(25 %\) in hand .*AC-3 duty/,
    ],
    ['shows both sides where the condition is a calculation', 'a = 2 A\nshall 3 * a <= 40 A', /6\.000 A ≤ 40 A/],
    ['shows a failed requirement with what it is short of', 'shall 44 A <= 40 A', /fails .*4\.000 A \(10 %\) short/],
    [
      'shows the concession beside the status',
      'shall 3 A <= 2 A accepted by "A. Sample" until 2027-03-31 because "part load"',
      /fails .*Concession accepted by A\. Sample until 2027-03-31: part load/,
    ],
    ['says why there is no result', 'y = x + 1\nx = 1/0', /y .*not calculated .*x has no value/],
    ['shows an error with its line and the mend', 'x = 5 kw', /Error, line 1 .*kw .*Write .*kW/],
    [
      'shows what a choice took and what ruled out the others',
      'K = least I of range where I > 35 A',
      /K .*K5 .*type K5 .*one of 2 in range .*Ruled out 1 by I > 35 A/,
    ],
    [
      'unfolds to what a result depends on, its budget and its users',
      'a = 2 A ± 1 %\nb = 3 * a\nc = b',
      /Depends on a 2\.000 A .*Uncertainty budget .*100 % .*Used by c/,
    ],
  ];
  for (const [title, code, words] of rows) it(title, () => assert.match(text(htmlOf(code, RANGE)), words));

  it('does not say twice what the values put in say', () => {
    const said = (code: string) => text(htmlOf(code)).match(/30 A ≤ 40 A/g)?.length;
    assert.equal(said('a = 30 A\nshall a <= 40 A'), 1);
    assert.equal(said('a = 30 A\nshall a * 1 <= 40 A'), undefined);
  });

  it('is a table with heads, a row head for each row and five columns', () => {
    const [table] = all(tree('x = 2\ny = x + 1\nshall y <= 4\nf(a) = a\njunk junk', RANGE), (n) => n.attributes.class === 'aw-table');
    assert.equal(all(table!, (n) => n.tag === 'th' && n.attributes.scope === 'col').length, 5);
    const body = table!.children.find((c): c is ElementNode => typeof c !== 'string' && c.tag === 'tbody');
    for (const row of body!.children as ElementNode[]) {
      const columns = (row.children as ElementNode[]).reduce((sum, c) => sum + Number(c.attributes.colspan ?? 1), 0);
      assert.equal(columns, 5, textOf(row));
    }
  });

  it('leads from every symbol in a list to the row of its name', () => {
    const page = tree('a = 2\nb = a + 1\nc = b * a');
    const ids = new Set(all(page, (n) => n.attributes.id !== undefined).map((n) => `#${n.attributes.id}`));
    const links = all(page, (n) => n.tag === 'a');
    assert.ok(links.length > 5);
    for (const link of links) assert.ok(ids.has(link.attributes.href!), link.attributes.href);
  });

  it('has a mark beside every status and severity word', () => {
    for (const code of ['shall 1 < 2', 'shall 2 < 1', 'x = 3 ± 1\nshall x <= 3', 'shall 1/0 < 2']) {
      for (const status of all(tree(code), (n) => n.attributes.class?.startsWith('aw-status ') ?? false)) {
        assert.ok(all(status, (n) => n.tag === 'svg').length === 1 && textOf(status).trim() !== '', code);
      }
    }
  });

  it('is empty for a cell that has nothing to show', () => {
    assert.equal(htmlOf('# a comment'), '<div class="aw-ledger"></div>');
  });

  it('shows hostile texts as text', () => {
    const hostile = '<script>alert(1)</script><img src=x onerror=y>"\'';
    const code = `x = 2 from plate "${hostile.replaceAll('"', '\\"')}" because "${hostile.replaceAll('"', '\\"')}" "${hostile.replaceAll('"', '\\"')}"\ns = "${hostile.replaceAll('"', '\\"')}"\n<script>bad</script>`;
    const html = htmlOf(code);
    assert.doesNotMatch(html, /<(script|img)/);
    assert.match(html, /&lt;script&gt;alert/);
  });

  it('looks as it was approved', () => {
    const code = [
      'P_n = 18.5 kW  from plate "M-12"  "rated shaft power"',
      'U_n = 400 V ± 2 %  from plate "M-12"',
      'I_n: A = fla_3ph(P_n, U_n, 92.4 %, 0.84)  "full-load current"',
      'K = least I of range where I >= 1.1 * I_n',
      'shall I_n <= K.I  because "AC-3 duty"',
      'z = 5 kw',
    ].join('\n');
    golden('test/view/golden/ledger.txt', `${htmlOf(code, RANGE).replaceAll('><', '>\n<')}\n`);
  });

  it('has a style that reaches nothing but itself', () => {
    const selectors = STYLE.replace(/\/\*.*?\*\//gs, '').match(/[^{}]+(?=\{)/g) ?? [];
    for (const selector of selectors.map((s) => s.trim())) {
      if (!selector.startsWith('@')) assert.match(selector, /\.aw-|--aw-/, selector);
    }
    assert.doesNotMatch(STYLE, /url\(|@import|expression\(/);
  });
});
