// Find references, and the marks on all places of the name under the cursor.
import type { OpenSheet } from '../run/open-sheet.ts';
import type { Span } from '../text/span.ts';
import { type Location, type Spot, sameText } from './location.ts';
import { occurrenceAt, occurrencesOfReferent, type PlacedOccurrence } from './sheet-occurrences.ts';

/** Every place of the sheet that stands for the same thing as the name at a place, prose included. */
export function references(open: OpenSheet, spot: Spot, withDefinition: boolean): readonly Location[] {
  const all = samePlaces(open, spot);
  return all.filter((o) => withDefinition || o.role === 'use').map(({ text, at }) => ({ text, at }));
}

export interface Highlight {
  readonly at: Span;
  readonly role: PlacedOccurrence['role'];
}

/** The places of the same name in the same text. */
export function highlights(open: OpenSheet, spot: Spot): readonly Highlight[] {
  return samePlaces(open, spot)
    .filter(({ text }) => sameText(text, spot.text))
    .map(({ at, role }) => ({ at, role }));
}

function samePlaces(open: OpenSheet, spot: Spot): readonly PlacedOccurrence[] {
  const occurrence = occurrenceAt(open, spot);
  return occurrence?.referent ? occurrencesOfReferent(open, occurrence.referent) : [];
}
