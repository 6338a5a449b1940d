// The checker: types and dimensions of a block beside tables and the library; each statement has an answer, without being run.
import assert from 'node:assert/strict';
import { parse } from '../../../src/language/parser.ts';
import { checkItems } from '../../../src/run/check-items.ts';
import { buildModule } from '../../../src/run/module.ts';
import { makeWorld } from '../../../src/run/world.ts';
import { readSheet } from '../../../src/sheet/read-sheet.ts';
import { maker, wordsOf } from '../grammar.ts';
import { NOTATION } from '../grammars/notation.ts';
import { checkPlace, checkProblems, type Target } from '../target.ts';

const { tables } = readSheet(`Table motors — Motors, invented

| type | P_n / kW | seen / date |
| --- | --: | --- |
| M-12 | 18.5 ± 1 % | 2026-10-02 |
| M-20 | 4 | – |

Table contactors — Range, invented

| type | I_AC3 / A | U_s / V |
| --- | --: | --: |
| K4 | 31.5 | 110 |
| K5 | 40 | 110 |
`);

export const checker: Target = {
  name: 'checker',
  make: maker(NOTATION, 'block'),
  words: wordsOf(NOTATION),
  check(text) {
    const parsed = parse(text);
    const built = buildModule('sheet', '', [{ code: text, ...parsed }], tables);
    const items = built.cells.flat();
    checkItems(makeWorld(), items, () => true);
    for (const { checked, statement } of items) {
      assert.ok(checked !== null, 'a statement was not checked');
      assert.ok(!statement.broken || checked.failed, 'a broken statement passed');
      if (checked.plan.kind === 'nothing') continue;
      checkProblems(checked.problems, text);
      for (const { at } of checked.problems) checkPlace(at, text, 'problem');
    }
    for (const problems of built.problems.values()) checkProblems(problems, text);
  },
};
