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

interface Expressions {
  /** As written. */
  readonly literals: readonly string[];
  /** Where the code has one made of a text when it runs, by hand or by a method of strings: no test sees what that will be. */
  readonly made: readonly string[];
}

/** The methods of strings that take a text for an expression. */
const TAKES_TEXT_FOR_EXPRESSION = new Set(['match', 'matchAll', 'search']);

/** The regular expressions of a text of TypeScript. */
function expressionsIn(code: string): Expressions {
  const file = ts.createSourceFile('code.ts', code, ts.ScriptTarget.Latest, true);
  const [literals, made]: [string[], string[]] = [[], []];
  // A name whose value is a literal is as good as the literal.
  const named = new Set<string>();
  const visit = (node: ts.Node, look: (node: ts.Node) => void): void => {
    look(node);
    ts.forEachChild(node, (child) => visit(child, look));
  };
  visit(file, (node) => {
    if (ts.isRegularExpressionLiteral(node)) literals.push(node.text);
    if (ts.isVariableDeclaration(node) && node.initializer && ts.isRegularExpressionLiteral(node.initializer))
      named.add(node.name.getText());
  });
  visit(file, (node) => {
    if (ts.isIdentifier(node) && node.text === 'RegExp' && !ts.isTypeReferenceNode(node.parent) && !isInstanceCheck(node))
      made.push(line(node));
    if (!ts.isCallExpression(node) || !ts.isPropertyAccessExpression(node.expression)) return;
    const [argument] = node.arguments;
    if (!TAKES_TEXT_FOR_EXPRESSION.has(node.expression.name.text) || !argument) return;
    if (!ts.isRegularExpressionLiteral(argument) && !named.has(argument.getText())) made.push(line(node));
  });
  return { literals, made };
}

function isInstanceCheck({ parent }: ts.Node): boolean {
  return ts.isBinaryExpression(parent) && parent.operatorToken.kind === ts.SyntaxKind.InstanceOfKeyword;
}

/** The code of a node in one line. */
function line(node: ts.Node): string {
  return (ts.isIdentifier(node) ? node.parent : node).getText().replace(/\s+/g, ' ');
}

const FILES = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => ({ file: file.replaceAll('\\', '/'), found: expressionsIn(readFileSync(join(SOURCE, file), 'utf8')) }));

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
    const all = FILES.flatMap(({ file, found }) => found.literals.map((literal) => ({ file, literal })));
    assert.ok(all.length > 200);
    const slow = new Map<string, boolean>();
    for (const { literal } of all) if (!slow.has(literal)) slow.set(literal, await isSlow(literal));
    const found = all.filter(({ literal }) => slow.get(literal)).map(({ file, literal }) => `${file} ${literal}`);
    assert.deepEqual(found.sort(), Object.keys(BOUNDED).sort());
  });

  it('are all literals, so that the test above sees them', () => {
    assert.deepEqual(
      FILES.flatMap(({ file, found }) => found.made.map((code) => `${file} ${code}`)),
      [],
    );
  });

  for (const code of [
    'new RegExp(a)',
    "RegExp('a' + b)",
    'Reflect.construct(RegExp, [a])',
    'text.match(a)',
    "text.search('a' + b)",
    'text.matchAll(makes())',
  ])
    it(`would be found where they are made: ${code}`, () => assert.equal(expressionsIn(`const x = ${code};`).made.length, 1));

  it('would be found if they took the square of the text', async () => assert.ok(await isSlow('/\\s+$/')));
});
