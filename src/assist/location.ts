// Where something stands: a text that belongs to the open sheet, and a place in it.
import { LIBRARY_SHEETS } from '../library/index.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import { calcCells, type Sheet } from '../sheet/sheet.ts';
import { type Span, span } from '../text/span.ts';

/**
 * `block`: the code of a calc block by its number. `sheet`: the sheet's whole file, for what stands in its prose. `file`: a file that the
 * sheet reads, by its path from the sheet. `library`: a sheet of the library.
 */
export type TextId =
  | { readonly kind: 'block'; readonly number: number }
  | { readonly kind: 'sheet' }
  | { readonly kind: 'file'; readonly path: string }
  | { readonly kind: 'library'; readonly name: string };

/** A place in one of the texts; offsets in UTF-16 code units of that text. */
export interface Location {
  readonly text: TextId;
  readonly at: Span;
}

/** Where the cursor stands, or what it points at. */
export interface Spot {
  readonly text: TextId;
  readonly offset: number;
}

export const SHEET: TextId = { kind: 'sheet' };

export const block = (number: number): TextId => ({ kind: 'block', number });

/** Whether two texts are the same one. */
export function sameText(a: TextId, b: TextId): boolean {
  return textKey(a) === textKey(b);
}

/** A text as a key of maps. */
export function textKey(text: TextId): string {
  switch (text.kind) {
    case 'block':
      return `block ${text.number}`;
    case 'sheet':
      return 'sheet';
    case 'file':
      return `file ${text.path}`;
    case 'library':
      return `library ${text.name}`;
    default:
      return text satisfies never;
  }
}

/** A place of a block as a place of the file. Other places stay as they are. */
export function inFile(sheet: Sheet, { text, at }: Location): Location {
  if (text.kind !== 'block') return { text, at };
  const start = calcCells(sheet)[text.number]?.code.start ?? 0;
  return { text: SHEET, at: span(at.start + start, at.end + start) };
}

/** An offset of the file as a spot: in the block whose code it touches, else in the file. */
export function spotInFile(sheet: Sheet, offset: number): Spot {
  const cell = calcCells(sheet).find(({ code }) => code.start <= offset && offset <= code.end);
  return cell ? { text: block(cell.number), offset: offset - cell.code.start } : { text: SHEET, offset };
}

/** The text itself; null where it is not at hand (a file that the sheet reads). */
export function contentOf(open: OpenSheet, text: TextId): string | null {
  switch (text.kind) {
    case 'block':
      return open.cells[text.number]?.code ?? '';
    case 'sheet':
      return open.loaded.sheet.text;
    case 'file':
      return open.loaded.uses.find((used) => used.path === text.path)?.sheet.text ?? null;
    case 'library':
      return LIBRARY_SHEETS.find(({ name }) => name === text.name)?.text ?? null;
    default:
      return text satisfies never;
  }
}
