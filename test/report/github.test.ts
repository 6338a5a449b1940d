// Annotations and job summary as GitHub Actions reads them.
import assert from 'node:assert/strict';
import MarkdownIt from 'markdown-it';
import { githubAnnotations, githubSummary } from '../../src/report/github.ts';
import { MANY, MIXED, SOUND, verified } from '../support/verified.ts';

/** A workflow command read by the rules that GitHub documents. */
function readCommand(
  line: string,
): { readonly kind: string; readonly properties: Record<string, string>; readonly message: string } | null {
  const parts = /^::(\w+)(?: ([^:]*))?::(.*)$/.exec(line);
  if (parts === null) return null;
  const unescaped = (text: string) =>
    text.replaceAll('%3A', ':').replaceAll('%2C', ',').replaceAll('%0A', '\n').replaceAll('%0D', '\r').replaceAll('%25', '%');
  const pairs = (parts[2] ?? '').split(',').map((pair) => pair.split('='));
  return {
    kind: parts[1]!,
    properties: Object.fromEntries(pairs.map(([key, value]) => [key!, unescaped(value ?? '')])),
    message: unescaped(parts[3]!),
  };
}

const lines = (...verifications: Parameters<typeof githubAnnotations>[0][number][]) =>
  githubAnnotations(verifications, (file) => file).split('\n');

describe('GitHub annotations', () => {
  it('lie on the lines of the file, whatever its name is', () => {
    const found = lines(MIXED).map(readCommand);
    const failed = found.find((command) => command?.message.startsWith('shall I_n <= 30 A'))!;
    assert.equal(failed.kind, 'warning');
    assert.deepEqual(failed.properties, {
      file: 'calculations/kiln & drum/a, b: c.ampwright.md',
      line: '6',
      endLine: '6',
      col: '1',
      endColumn: '43',
      title: 'A requirement fails',
    });
  });

  it('come worst first', () => {
    const kinds = lines(SOUND, MIXED)
      .map((line) => readCommand(line)?.kind)
      .filter((kind) => kind !== undefined);
    assert.deepEqual(kinds, ['error', 'warning', 'warning', 'warning', 'notice']);
    assert.match(lines(MIXED)[1]!, /A requirement fails/);
  });

  it('are ten of a kind; the rest is printed where it annotates nothing', () => {
    const found = lines(MANY, MIXED);
    const kinds = found.map((line) => readCommand(line)?.kind);
    assert.equal(kinds.filter((kind) => kind === 'error').length, 10);
    assert.equal(kinds.filter((kind) => kind === 'warning').length, 10);
    const group = found.findIndex((line) => line.startsWith('::group::'));
    assert.match(found[group]!, /^::group::\d+ more, beyond the 10 of a kind/);
    const rest = found.slice(group + 1, found.indexOf('::endgroup::'));
    const total = [MANY, MIXED].flatMap((v) => v.findings).length;
    assert.equal(rest.length, total - 21);
    assert.ok(rest.every((line) => /^(error|finding|note): /.test(line)));
  });

  it('no text of a sheet becomes a command', () => {
    const evil = verified('a.ampwright.md', 'shall 2 is "::error::x\\\\"\nx = 100 % + 1 V ::set-output name=a::b');
    for (const line of lines(evil)) assert.ok(line === '' || /^::(error|warning|notice) file=a\.ampwright\.md,/.test(line), line);
  });

  it('there are none for a sound sheet', () => {
    assert.equal(
      githubAnnotations([SOUND], (file) => file),
      '',
    );
  });
});

describe('GitHub job summary', () => {
  const render = (text: string) => new MarkdownIt({ html: false, linkify: true }).render(text);

  it('counts, lists the findings worst first, and the sheets with their requirements', () => {
    const text = githubSummary([SOUND, MIXED]);
    assert.match(text, /^## Calculation sheets\n\n1 of 2 sheets stand · 1 errors · 3 findings · 1 notes\n/);
    const html = render(text);
    assert.equal(html.match(/<table>/g)!.length, 2);
    assert.ok(html.indexOf('<td>error</td>') < html.indexOf('<td>finding</td>'));
    assert.match(html, /<td>calculations\/kiln &amp; drum\/a, b: c\.ampwright\.md<\/td>\s*<td>1<\/td>\s*<td>1<\/td>\s*<td>1<\/td>/);
  });

  it('no text of a sheet becomes markup, a link or a mention', () => {
    const html = render(
      githubSummary([
        verified('a|b<i>.ampwright.md', 'shall 2 is "<img src=x> @osei #12 [a](https://x.invalid) `c` **b** | www.x.invalid"'),
      ]),
    );
    assert.doesNotMatch(html, /<img|<i>|<a |<code>|<strong>|@osei|#12/);
  });

  it('stays within its length and says what it leaves out', () => {
    const text = githubSummary([MANY, MIXED], 4000);
    assert.ok(Buffer.byteLength(text) <= 4000);
    const left = Number(/(\d+) more findings are left out here/.exec(text)![1]);
    const total = [MANY, MIXED].flatMap((v) => v.findings).length;
    assert.equal(text.match(/^\| (error|finding|note) \|/gm)!.length + left, total);
  });
});
