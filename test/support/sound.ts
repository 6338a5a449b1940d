// What holds of the answer to any sheet, whatever its text.
import assert from 'node:assert/strict';
import { evaluateSheet, type SheetEvaluation } from '../../src/run/evaluate.ts';
import { NO_FILES, type SheetFiles } from '../../src/run/files.ts';
import { recordSheet } from '../../src/run/record.ts';

/** `files` are those that the sheet was evaluated with. */
export function checkSound(evaluation: SheetEvaluation, files: SheetFiles = NO_FILES): void {
  const { sheet, result, problems } = evaluation;
  for (const { problem, at, path } of problems) {
    if (path === null) assert.ok(0 <= at.start && at.start <= at.end && at.end <= sheet.text.length, problem.message);
    assert.match(problem.message, /^\S[\s\S]*[^.!]$/u);
    assert.ok(!/undefined|NaN|\[object|null\b/.test(problem.message.replace(/`[^`]*`|"[^"]*"/g, '…')), problem.message);
  }
  for (const cell of result.cells)
    for (const statement of cell.statements) {
      for (const { at } of statement.problems) assert.ok(0 <= at.start && at.end <= cell.code.length);
      if (statement.kind !== 'entry') continue;
      const { value, missing, problems: own } = statement;
      assert.ok((value === null) === (missing !== null), statement.name);
      // Of what has no value an error or the name of what it needs is told, here or in the file.
      if (missing?.kind === 'error') assert.ok(own.some((p) => p.severity === 'error') || problems.length > 0, statement.name);
      if (missing?.kind === 'not calculated') assert.ok(missing.because.length > 0);
      if (value?.kind === 'quantity') assert.ok(Number.isFinite(value.si) && !/NaN|nfinity/.test(value.text), value.text);
    }
  const once = recordSheet(evaluation);
  assert.equal(recordSheet(evaluateSheet(once, files)), once);
}
