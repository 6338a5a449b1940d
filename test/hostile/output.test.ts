// Texts that would do something where they are shown: in a spreadsheet, in a terminal, on a page, in a comment.
import assert from 'node:assert/strict';
import { comparisonsMarkdown } from '../../src/report/comparison/markdown.ts';
import { field } from '../../src/report/csv.ts';
import { auditPage } from '../../src/report/page.ts';
import { comparedSheet } from '../../src/review/comparisons.ts';
import { openBatch } from '../../src/run/batch.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { NO_FILES } from '../../src/run/files.ts';
import { openSheet } from '../../src/run/open-sheet.ts';
import { fieldText, harmless } from '../../src/sheet/csv-field.ts';
import { visible } from '../../src/text/visible.ts';
import { checkMarkdown, checkPage } from '../support/safe-output.ts';
import { ATTACKS, attackedSheet } from './attacks.ts';

describe('a field of an exported CSV', () => {
  const check = (value: string | number, expected: string) => it(JSON.stringify(value), () => assert.equal(field(value), expected));
  check('=1+1', "'=1+1");
  check('+A1', "'+A1");
  check('-1', '-1');
  check('+1.5e3', '+1.5e3');
  check('-1.5 ± 1 %', '-1.5 ± 1 %');
  check('-', '-');
  check('-1+1', "'-1+1");
  check('-5 kW', "'-5 kW");
  check("=cmd|' /C calc'!A0", "'=cmd|' /C calc'!A0");
  check('=HYPERLINK("https://evil.invalid","x")', '"\'=HYPERLINK(""https://evil.invalid"",""x"")"');
  check('＝1+1', "'＝1+1");
  check('＠x', "'＠x");
  check('@SUM(A1)', "'@SUM(A1)");
  check('\t=1', "'\t=1");
  check('\r=1', '"\'\r=1"');
  check(-1.5, '-1.5');
  check('M-12', 'M-12');
  check("it's", "it's");
  check("'=1", "''=1");

  it('gives every text back where one apostrophe is left out, and no two texts are one', () => {
    const texts = ['=', "'=", "''=", "'", 'a', "'a", '+', '-', "'-", '-1', "'-1", "''-1", '@x', '+x', '--', '＋1', '\t=1', '-1 ± 2'];
    assert.deepEqual(
      texts.map((text) => fieldText(harmless(text))),
      texts,
    );
    assert.equal(new Set(texts.map(harmless)).size, texts.length);
  });
});

describe('a text in a terminal', () => {
  for (const hidden of ['\u001b]0;title\u0007', '\u001b[2J', '\u009b31m', '\u202e', '\u2066', '\u061c', '\u200b', '\b', '\u2028', '\ufeff'])
    it(`shows ${JSON.stringify(hidden)} instead of obeying it`, () => {
      const shown = visible(`a${hidden}b`);
      assert.doesNotMatch(shown, /[\u0000-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/);
      assert.match(shown, /\\u\{/);
    });
});

describe('markup in a sheet', () => {
  for (const attack of ATTACKS) {
    const [old, now] = [evaluateSheet(attackedSheet(attack, '1 V')), evaluateSheet(attackedSheet(attack, '3 V'))];
    it(`${attack} stays a text on the page`, () => checkPage(auditPage({ ...now, version: '1.0.0' })));
    it(`${attack} stays a text in a comment`, () => {
      const markdown = comparisonsMarkdown({
        old: attack,
        new: 'now',
        sheets: [comparedSheet(`${attack}.ampwright.md`, attack, old, now)],
      });
      checkMarkdown(markdown);
    });
  }
});

describe('names like those of objects', () => {
  it('are entries, columns and keys like any other', () => {
    const { result, problems, sheet } = evaluateSheet(
      '---\n__proto__: x\nconstructor: y\n---\n\nTable t — T from plate "x"\n\n| __proto__ / V | constructor / A | toString |\n| --- | --- | --- |\n| 1 | 2 | x |\n\n```ampwright\n__proto__ = 3   from plate "x"\nconstructor = t.__proto__\nx = __proto__ + sum(t.constructor) / 1 A\n```\n',
    );
    assert.equal(result.entries.get('__proto__')?.value?.text, '3');
    assert.equal(result.entries.get('x')?.value?.text, '5.000');
    assert.equal(sheet.tables[0]?.columns.length, 3);
    assert.deepEqual(
      problems.map(({ problem }) => problem.code),
      ['front-matter-key-unknown', 'front-matter-key-unknown'],
    );
    assert.equal(({} as Record<string, unknown>)['x'], undefined);
  });
});

describe('heads of a batch like names of objects', () => {
  const SHEET = '```ampwright\n__proto__ = 3 V   from plate "x"\nconstructor = 2 * __proto__\nshall constructor <= 9 V\n```\n';
  const heads = (texts: readonly string[]) => texts.map((text, i) => ({ text, at: { start: i, end: i } }));

  it('replace inputs of that name, and are carried along where there is none', () => {
    const { batch, problems } = openBatch(openSheet(SHEET, NO_FILES), heads(['__proto__ / V', 'toString', 'hasOwnProperty / A']));
    assert.deepEqual(problems, []);
    assert.deepEqual([batch!.replaced, batch!.carried], [['__proto__'], ['toString', 'hasOwnProperty / A']]);
    assert.equal(batch!.heads[0], 'constructor / V');
    assert.deepEqual(
      ['4', '5'].map((U) => batch!.run([U, 'x', 'y'])).map(({ cells, verdict }) => [cells[0], verdict]),
      [
        [8, 'holds'],
        [10, 'fails'],
      ],
    );
  });

  it('are refused where the results have that name', () => {
    const { batch, problems } = openBatch(openSheet(SHEET, NO_FILES), heads(['__proto__ / V', 'constructor']));
    assert.equal(batch, null);
    assert.equal(problems.length, 1);
  });
});

describe('aliases in front matter', () => {
  it('are not followed, however many of them would grow out of each other', () => {
    const lines = Array.from(
      { length: 30 },
      (_, i) =>
        `k${i}: &a${i} [${
          i === 0
            ? 'x'
            : Array(9)
                .fill(`*a${i - 1}`)
                .join(', ')
        }]`,
    );
    const { problems } = evaluateSheet(`---\n${lines.join('\n')}\ntitle: *a29\n---\n`);
    assert.ok(problems.length > 0 && problems.length < 400);
  });
});
