// What leaves a sheet: the page, CSV, JSON, and the comparison of two sheets, whatever stands in them.
import { comparisonsMarkdown } from '../../../src/report/comparison/markdown.ts';
import { comparisonsPage } from '../../../src/report/comparison/page.ts';
import { sheetCsv } from '../../../src/report/csv.ts';
import { evaluationJson } from '../../../src/report/json.ts';
import { auditPage } from '../../../src/report/page.ts';
import { comparedSheet } from '../../../src/review/comparisons.ts';
import { evaluateSheet } from '../../../src/run/evaluate.ts';
import { checkMarkdown, checkPage } from '../../support/safe-output.ts';
import { maker, wordsOf } from '../grammar.ts';
import { SHEET } from '../grammars/sheet.ts';
import { mutate } from '../mutate.ts';
import type { Target } from '../target.ts';

const words = wordsOf(SHEET);

export const exports: Target = {
  name: 'exports',
  make: maker(SHEET, 'sheet'),
  words,
  check(text, random) {
    const now = evaluateSheet(text);
    checkPage(auditPage({ ...now, version: '1.0.0' }));
    sheetCsv(now);
    JSON.parse(evaluationJson('a.ampwright.md', now));
    const old = evaluateSheet(mutate(text, words, text, random));
    const compared = { old: 'a', new: 'b', sheets: [comparedSheet('a.ampwright.md', null, old, now)] };
    checkPage(comparisonsPage(compared));
    checkMarkdown(comparisonsMarkdown(compared));
  },
};
