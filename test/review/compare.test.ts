// Comparing two sheets: what is told, and what is no change.
import assert from 'node:assert/strict';
import { comparedTexts, FILES, readCases, told, writeCases } from './fixtures.ts';

const rewrite = process.env['UPDATE'] === '1';

describe('what changed between two sheets', () => {
  for (const { about, path } of FILES) {
    describe(about, () => {
      const cases = readCases(path);
      for (const { title, old, new: now, changes } of cases)
        it(title, () => {
          if (!rewrite) assert.equal(told(comparedTexts(old, now)), changes);
        });
      after(() => {
        if (rewrite)
          writeCases(
            path,
            cases.map((one) => ({ ...one, changes: told(comparedTexts(one.old, one.new)) })),
          );
      });
    });
  }
});
