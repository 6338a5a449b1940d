// Paths that would lead out of the workspace, as a sheet may write them: nobody is even asked for them. What is asked for,
// the workspace looks at with its links followed: test/node/files.test.ts, test/editor/suite/links.node.test.ts.
import assert from 'node:assert/strict';
import { evaluateSheet } from '../../src/run/evaluate.ts';

/** The paths that a sheet asks its workspace for. */
function askedFor(text: string): readonly string[] {
  const asked: string[] = [];
  const read = (path: string) => {
    asked.push(path);
    return { refused: 'it does not exist' };
  };
  assert.ok(evaluateSheet(text, { read }).problems.length > 0);
  return asked;
}

const OUT = [
  '/etc/passwd', '//server/share/x', '\\\\server\\share\\x', 'C:/x', 'C:\\x', 'c:x', '..\\..\\x', 'file:///etc/passwd', 'FILE:/etc/passwd', 'https://evil.invalid/x',
  'javascript:alert(1)', 'data:text/csv,a', 'command:workbench.action.quit', 'vscode://x/y', 'svn+ssh://evil.invalid/x', 'h2:x', '/\\server\\x',
]; // biome-ignore format: a list of attacks

describe('a path that leads out', () => {
  for (const path of OUT) {
    const written = path.replaceAll('\\', '\\\\');
    it(`${JSON.stringify(path)} is not asked for by \`use\``, () =>
      assert.deepEqual(askedFor(`\`\`\`ampwright\nuse "${written}.ampwright.md" for a\n\`\`\`\n`), []));
    for (const link of [`(${path}.csv)`, `(<${path}.csv>)`, `(${path}.csv "title")`])
      it(`${JSON.stringify(link)} is not asked for by a table`, () =>
        assert.deepEqual(askedFor(`Table t — [T]${link} from report "x"\n`), []));
  }

  it('by its folders is asked for as such, so that the workspace can refuse it', () =>
    assert.deepEqual(askedFor('```ampwright\nuse "a/../../../etc/x.ampwright.md" for a\n```\n'), ['../../etc/x.ampwright.md']));

  it('in percent signs is a name like any other', () =>
    assert.deepEqual(askedFor('```ampwright\nuse "%2e%2e/%2e%2e/x.ampwright.md" for a\n```\n'), ['%2e%2e/%2e%2e/x.ampwright.md']));
});
