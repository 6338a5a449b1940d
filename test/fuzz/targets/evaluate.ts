// Whole sheets: read, checked, calculated, recorded; edits give the same as a new run.
import assert from 'node:assert/strict';
import { editCell } from '../../../src/run/edit-cell.ts';
import { editSheet } from '../../../src/run/edit-sheet.ts';
import { evaluateSheet, evaluationOf, type LocatedProblem } from '../../../src/run/evaluate.ts';
import { openSheet } from '../../../src/run/open-sheet.ts';
import { recordSheet } from '../../../src/run/record.ts';
import { calcCells } from '../../../src/sheet/sheet.ts';
import { filesOf } from '../../support/answers.ts';
import { checkSound } from '../../support/sound.ts';
import { maker, wordsOf } from '../grammar.ts';
import { SHEET } from '../grammars/sheet.ts';
import type { Random } from '../random.ts';
import type { Target } from '../target.ts';

const files = filesOf({
  'motors.csv': 'type,P_n / kW,seen / date\nM-12,18.5 ± 1 %,2026-10-02\nM-20,–,\n',
  'a.ampwright.md': '```ampwright\na = 3 V\nf(x) = 2 * x\n```\n',
});

export const evaluate: Target = {
  name: 'evaluate',
  make: maker(SHEET, 'sheet'),
  words: wordsOf(SHEET),
  check(text, random) {
    checkSound(evaluateSheet(text, files), files);
    if (random.chance(20)) checkEdit(text, random);
    if (random.chance(20)) checkTextEdit(text, random);
  },
};

/** A block loses a character and gets it back: the sheet says what it said before. */
function checkEdit(text: string, random: Random): void {
  const open = openSheet(text, files);
  const before = recordSheet(evaluationOf(open));
  const cells = calcCells(open.loaded.sheet);
  if (cells.length === 0) return;
  const { number, text: code } = random.of(cells);
  const at = random.below(code.length + 1);
  editCell(open, number, code.slice(0, at) + code.slice(at + 1));
  editCell(open, number, code);
  assert.equal(recordSheet(evaluationOf(open)), before, 'an edit that was taken back left something behind');
}

/** The file loses a character somewhere and gets it back: the sheet says each time what a new run says. */
function checkTextEdit(text: string, random: Random): void {
  const open = openSheet(text, files);
  const at = random.below(text.length + 1);
  for (const now of [text.slice(0, at) + text.slice(at + 1), text]) {
    editSheet(open, now);
    const [edited, fresh] = [evaluationOf(open), evaluateSheet(now, files)];
    assert.equal(recordSheet(edited), recordSheet(fresh), 'an edit of the text gives other results than a new run');
    assert.deepEqual(edited.problems.map(told), fresh.problems.map(told), 'an edit of the text gives other problems than a new run');
  }
}

const told = ({ problem, at, path }: LocatedProblem) => [problem.message, at, path];
