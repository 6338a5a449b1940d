// Templates and the walkthrough: finished sheets whose results are recorded, and examples that calculate.
import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { evaluateSheet } from '../src/run/evaluate.ts';
import { recordSheet } from '../src/run/record.ts';
import { retitled } from '../src/sheet/retitled.ts';

const read = (path: string) => readFileSync(path, 'utf8');
const templates = readdirSync('templates').map((name) => `templates/${name}`);

describe('the templates', () => {
  it('are four', () => assert.equal(templates.length, 4));
  for (const path of templates) {
    it(`${path}: nothing is wrong but inputs that want a source, every requirement holds, results are recorded`, () => {
      const text = read(path);
      const evaluation = evaluateSheet(text);
      const codes = new Set(evaluation.problems.map(({ problem }) => problem.code));
      assert.deepEqual([...codes], ['no-source']);
      const requirements = evaluation.result.cells.flatMap(({ statements }) => statements.filter((s) => s.kind === 'requirement'));
      assert.ok(requirements.length > 1);
      for (const of of requirements) assert.equal(of.kind === 'requirement' && of.status, 'holds');
      assert.equal(recordSheet(evaluation), text);
    });
  }
});

describe('a sheet under another title', () => {
  const check = (title: string, front: string, heading: string) => {
    const text = retitled('---\ntitle: Old\nissued: 2026-01-01\ndigits: 4\n---\n\n# Old\n\n# Second\n', title, '2026-11-20');
    assert.equal(text, `---\ntitle: ${front}\nissued: 2026-11-20\ndigits: 4\n---\n\n# ${heading}\n\n# Second\n`);
    assert.equal(evaluateSheet(text).sheet.frontMatter.title, title.replace(/\s+/g, ' ').trim());
  };
  it('has it in front matter and first heading', () => check('Dust fan M-20', 'Dust fan M-20', 'Dust fan M-20'));
  it('takes any title as a text', () => {
    check('Fan: M-20', '"Fan: M-20"', 'Fan: M-20');
    check('[a](b) *all* #1', '"[a](b) *all* #1"', String.raw`\[a\](b) \*all\* \#1`);
    check('two\nlines', 'two lines', 'two lines');
  });
});

describe('the walkthrough', () => {
  const { contributes } = JSON.parse(read('package.json'));
  const [{ steps }] = contributes.walkthroughs as [{ steps: { description: string; media: { markdown: string } }[] }];
  it('names commands and files that are there', () => {
    const commands = (contributes.commands as { command: string }[]).map(({ command }) => command);
    for (const { description, media } of steps) {
      assert.ok(existsSync(media.markdown), media.markdown);
      for (const [, command] of description.matchAll(/\(command:([\w.]+)\)/g)) assert.ok(commands.includes(command!), command);
    }
  });
  it('has examples that calculate, one after the other', () => {
    const evaluation = evaluateSheet(steps.map(({ media }) => read(media.markdown)).join('\n'));
    assert.deepEqual(
      evaluation.problems.map(({ problem }) => problem.message),
      [],
    );
    assert.equal(evaluation.result.entries.get('I_n')?.value?.short, '34.40 A');
  });
});
