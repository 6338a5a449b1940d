// The names of a whole open sheet, and the one at a place.
import type { OpenSheet } from '../run/open-sheet.ts';
import { touches } from '../text/span.ts';
import { block, SHEET, type Spot, type TextId } from './location.ts';
import { type Occurrence, occurrencesOf } from './occurrences.ts';
import { proseOccurrences } from './prose-occurrences.ts';
import { keyOf, type Referent } from './referent.ts';

export interface PlacedOccurrence extends Occurrence {
  readonly text: TextId;
}

/** The occurrences in a block's code, or in the sheet's prose, in order. Other texts are not looked into. */
export function occurrencesIn(open: OpenSheet, text: TextId): readonly PlacedOccurrence[] {
  return found(open, text).map((occurrence) => ({ ...occurrence, text }));
}

/** The labels of the statements that use a thing, in the order of the text. */
export function usersOf(open: OpenSheet, referent: Referent): readonly string[] {
  const key = keyOf(referent);
  const n = { open, module: open.loaded.module };
  const isUse = ({ role, referent: other }: Occurrence) => role === 'use' && other !== null && keyOf(other) === key;
  return open.cells.flatMap(({ items, code }) =>
    items.filter((item) => occurrencesOf(n, item, code).some(isUse)).map(({ label }) => label),
  );
}

function found(open: OpenSheet, text: TextId): readonly Occurrence[] {
  switch (text.kind) {
    case 'block': {
      const cell = open.cells[text.number];
      const n = { open, module: open.loaded.module };
      return (cell?.items ?? []).flatMap((item) => occurrencesOf(n, item, cell!.code));
    }
    case 'sheet':
      return proseOccurrences(open);
    case 'file':
    case 'library':
      return [];
    default:
      return text satisfies never;
  }
}

/** Of the whole sheet: block after block, then the prose. */
export function allOccurrences(open: OpenSheet): readonly PlacedOccurrence[] {
  return [...open.cells.keys()]
    .map(block)
    .concat(SHEET)
    .flatMap((text) => occurrencesIn(open, text));
}

/** The name at a place, its ends included; where two touch, the one that begins there. */
export function occurrenceAt(open: OpenSheet, spot: Spot): PlacedOccurrence | null {
  return occurrencesIn(open, spot.text).findLast(({ at }) => touches(at, spot.offset)) ?? null;
}

/** The occurrences of the same thing. */
export function occurrencesOfReferent(open: OpenSheet, referent: Referent): readonly PlacedOccurrence[] {
  const key = keyOf(referent);
  return key === null ? [] : allOccurrences(open).filter((o) => o.referent !== null && keyOf(o.referent) === key);
}
