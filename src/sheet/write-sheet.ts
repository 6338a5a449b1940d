// Writes results and prose values into a sheet's text; everything else keeps its bytes.
import type { Edit } from '../text/problem.ts';
import { span } from '../text/span.ts';
import { applyEdits } from './edits.ts';
import { lineEndFrom } from './file-lines.ts';
import { type ProseValue, refreshValues } from './prose-values.ts';
import { opensResults, type ResultRow, sameResults, writeResults } from './results-block.ts';
import { type CalcCell, calcCells, type Sheet } from './sheet.ts';

/** What is to be recorded; what is left out stays as it is in the file. */
export interface Recorded {
  /** Rows by number of the calc cell. No rows: a results block that is there is removed. */
  readonly results?: ReadonlyMap<number, readonly ResultRow[]>;
  /** The text of a value in prose, or null where the link is none (or its entry has no value): it stays untouched. */
  readonly valueText?: (value: ProseValue) => string | null;
}

/**
 * The sheet's text with results and prose values as given. Results that say the same already keep their bytes.
 * A sheet with conflict markers (`sheet.conflicts`) comes back unchanged; so does a calc block that is not closed.
 */
export function writeSheet(sheet: Sheet, recorded: Recorded): string {
  return applyEdits(sheet.text, sheetEdits(sheet, recorded));
}

/** The same as `writeSheet`, as changes to ranges of the file. */
export function sheetEdits(sheet: Sheet, recorded: Recorded): readonly Edit[] {
  if (sheet.conflicts.length > 0) return [];
  const edits: Edit[] = [];
  for (const cell of calcCells(sheet)) {
    const rows = recorded.results?.get(cell.number);
    const edit = rows && cell.closed ? resultsEdit(sheet, cell, rows) : null;
    if (edit) edits.push(edit);
  }
  if (recorded.valueText) edits.push(...refreshValues(sheet.values, recorded.valueText));
  return edits;
}

function resultsEdit(sheet: Sheet, cell: CalcCell, rows: readonly ResultRow[]): Edit | null {
  const { results, fence } = cell;
  // A second results block behind the first one is for a person to look at: it must not become the first.
  if (rows.length === 0) return results && !isTwice(sheet, cell) ? { at: span(fence.end, results.at.end), text: '' } : null;
  if (results?.rows && sameResults(results.rows, rows)) return null;
  const lineEnd = lineEndFrom(sheet.text, fence.start);
  const block = writeResults(rows, lineEnd);
  return results ? { at: results.at, text: block } : { at: span(fence.end, fence.end), text: lineEnd + lineEnd + block };
}

function isTwice({ cells }: Sheet, { index }: CalcCell): boolean {
  return opensResults(cells[index + 1]?.raw.split(/[\r\n]/, 1)[0] ?? '');
}
