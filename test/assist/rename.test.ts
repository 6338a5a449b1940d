// Rename: what the sheet says afterwards, and what is refused with which reason.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { fileWith } from '../../src/assist/edits.ts';
import type { Spot } from '../../src/assist/location.ts';
import { rename, renameTarget } from '../../src/assist/rename.ts';
import type { OpenSheet } from '../../src/run/open-sheet.ts';
import { opened, same } from './support.ts';

/** Renames the name at the cursor; gives the block (or the whole file, where the text is one), or the reason. */
function renamed(marked: string, name: string): string {
  const { open, spot } = opened(marked);
  const answer = rename(open, spot, name);
  if ('refused' in answer) return answer.refused;
  const file = fileWith(open, answer);
  return marked.includes('```') ? file : file.slice(file.indexOf('```ampwright\n') + 13, -5);
}

function renamedFile(open: OpenSheet, spot: Spot, name: string): string {
  const answer = rename(open, spot, name);
  if ('refused' in answer) throw new Error(answer.refused);
  return fileWith(open, answer);
}

const check = (marked: string, name: string, expected: string) => same(renamed(marked, name), expected);

describe('rename', () => {
  it('changes the definition and every use of it', () => {
    check('a = 2 A\nb = 2 * |a\nshall a <= 3 A', 'I_1', 'I_1 = 2 A\nb = 2 * I_1\nshall I_1 <= 3 A');
    check('η|_n = 92 %\nx = 1 / eta_n', 'eff', 'eff = 92 %\nx = 1 / eff');
    check('|f(x) = 2 * x\ny = f(f(3))', 'g', 'g(x) = 2 * x\ny = g(g(3))');
    check('instrument |M ± 1 %\nU = 2 V by M', 'DMM_7', 'instrument DMM_7 ± 1 %\nU = 2 V by DMM_7');
  });

  it('leaves texts, comments and other things of the same name alone', () => {
    check('a = 2  "a" # a\nf(a) = a\ny = |a + f(a = a)', 'b', 'b = 2  "a" # a\nf(a) = a\ny = b + f(a = b)');
    check('f(|a) = a\na = 2\ny = f(a = a)', 'x', 'f(x) = x\na = 2\ny = f(x = a)');
    check('y = |k * 2 with k = 3\nz = k with k = 1', 'q', 'y = q * 2 with q = 3\nz = k with k = 1');
  });

  it('changes tables, columns and values in prose', () => {
    check(
      `
It takes [40 A](#K.I_AC3), [K5](#K).

Table units — Invented

| type | I_AC3 / A |
| --- | --: |
| K5 | 40 |

\`\`\`ampwright
K = least I_AC3 of units where |I_AC3 >= 3 A
\`\`\`
`,
      'I_e',
      `
It takes [40 A](#K.I_e), [K5](#K).

Table units — Invented

| type | I_e / A |
| --- | --: |
| K5 | 40 |

\`\`\`ampwright
K = least I_e of units where I_e >= 3 A
\`\`\`
`,
    );
    check('\nIt is [3 A](#|I).\n\n```ampwright\nI = 3 A\n```\n', 'I_n', '\nIt is [3 A](#I_n).\n\n```ampwright\nI_n = 3 A\n```\n');
    check(
      '\nTable u — Invented\n\n| A |\n| - |\n| x |\n\n```ampwright\nx = first of |u\n```\n',
      'w',
      '\nTable w — Invented\n\n| A |\n| - |\n| x |\n\n```ampwright\nx = first of w\n```\n',
    );
    check('wires.|G = 1 / R\nx = sum(wires.G)', 'S', 'wires.S = 1 / R\nx = sum(wires.S)');
  });

  it('refuses what can be no name', () => {
    check('|a = 2', '2nd', '`2nd` is no name: a name begins with a letter or `_`, and letters, digits and `_` follow');
    check('|a = 2', 'motor current', '`motor current` is no name: a name begins with a letter or `_`, and letters, digits and `_` follow');
    check('|a = 2', 'where', "`where` is a word of the notation and can't be a name");
    check('|a = 2', 'sqrt', "`sqrt` belongs to the mathematics and can't be defined again");
    check('|a = 2', 'π', "`pi` belongs to the mathematics and can't be defined again");
  });

  it('refuses a name that is taken', () => {
    check('|a = 2\nb = 3', 'b', '`b` is defined in this sheet already');
    check('|a = 2', 'wires', '`wires` is defined in this sheet already');
    check('wires.G = |R', 'A', 'Table `wires` has a column `A` already');
    check('use "panel-standard.ampwright.md"\n|a = 2', 'T_panel', '`T_panel` comes from `panel-standard.ampwright.md` already');
  });

  it('refuses a name that would be read as something else', () => {
    check('f(|a, b) = a + b', 'b', 'With the name `b` there would be a new problem: `b` is defined twice; the first definition stands');
    check('b = 1\nf(|a) = a + b', 'b', 'With the name `b` `b` would mean something else where it is used already');
    check(
      'b = 1\ny = |k with k = 3',
      'b',
      "With the name `b` there would be a new problem: this `b` hides the sheet's `b` in this statement",
    );
    check(
      '|a = 2\ny = the R of wires where row.A == a * 1 mm²',
      'R',
      'With the name `R` there would be a new problem: `R` is a column here and a name of the sheet; write `row.R` for the column, or give the other one a name of its own with `with`',
    );
    check(
      '|a = 2 A\nI = fla_3ph(18.5 kW, 400 V, 92 %, 0.84)',
      'fla_3ph',
      'With the name `fla_3ph` there would be a new problem: `fla_3ph` is no function; to multiply write `fla_3ph * (…)`',
    );
  });

  it("refuses what is not the sheet's own", () => {
    check('x = |fla_3ph(18.5 kW, 400 V, 92 %, 0.84)', 'f', '`fla_3ph` belongs to the library');
    check('x = |sqrt(2)', 'f', '`sqrt` belongs to the mathematics');
    check('x = 3 |V', 'f', '`V` is a unit');
    check('use "panel-standard.ampwright.md"\nx = |T_panel', 'f', '`T_panel` is defined in `panel-standard.ampwright.md`; rename it there');
    check(
      '\nTable motors — [The mill](motors.csv)\n\n```ampwright\nx = sum(motors.|P_n)\n```\n',
      'f',
      '`P_n` is defined in `motors.csv`; rename it there',
    );
    check('x = |y', 'f', '`y` is not defined');
    check('x = 3 + |', 'f', 'There is no name here');
    check('K = first of wires where |row.A > 1 mm²', 'f', '`row` is a word of the notation');
  });

  it('shows the name as it is written', () => {
    const { open, spot } = opened('η = 92 %\nx = |η');
    assert.deepEqual(renameTarget(open, spot), { at: { start: 13, end: 14 }, name: 'η' });
  });

  it('and back gives the same sheet, whatever was renamed', () => {
    const code =
      'a = 2 A\nf(x: A, y) = x * y + k with k = a\nK = least I_AC3 of contactors where I_AC3 >= a\nb = f(x = K.I_AC3, y = 2) + root of t - a over t from 0 A to 9 A\nshall row.R > 0 mohm/m for each wires';
    const places = [...code.matchAll(/\b(?:a|f|x|y|k|K|t|b|I_AC3|R|contactors|wires)\b/g)].map((m) => m.index);
    fc.assert(
      fc.property(fc.constantFrom(...places), (at) => {
        const name = /^\w+/.exec(code.slice(at))![0];
        const there = opened(`${code.slice(0, at)}|${code.slice(at)}`);
        const file = renamedFile(there.open, there.spot, 'brand_new');
        assert.ok(file.includes('brand_new'));
        const back = opened(file.replace('brand_new', '|brand_new'));
        same(renamedFile(back.open, back.spots[0]!, name), there.open.loaded.sheet.text);
      }),
      { numRuns: places.length },
    );
  });
});
