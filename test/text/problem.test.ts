// Problems as data: their codes, and how much of a sheet their words repeat.
import assert from 'node:assert/strict';
import { lexingProblem } from '../../src/language/problems/lexing.ts';
import { nameProblem } from '../../src/language/problems/names.ts';
import { syntaxProblem } from '../../src/language/problems/syntax.ts';
import { typeProblem } from '../../src/language/problems/types.ts';
import { valueProblem } from '../../src/language/problems/values.ts';
import { batchProblem } from '../../src/run/batch/problems.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { useProblem } from '../../src/run/problems.ts';
import { frontMatterProblem, proseProblem, sheetProblem } from '../../src/sheet/problems.ts';
import { tableProblem } from '../../src/sheet/table-problems.ts';
import { shortened } from '../../src/text/shortened.ts';

const STAGES = {
  lexing: lexingProblem,
  syntax: syntaxProblem,
  names: nameProblem,
  types: typeProblem,
  values: valueProblem,
  sheet: sheetProblem,
  'front matter': frontMatterProblem,
  prose: proseProblem,
  tables: tableProblem,
  use: useProblem,
  batch: batchProblem,
};

describe('codes of problems', () => {
  for (const [stage, { codes }] of Object.entries(STAGES))
    it(`${stage}: small words with hyphens`, () => {
      assert.ok(codes.length > 1);
      for (const code of codes) assert.match(code, /^[a-z]+(-[a-z]+)*$/);
    });

  it('each has one meaning in all stages', () => {
    const all = Object.values(STAGES).flatMap(({ codes }) => codes);
    assert.deepEqual([...new Set(all)].sort(), [...all].sort());
  });
});

describe('a shortened text', () => {
  const check = (name: string, text: string, most: number, expected: string) =>
    it(name, () => assert.equal(shortened(text, most), expected));

  check('is itself where it is short enough', 'contactor', 9, 'contactor');
  check('keeps beginning and end', 'abcdefghijklmnopqrstuvwxyz', 10, 'abcdef…xyz');
  check('cuts no character in two', `${'a'.repeat(5)}😀${'b'.repeat(20)}`, 10, 'aaaaa…bbb');
  check('nor at the end', `${'b'.repeat(20)}😀aa`, 10, 'bbbbbb…aa');
});

describe('what messages repeat of a sheet', () => {
  const LONG = 1_000_000;
  const cell = (code: string) => `# S\n\n\`\`\`ampwright\n${code}\n\`\`\`\n`;
  const table = (head: string, row: string) => `Table t — Long\n\n| ${head} |\n| --- |\n| ${row} |\n`;

  /** Every problem that a text with something very long in it has, is said in few words, its mends' titles too. */
  const check = (name: string, text: string, code: string) =>
    it(name, () => {
      const { problems } = evaluateSheet(text);
      assert.ok(
        problems.some(({ problem }) => problem.code === code),
        problems.map(({ problem }) => problem.code).join(),
      );
      for (const { problem } of problems) {
        assert.ok(problem.message.length <= 1000, `${problem.code}: a message of ${problem.message.length} characters`);
        for (const { title } of problem.mends) assert.ok(title.length <= 1000, `${problem.code}: a title of ${title.length} characters`);
      }
    });

  check('a run of characters that mean nothing', cell('§'.repeat(LONG)), 'stray-characters');
  check('a run of backticks', cell(`x = ${'`'.repeat(LONG)}`), 'stray-characters');
  check('a name that nobody defined', cell(`x = ${'a'.repeat(LONG)}`), 'unknown-name');
  check('a number too large to calculate with', cell(`x = ${'9'.repeat(LONG)}`), 'number-out-of-range');
  check('a sum with a name in it that nobody defined', cell(`x = ${'1 + '.repeat(LONG / 4)}y`), 'unknown-name');
  check('a front matter key', `---\n${'k'.repeat(1000)}: 1\n---\n\n# S\n`, 'front-matter-key-unknown');
  check('a circle of many', cell(Array.from({ length: 2000 }, (_, i) => `x_${i} = x_${(i + 1) % 2000}`).join('\n')), 'circle');
  check('a link that leads nowhere', `# S\n\n[4 A](#${'n'.repeat(LONG)})\n`, 'link-leads-nowhere');
  check('a cell of a table', table('I / A', '9'.repeat(50_000).replace('99', '9 9')), 'cell-number');
  check('a head of a table', table(`I / ${'q'.repeat(50_000)}`, '1'), 'column-unit');

  it('the words that say what is wrong stay', () => {
    const [first] = evaluateSheet(cell('§'.repeat(LONG))).problems;
    assert.match(first!.problem.message, /^`§{80}…§{39}` has no meaning here$/);
  });
});
