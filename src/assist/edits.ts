// Changes of the sheet's texts, and the file as it would be with them.
import type { OpenSheet } from '../run/open-sheet.ts';
import { applyEdits } from '../sheet/edits.ts';
import { calcCells } from '../sheet/sheet.ts';
import type { Edit } from '../text/problem.ts';
import { block, type Location, SHEET, textKey } from './location.ts';

/** Replace what stands at a location. */
export interface LocatedEdit extends Location {
  readonly newText: string;
}

/** The sheet's file with edits of its blocks and its prose. */
export function fileWith(open: OpenSheet, edits: readonly LocatedEdit[]): string {
  const byText = new Map<string, Edit[]>();
  for (const { text, at, newText } of edits) {
    const known = byText.get(textKey(text));
    if (known) known.push({ at, text: newText });
    else byText.set(textKey(text), [{ at, text: newText }]);
  }
  const of = (text: Location['text']) => byText.get(textKey(text)) ?? [];
  const blocks = calcCells(open.loaded.sheet).map(({ number, code }) => {
    return { at: code, text: applyEdits(open.cells[number]?.code ?? '', of(block(number))) };
  });
  return applyEdits(open.loaded.sheet.text, [...blocks, ...of(SHEET)]);
}
