// Find references, and the marks on all places of the name under the cursor.
import type { OpenSheet } from '../run/open-sheet.ts';
import { type Location, type Spot, sameText, type TextId } from './location.ts';
import { occurrenceAt, occurrencesOfReferent, type PlacedOccurrence } from './sheet-occurrences.ts';

/** Every place of the sheet that stands for the same thing as the name at a place, prose included. */
export function references(open: OpenSheet, spot: Spot, withDefinition: boolean): readonly Location[] {
  const all = samePlaces(open, spot);
  return all.filter((o) => withDefinition || o.role === 'use').map(({ text, at }) => ({ text, at }));
}

/** The places of the same name in the texts that are in view. */
export function highlights(open: OpenSheet, spot: Spot, inView: readonly TextId[] = [spot.text]): readonly PlacedOccurrence[] {
  return samePlaces(open, spot).filter(({ text }) => inView.some((shown) => sameText(text, shown)));
}

function samePlaces(open: OpenSheet, spot: Spot): readonly PlacedOccurrence[] {
  const occurrence = occurrenceAt(open, spot);
  return occurrence?.referent ? occurrencesOfReferent(open, occurrence.referent) : [];
}
