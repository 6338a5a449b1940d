// Quick fixes: what is offered for a problem, and the text with it.
import assert from 'node:assert/strict';
import { declareUnit } from '../../src/assist/declare-unit.ts';
import { fileWith } from '../../src/assist/edits.ts';
import { type Fix, fixesOf } from '../../src/assist/fixes.ts';
import { block, SHEET } from '../../src/assist/location.ts';
import { SOURCE_KINDS } from '../../src/language/token.ts';
import { problemsOfFile, resultOf } from '../../src/run/evaluate.ts';
import type { OpenSheet } from '../../src/run/open-sheet.ts';
import { opened } from './support.ts';

/** The fixes of all problems of a sheet, each with the lines that it changes. */
function fixed(open: OpenSheet): readonly string[] {
  const inBlock = resultOf(open).cells.flatMap(({ cell, problems }) => problems.flatMap((p) => fixesOf(open, block(cell), p)));
  const inFile = problemsOfFile(open).flatMap((p) => fixesOf(open, SHEET, p));
  return [...inBlock, ...inFile].map((fix) => `${fix.title} → ${changed(open, fix)}`);
}

function changed(open: OpenSheet, { edits }: Fix): string {
  const before = fileWith(open, []).split('\n');
  const after = fileWith(open, edits).split('\n');
  return after.filter((line, i) => line !== before[i]).join('\n');
}

function check(code: string, expected: readonly string[]): void {
  assert.deepEqual(fixed(opened(code).open), expected);
}

const SOURCE = `from \${1|${SOURCE_KINDS.join(',')}|} "\${2}"`;

describe('quick fixes', () => {
  it('add the unit that is wanted', () => {
    check('I_n: A = 34  from plate "p"', ['Add the unit: `34 A` → I_n: A = 34 A  from plate "p"']);
    check('U = 400 V  from plate "p"\nshall U <= 420', ['Add the unit: `420 V` → shall U <= 420 V']);
    check('U = 400 V  from plate "p"\nx = 5 + U', ['Add the unit: `5 V` → x = 5 V + U']);
    check('f(U: V) = 2 * U\nx = f(400)', ['Add the unit: `400 V` → x = f(400 V)']);
  });

  it('declare the unit that a value has', () => {
    check('U = 400 V  from plate "p"\nx: A = 2 * U', ['Declare it in `V` → x: V = 2 * U']);
  });

  it('add a source behind the value, before what follows it', () => {
    check('I = 34 A', [`Add a source → I = 34 A  ${SOURCE}`]);
    check('I = 34 A ± 2 %  "full load"  # from the plate', [`Add a source → I = 34 A ± 2 %  ${SOURCE}  "full load"  # from the plate`]);
    check('I = [1 A, 2 A]', [`Add a source → I = [1 A, 2 A]  ${SOURCE}`]);
  });

  it('add a source to a table', () => {
    check('\nTable u — Invented  \n\n| b / A |\n| --: |\n| 1 |\n\n```ampwright\n```\n', [`Add a source → Table u — Invented  ${SOURCE}  `]);
  });

  it('put the multiplication sign, and the name that was meant', () => {
    check('I_n = 34 A  from plate "p"\nx = 2 I_n', ['Write `2 * I_n` → x = 2 * I_n']);
    check('I_n = 34 A  from plate "p"\nx = I_m', ['Write `I_n` → x = I_n']);
  });

  it('free words of a link that leads nowhere', () => {
    check('\nIt draws [34 A](#I_m).\n\n```ampwright\n```\n', ['Remove the link, keep its words → It draws 34 A.']);
  });
});

describe('declaring a unit', () => {
  const check = (marked: string, expected: string | null) => {
    const { open, spot } = opened(marked);
    const fix = declareUnit(open, spot);
    assert.equal(fix && changed(open, fix), expected);
  };

  it('writes the unit in which the value is shown', () => {
    check('U = 400 V\nS| = U * 34 A', 'S: kW = U * 34 A');
    check('xs = [1 V, 2 V]\nys| = xs * 2', 'ys: [V] = xs * 2');
  });

  it('is offered for nothing else', () => {
    check('U| = 400 V', null);
    check('U = 400 V\nx|: V = 2 * U', null);
    check('U = 400 V\nn| = U / 1 V', null);
    check('x| = y', null);
    check('shall| 1 <= 2', null);
  });
});
