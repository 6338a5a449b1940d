// The sheet itself, for page and paper alike: prose with its values up to date, and under each block its ledger.
import { applyEdits } from '../sheet/edits.ts';
import { type ProseValue, refreshValues } from '../sheet/prose-values.ts';
import type { ProseCell, SheetCell } from '../sheet/sheet.ts';
import { anchor } from '../view/ledger/parts.ts';
import { ledger } from '../view/ledger.ts';
import type { SheetView } from '../view/model.ts';
import { type ElementNode, element } from '../view/node.ts';
import type { ReportInput } from './input.ts';
import type { Places } from './prose.ts';
import { blockId } from './registers/register.ts';

/** One cell of the sheet. */
export type BodyPart =
  /** Markdown with the values of this run. */
  | { readonly kind: 'prose'; readonly markdown: string }
  /** Prose with conflict marks of a merge in it, as it stands in the file. */
  | { readonly kind: 'conflict'; readonly text: string }
  | { readonly kind: 'block'; readonly section: ElementNode };

/** The cells in the order of the sheet; blocks without results are left out. */
export function bodyParts(input: ReportInput, view: SheetView): readonly BodyPart[] {
  const ledgers = new Map(view.cells.map((cell) => [cell.cell, cell]));
  const valuesIn = valuesByCell(input);
  return input.sheet.cells.flatMap((cell): BodyPart[] => {
    if (cell.kind === 'front matter') return [];
    if (cell.kind === 'prose')
      return [
        cell.conflict ? { kind: 'conflict', text: cell.text } : { kind: 'prose', markdown: current(cell, valuesIn.get(cell) ?? [], input) },
      ];
    const own = ledgers.get(cell.number);
    if (!own) return [];
    const place = { class: 'aw-block', id: blockId(cell.number + 1), 'aria-label': `Block ${cell.number + 1}` };
    return [{ kind: 'block', section: element('section', place, ledger(own)) }];
  });
}

/** Where the links of the sheet's prose lead. */
export function proseLinks({ sheet, result }: ReportInput): Places {
  const headings = new Set(sheet.values.filter((v) => v.heading).map((v) => v.name));
  return { entry: (name) => (result.entries.has(name) && !headings.has(name) ? anchor(name) : null) };
}

/** The values in prose by the cell that they stand in; values and cells are in the order of the file. */
function valuesByCell({ sheet }: ReportInput): ReadonlyMap<SheetCell, readonly ProseValue[]> {
  let next = 0;
  return new Map(
    sheet.cells.map((cell) => {
      const own: ProseValue[] = [];
      for (let value = sheet.values[next]; value && value.at.start < cell.at.end; value = sheet.values[++next]) own.push(value);
      return [cell, own];
    }),
  );
}

// A value in prose is always the one of this run, whatever the file still says.
function current(cell: ProseCell, own: readonly ProseValue[], { result }: ReportInput): string {
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
