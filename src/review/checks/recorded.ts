// Results and values in prose that the file has otherwise than they come out today.
import { recorded } from '../../run/record.ts';
import { calcCells } from '../../sheet/sheet.ts';
import { sheetEdits } from '../../sheet/write-sheet.ts';
import { positionAt } from '../../text/lines.ts';
import type { Review } from '../check.ts';
import { type Finding, finding } from '../finding.ts';

/** What recording would change is stale: a results block, or a value in prose. */
export function recordedResults({ evaluation }: Pick<Review, 'evaluation'>): readonly Finding[] {
  const { sheet } = evaluation;
  const { results, valueText } = recorded(evaluation);
  const found: Finding[] = [];
  for (const edit of sheetEdits(sheet, { results })) {
    const cell = calcCells(sheet).find(
      ({ fence, results: block }) => fence.end <= edit.at.start && edit.at.end <= (block?.at.end ?? fence.end),
    );
    const line = positionAt(sheet.lines, cell?.fence.start ?? edit.at.start).line + 1;
    found.push(
      cell?.results
        ? finding(
            'results-stale',
            'finding',
            cell.results.at,
            `these results are not what the block in line ${line} gives; record them anew`,
          )
        : finding('results-not-recorded', 'finding', cell?.fence ?? edit.at, `the results of the block in line ${line} are not recorded`),
    );
  }
  for (const edit of sheetEdits(sheet, { valueText })) {
    const written = sheet.text.slice(edit.at.start, edit.at.end);
    found.push(finding('value-stale', 'finding', edit.at, `the text says ${written}, the sheet gives ${edit.text}; record the sheet anew`));
  }
  return found;
}
