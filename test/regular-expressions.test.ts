// Regular expressions: none takes more than linear time on a text that a stranger may have written.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { check } from 'recheck';
import ts from 'typescript';

/** Those that would take longer on a long text, and why they never see one. */
const BOUNDED: Readonly<Record<string, string>> = {
  'node/pdf.ts /the text `\\\\"(.*?)\\\\"` could not be displayed/g':
    'the typesetter escapes quotes of texts, so that none repeats how its message begins',
  'node/pdf.ts /message: "(.*?)", trace/': 'the same',
  'report/reference/notation-page.ts /<td[^>]*>[^<]*<\\/td>/g': 'reads our own page',
  'report/typeset/drawing.ts /var\\(--aw-([\\w-]+)(?:,\\s*([^)]*))?\\)/g': 'reads looks that the drawings give themselves',
  'sheet/table-columns.ts /\\B(?=(?:\\d{3})+$)/g': 'reads a number of rows',
  'units/number-text.ts /\\.?0+$/': 'reads a number of three digits',
  'view/math/symbol.ts /(\\w+) (\\S)/gu': 'reads the Greek alphabet',
};

const SOURCE = join(import.meta.dirname, '..', 'src');

/** The literals of a file, as written. */
function literals(file: string): readonly string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isRegularExpressionLiteral(node)) found.push(node.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, readFileSync(join(SOURCE, file), 'utf8'), ts.ScriptTarget.Latest));
  return found;
}

/** Whether some text makes it take more than linear time. */
async function isSlow(literal: string): Promise<boolean> {
  const end = literal.lastIndexOf('/');
  // `d` only asks for places; how a match is found is the same.
  const { status } = await check(literal.slice(1, end), literal.slice(end + 1).replace('d', ''), { timeout: 60_000 });
  assert.notEqual(status, 'unknown', literal);
  return status === 'vulnerable';
}

describe('the regular expressions of the source', function () {
  this.timeout(180_000);

  it('take linear time on any text, but for those that never see a long one', async () => {
    const files = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));
    const all = files.flatMap((file) => literals(file).map((literal) => ({ file: file.replaceAll('\\', '/'), literal })));
    assert.ok(all.length > 200);
    const slow = new Map<string, boolean>();
    for (const { literal } of all) if (!slow.has(literal)) slow.set(literal, await isSlow(literal));
    const found = all.filter(({ literal }) => slow.get(literal)).map(({ file, literal }) => `${file} ${literal}`);
    assert.deepEqual(found.sort(), Object.keys(BOUNDED).sort());
  });

  it('would be found if they took the square of the text', async () => assert.ok(await isSlow('/\\s+$/')));
});
