// The sheet itself on the page: prose with its values up to date, and under each block its ledger.
import { applyEdits } from '../../sheet/edits.ts';
import { type ProseValue, refreshValues } from '../../sheet/prose-values.ts';
import type { ProseCell } from '../../sheet/sheet.ts';
import { anchor } from '../../view/ledger/parts.ts';
import { ledger } from '../../view/ledger.ts';
import type { SheetView } from '../../view/model.ts';
import { element, escapeText, toHtml } from '../../view/node.ts';
import type { ReportInput } from '../input.ts';
import { blockId } from '../registers/register.ts';
import { proseRenderer } from './prose.ts';

/** The cells of the sheet in order, as HTML. */
export function body(input: ReportInput, view: SheetView): string {
  const { sheet, result } = input;
  const entry = (name: string) =>
    result.entries.has(name) && !sheet.values.some((v) => v.name === name && v.heading) ? anchor(name) : null;
  const prose = proseRenderer({ entry }, sheet.frontMatter.title);
  const ledgers = new Map(view.cells.map((cell) => [cell.cell, cell]));
  return sheet.cells
    .map((cell) => {
      if (cell.kind === 'front matter') return '';
      if (cell.kind === 'prose') return cell.conflict ? `<pre>${escapeText(cell.text)}</pre>` : prose.render(current(cell, input));
      const own = ledgers.get(cell.number);
      return own
        ? toHtml(
            element('section', { class: 'aw-block', id: blockId(cell.number + 1), 'aria-label': `Block ${cell.number + 1}` }, ledger(own)),
          )
        : '';
    })
    .join('\n');
}

// A value in prose is always the one of this run, whatever the file still says.
function current(cell: ProseCell, { sheet, result }: ReportInput): string {
  const own = sheet.values.filter((v) => v.at.start >= cell.at.start && v.at.end <= cell.at.end);
  const text = ({ name, column, withUncertainty }: ProseValue) => {
    const shown = column === null ? result.entries.get(name)?.value : null;
    if (shown) return withUncertainty ? shown.text : shown.short;
    return column === null && result.entries.has(name) ? 'not calculated' : null;
  };
  const edits = refreshValues(own, text).map((edit) => ({
    ...edit,
    at: { start: edit.at.start - cell.at.start, end: edit.at.end - cell.at.start },
  }));
  return applyEdits(cell.text, edits);
}
