// Whole sheets: read, checked, calculated, recorded; edits give the same as a new run.
import assert from 'node:assert/strict';
import { editCell } from '../../../src/run/edit-cell.ts';
import { evaluateSheet, evaluationOf } from '../../../src/run/evaluate.ts';
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
