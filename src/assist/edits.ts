// Changes of the sheet's texts, and the file as it would be with them.
import type { OpenSheet } from '../run/open-sheet.ts';
import { calcCells } from '../sheet/sheet.ts';
import type { Edit } from '../text/problem.ts';
import { block, type Location, SHEET, sameText } from './location.ts';

/** Replace what stands at a location. */
export interface LocatedEdit extends Location {
  readonly newText: string;
}

/** A text with edits that do not overlap. */
export function edited(text: string, edits: readonly Edit[]): string {
  const backwards = [...edits].sort((a, b) => b.at.start - a.at.start || b.at.end - a.at.end);
  return backwards.reduce((t, { at, text: by }) => t.slice(0, at.start) + by + t.slice(at.end), text);
}

/** The sheet's file with edits of its blocks and its prose. */
export function fileWith(open: OpenSheet, edits: readonly LocatedEdit[]): string {
  const of = (text: Location['text']) => edits.filter((e) => sameText(e.text, text)).map(({ at, newText }) => ({ at, text: newText }));
  const blocks = calcCells(open.loaded.sheet).map(({ number, code }) => {
    return { at: code, text: edited(open.cells[number]?.code ?? '', of(block(number))) };
  });
  return edited(open.loaded.sheet.text, [...blocks, ...of(SHEET)]);
}
