// What is seen without asking: outline, folds, values at the line's end, and how a block stands.
import assert from 'node:assert/strict';
import { blockStatus } from '../../src/assist/block-status.ts';
import { folds } from '../../src/assist/folding.ts';
import { inlayValues } from '../../src/assist/inlay-values.ts';
import { block, SHEET, type TextId } from '../../src/assist/location.ts';
import { symbols } from '../../src/assist/symbols.ts';
import { opened, same } from './support.ts';

describe('the outline', () => {
  const check = (code: string, expected: readonly string[], text: TextId = block(0)) => {
    const { open } = opened(code);
    const lines = symbols(open, text).flatMap((symbol) =>
      [symbol, ...symbol.children].map((s) => `${s.kind}: ${s.name}${s.detail && ` | ${s.detail}`}`),
    );
    assert.deepEqual(lines, expected);
  };

  it('lists statements by name, with what they came to', () => {
    check('a = 2 A  from plate "p"\nb = 2 * a\nK = least I_AC3 of contactors where I_AC3 >= 35 A\nshall b <= 5 A\nwires.G = 1 / R', [
      'input: a | 2 A',
      'computed: b | 4.000 A',
      'computed: K | K5',
      'requirement: shall b <= 5 A | holds, 20 % in hand',
      'column: wires.G | [75.19 S·m, 125.3 S·m]',
    ]);
  });

  it('lists functions by their form, and curves, actions, instruments and uses', () => {
    check(
      'f(x: A, n): A = n * x\ncurve f(x, 2) over x from 0 A to 1 A\ntabulate f(x, 2): mA over x from 0 A to 1 A step 0.5 A\ninstrument M ± 1 %\naction "Renew K4"\nuse "panel-standard.ampwright.md"',
      [
        'function: f(x: A, n): A',
        'curve: curve f(x, 2)',
        'tabulation: tabulate f(x, 2): mA',
        'instrument: M',
        'action: Renew K4',
        'use: use panel-standard.ampwright.md',
      ],
    );
  });

  it('keeps what has no value, and says why', () => {
    check('a = 2 +\nb = 2 * a\nc == 3\n+ + +\naction ""', [
      'computed: a | error: A value is missing behind `+`',
      'computed: b | not calculated: needs a',
      'computed: c',
    ]);
  });

  it('lists the tables of the prose with their columns', () => {
    check(
      '\nTable u — Invented\n\n| b / A | day / date | c |\n| --: | - | - |\n| 1 | 2026-01-02 | x |\n\nTable motors — [The mill](motors.csv)\n\n```ampwright\nI = 3 A\n```\n',
      ['table: u | 1 row', 'column: b | A', 'column: day | date', 'column: c | text', 'table: motors | motors.csv'],
      SHEET,
    );
  });
});

describe('folding', () => {
  const check = (code: string, expected: readonly string[], text: TextId = block(0)) => {
    const { open } = opened(code);
    const content = text.kind === 'block' ? open.cells[0]!.code : open.loaded.sheet.text;
    const found = folds(open, text).map(
      ({ kind, at }) =>
        `${kind}: ${content.slice(at.start, at.end).split('\n').length} lines from ${content.slice(at.start).split('\n')[0]}`,
    );
    assert.deepEqual(found, expected);
  };

  it('takes statements and comments of more than one line', () => {
    check('# one\n# two\na = 2 A # not this\n# nor this\nf(x) = x\n  "doubled"\n  needs x > 0', [
      'comment: 2 lines from # one',
      'statement: 3 lines from f(x) = x',
    ]);
  });

  it('takes front matter, tables and recorded results of the file', () => {
    check(
      '---\nampwright: 1\n---\n\n# A\n\nTable u — Invented\n\n| b |\n| - |\n| 1 |\n\n```ampwright\na = 2 * 3\n```\n\n<!-- results -->\n| result | value | note |\n| :-- | --: | :-- |\n| a | 6 | |\n<!-- end results -->\n',
      ['front matter: 3 lines from ---', 'table: 5 lines from Table u — Invented', 'results: 5 lines from <!-- results -->'],
      SHEET,
    );
  });
});

describe("values at the line's end", () => {
  const check = (code: string, expected: string) => {
    const { open } = opened(code);
    const lines = inlayValues(open, 0).map(({ offset, text }) => `${code.slice(0, offset).split('\n').at(-1)} → ${text}`);
    same(lines.join('\n'), expected);
  };

  it('are those of what is computed or decided', () => {
    check(
      'a = 2 A ± 1 %\nb = 2 * a # twice\nshall b <= 5 A\n  because "it must"\nf(x) = x\nc = unknown\nd = c',
      'b = 2 * a # twice → = 4.000 A ± 0.040 A\nshall b <= 5 A → holds, 20 % in hand\nd = c → not calculated: needs c',
    );
  });

  it('are as they stand in columns and choices', () => {
    check('K = first of contactors\nwires.n = 2 * 3', 'K = first of contactors → = K4\nwires.n = 2 * 3 → = [6.000, 6.000]');
  });
});

describe('how a block stands', () => {
  const check = (code: string, expected: string | null) => {
    const status = blockStatus(opened(code).open, 0);
    assert.equal(status && `${status.level}: ${status.text}`, expected);
  };

  it('is one sentence, told by the worst of it', () => {
    check('a = 2 A  from plate "p"\nshall a <= 3 A\nshall a <= 4 A', 'holds: 2 hold');
    check('a = 2 A  from plate "p"\nshall a <= 3 A\nshould a >= 4 A', 'fails: 1 holds · 1 fails');
    check('a = 2 A ± 10 %  from plate "p"\nshall a <= 2.01 A', 'undecided: 1 is undecided');
    check('a = 2 A\nb = 3 A', 'warning: 2 inputs without source');
    check('a = x\nshall a <= 3 A', 'error: 1 error · 1 is not calculated');
    check('f(x) = 2 * x', null);
  });

  it('counts a missing source as an error where the sheet asks for sources', () => {
    check('---\nampwright: 1\nsources: required\n---\n\n```ampwright\na = 2 A\n```\n', 'error: 1 input without source');
  });
});
