// What is recorded in a sheet's file: results blocks and values in prose (F1, F4, F6, F8).
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { recordSheet } from '../../src/run/record.ts';
import { calcCells } from '../../src/sheet/sheet.ts';
import { evaluated, sheetText, valueTexts } from '../support/answers.ts';
import { golden } from '../support/golden.ts';

const folder = new URL('./fixtures/', import.meta.url);
const fixtures = readdirSync(folder).filter((name) => name.endsWith('.md') && !name.endsWith('.recorded.md'));

describe('recording', () => {
  for (const name of fixtures) {
    const text = readFileSync(new URL(name, folder), 'utf8');

    it(`writes ${name} as approved`, () => {
      const evaluation = evaluateSheet(text);
      const problems = evaluation.problems
        .filter(({ path, problem }) => path === null && problem.severity !== 'note')
        .map(
          ({ problem, at }) =>
            `${problem.severity} ${problem.code} at ${JSON.stringify(text.slice(at.start, at.end))}: ${problem.message}\n`,
        );
      golden(new URL(name.replace(/\.md$/, '.recorded.md'), folder).pathname, recordSheet(evaluation));
      golden(new URL(name.replace(/\.md$/, '.problems.txt'), folder).pathname, problems.join(''));
    });

    it(`changes nothing in ${name} the second time`, () => {
      const once = recordSheet(evaluateSheet(text));
      assert.equal(recordSheet(evaluateSheet(once)), once);
    });

    it(`keeps every other byte of ${name}, with any line end`, () => {
      const bare = (its: string) =>
        its.replace(/\r?\n\r?\n<!-- results -->[\s\S]*?<!-- end results -->/g, '').replace(/\[[^[\]]*\]\(#/g, '[](#');
      const recorded = recordSheet(evaluateSheet(text));
      assert.equal(bare(recorded), bare(text));
      const windows = text.replace(/\n/g, '\r\n');
      assert.equal(recordSheet(evaluateSheet(windows)), recorded.replace(/\n/g, '\r\n'));
    });
  }

  it('reads back what it wrote, whatever is in a text', () => {
    const nasty = [
      'a | b',
      '<!-- end results -->',
      '`x`',
      '\\\\|',
      '**b**',
      '[l](#x)',
      '<b>',
      '&amp;',
      '_i_',
      '  blanks  ',
      '',
      '±',
      '```',
    ];
    for (const text of nasty) {
      const code = `x = "${text}"\ny = x\nshall x is "other"`;
      const once = recordSheet(evaluated(code));
      const { sheet } = evaluateSheet(once);
      const [cell] = calcCells(sheet);
      assert.deepEqual(
        cell!.results?.rows?.map((row) => row.result),
        ['y', 'shall x is "other"'],
        text,
      );
      assert.equal(cell!.results?.rows?.[0]?.value.trim(), `"${text}"`.trim());
      assert.equal(recordSheet(evaluateSheet(once)), once);
    }
  });

  it('takes a results block away where nothing is left to show', () => {
    const once = recordSheet(evaluated('x = 1 A * 2'));
    assert.match(once, /<!-- results -->/);
    assert.equal(recordSheet(evaluateSheet(once.replace('1 A * 2', '2 A'))), sheetText('x = 2 A'));
  });

  it('writes nothing into a sheet with conflict markers', () => {
    const text = `${sheetText('x = 1 A * 2')}\n<<<<<<< ours\nA\n=======\nB\n>>>>>>> theirs\n`;
    assert.equal(recordSheet(evaluateSheet(text)), text);
  });
});

describe('values in prose', () => {
  const code =
    'I = 34.3951 A * 1\nU = 400 V ± 2 %\nK = first of t where tag is "M2"\nbad = K.x\nd = 2026-09-14\nt_1 = "text"\nxs = [1 A, 2 A]\nb = I > 3 A';
  const before = 'Table t — Values, invented\n\n| tag | I / A | n |\n| --- | --: | --- |\n| M1 | 3 | a |\n| M2 | 40.0 | |\n';
  function check(link: string, expected: string, codes: readonly string[] = []): void {
    it(`${link} becomes ${expected}`, () => {
      const evaluation = evaluated(code, { before: `${before}\n${link}\n` });
      const recorded = recordSheet(evaluation);
      assert.ok(recorded.includes(`\n${expected}\n`), recorded);
      const found = evaluation.problems.filter(({ problem }) => /^(value-and|link-)/.test(problem.code));
      assert.deepEqual(
        found.map(({ problem, at }) => `${problem.code} ${evaluation.sheet.text.slice(at.start, at.end)}`),
        codes,
      );
    });
  }
  check('[x](#I)', '[34.40 A](#I)');
  check('[x](#U)', '[400.0 V](#U)');
  check('[1 ± 2](#U)', '[400.0 V ± 8.0 V](#U)');
  check('[](#I)', '[34.40 A](#I)');
  check('[**x**](#I)', '[**34.40 A**](#I)');
  check('[x](#K)', '[M2](#K)');
  check('[x](#K.I)', '[40.0 A](#K.I)');
  check('[x](#K.tag)', '[M2](#K.tag)');
  check('[x](#K.n)', '[x](#K.n)');
  check('[x](#K.y)', '[x](#K.y)', ['link-leads-nowhere [x](#K.y)']);
  check('[x](#I.y)', '[x](#I.y)', ['link-leads-nowhere [x](#I.y)']);
  check('[x](#bad)', '[x](#bad)');
  check('[x](#none)', '[x](#none)', ['link-leads-nowhere [x](#none)']);
  check('[x](#t)', '[x](#t)', ['link-leads-nowhere [x](#t)']);
  check('[x](#d)', '[2026-09-14](#d)');
  check('[x](#t_1)', '[text](#t_1)');
  check('[x](#xs)', '[\\[1 A, 2 A\\]](#xs)');
  check('[x](#b)', '[yes](#b)');
  check('`[x](#I)`', '`[x](#I)`');
  check('[a]: #I', '[a]: #I');
  check('[x](other.md#I)', '[x](other.md#I)');

  it('that are the name of a heading as well are reported and stay', () => {
    const evaluation = evaluated('range = 3 A * 1', { before: '# Range\n\n[x](#range)' });
    assert.deepEqual(
      evaluation.problems.map(({ problem }) => problem.code),
      ['value-and-heading'],
    );
    assert.deepEqual(valueTexts(evaluation), ['x']);
    assert.ok(recordSheet(evaluation).includes('[x](#range)'));
  });
});
