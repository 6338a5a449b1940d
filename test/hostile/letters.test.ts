// Letters that look like others and characters that turn the writing direction: told where they stand, and shown for what they are.
import assert from 'node:assert/strict';
import { auditPage } from '../../src/report/page.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { visible } from '../../src/text/visible.ts';

const block = (code: string) => `\`\`\`ampwright\n${code}\n\`\`\`\n`;
const table = (head: string, cell: string, caption = 'Types') =>
  `Table t — ${caption}  from plate "x"\n\n| ${head} | U / V |\n| --- | --: |\n| ${cell} | 1 |\n`;

const DIRECTIONS = ['\u202a', '\u202b', '\u202c', '\u202d', '\u202e', '\u2066', '\u2067', '\u2068', '\u2069'];

describe('a name', () => {
  const check = (what: string, code: string, codes: readonly string[]) =>
    it(what, () => {
      const told = evaluateSheet(block(code)).problems.map(({ problem }) => problem.code);
      assert.deepEqual(
        told.filter((c) => c !== 'no-source'),
        codes,
      );
    });
  check('with a Cyrillic letter among Latin ones is warned of', 'U_соil = 1 V', ['mixed-scripts']);
  check('with a Greek omicron among Latin letters is warned of', 'U_cοil = 1 V', ['mixed-scripts']);
  check('all in Cyrillic letters that look like another name is warned of', 'a = 1 V\nа = 2 V', ['looks-like-another']);
  check('all in Cyrillic letters that looks like none is one', 'ток = 1 A', []);
  check('that looks like a table is warned of', 'o = 1 V\nо = 2 V', ['looks-like-another']);
  check('with a full-width letter is an error', 'I_ｎ = 1 A', ['look-alike']);
  check('with a zero-width joiner is an error', 'I\u200d_n = 1 A', ['invisible-character']);
  check('with a zero-width space is an error', 'I\u200b_n = 1 A', ['invisible-character']);
  check('with a combining mark is the composed one', 'é = 1 A\ne\u0301 = 2 A', ['defined-twice']);
  check('that turns the direction is an error', 'I_n\u202e = 1 A', ['bidi-control']);
});

describe('a number', () => {
  it('in full-width digits is an error', () =>
    assert.ok(evaluateSheet(block('x = １２ V from plate "x"')).problems.some(({ problem }) => problem.code === 'look-alike')));
  it('in full-width digits is an error in a table', () =>
    assert.ok(
      evaluateSheet(table('type', 'K4').replace('| 1 |', '| １ |')).problems.some(({ problem }) => problem.code === 'cell-number'),
    ));
});

describe('a change of direction', () => {
  const places: readonly (readonly [where: string, sheet: (c: string) => string, code: string])[] = [
    ['in prose', (c) => `It draws 4${c}3 A.\n`, 'direction-control'],
    ['in a cell', (c) => table('type', `K${c}4`), 'direction-control'],
    ['in a head', (c) => table(`ty${c}pe`, 'K4'), 'direction-control'],
    ['in a caption', (c) => table('type', 'K4', `Types ${c}4K`), 'direction-control'],
    ['in front matter', (c) => `---\ntitle: Starter ${c}21-M\n---\n`, 'direction-control'],
    ['in a source', (c) => block(`x = 1 V from plate "M${c}12"`), 'bidi-control'],
    ['in a reason', (c) => block(`shall 1 V < 2 V because "it ${c}is"`), 'bidi-control'],
    ['in a comment', (c) => block(`x = 1 V from plate "x" # 2 ${c}V`), 'bidi-control'],
  ];
  for (const [where, sheet, code] of places) {
    it(`${where} is told once where it stands, and shown on the page and in the terminal`, () => {
      for (const control of DIRECTIONS) {
        const text = sheet(control);
        const evaluation = evaluateSheet(text);
        const told = evaluation.problems.filter(({ problem }) => problem.code === code);
        assert.equal(told.length, 1, JSON.stringify(control));
        assert.doesNotMatch(auditPage({ ...evaluation, version: '1.0.0' }), /[\u202a-\u202e\u2066-\u2069]/);
        assert.doesNotMatch(visible(text), /[\u202a-\u202e\u2066-\u2069]/);
      }
    });
  }

  it('is named with its code point where it was', () => {
    const page = auditPage({ ...evaluateSheet('It draws 4\u202e3 A.\n'), version: '1.0.0' });
    assert.match(page, /It draws 4\\u\{202e\}3 A\./);
  });

  it('in a CSV table is told there', () => {
    const files = { read: () => 'type,U / V\nK\u202e4,1\n' };
    const { problems } = evaluateSheet('Table t — [Types](t.csv) from report "x"\n', files);
    assert.ok(problems.some(({ problem }) => problem.code === 'direction-control'));
  });
});
