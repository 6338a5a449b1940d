// The finished sheets of samples/ have no errors, their results are recorded as they come out, and they say that they are invented.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { workspaceFiles } from '../src/node/files.ts';
import { findSheets } from '../src/node/find-sheets.ts';
import { evaluateSheet } from '../src/run/evaluate.ts';
import { recordSheet } from '../src/run/record.ts';

const { sheets } = await findSheets(['samples']);

describe('the samples', () => {
  it('are there', () => assert.ok(sheets.includes('samples/starter-sizing.ampwright.md')));

  for (const path of sheets)
    describe(path, () => {
      const text = readFileSync(path, 'utf8');
      const evaluation = evaluateSheet(text, workspaceFiles(path));

      it('has no errors and no warnings', () =>
        assert.deepEqual(
          evaluation.problems
            .filter(({ problem }) => problem.severity !== 'note')
            .map(({ problem }) => `${problem.code}: ${problem.message}`),
          [],
        ));

      it('has its results and the values in its prose recorded', () => assert.equal(recordSheet(evaluation), text));

      it('says that it is invented', () => assert.match(text, /Lindrow Mill, .* (?:are|is) invented/s));
    });
});
