// Completion: what may be written at a cursor, best first.
import type { OpenSheet } from '../run/open-sheet.ts';
import { argumentOffers } from './completion/arguments.ts';
import { columnOffers } from './completion/columns.ts';
import type { Completion, Offer } from './completion/item.ts';
import { fileOffers, instrumentOffers, rangeOffers, sourceOffers, tableOffers, usedNameOffers } from './completion/names-in-place.ts';
import { type Site, siteAt } from './completion/site.ts';
import { unitOffers } from './completion/units.ts';
import { valueOffers } from './completion/values.ts';
import { wordOffers } from './completion/words.ts';

/** The sources of offers, in the order in which equal ones are listed. */
const SOURCES: readonly ((site: Site, files: readonly string[]) => readonly Offer[])[] = [
  columnOffers,
  argumentOffers,
  tableOffers,
  instrumentOffers,
  rangeOffers,
  usedNameOffers,
  sourceOffers,
  fileOffers,
  valueOffers,
  unitOffers,
  wordOffers,
];

/** What may stand at an offset of a block's code. `files`: sheets of the workspace by their paths from this one, for `use`. */
export function completions(open: OpenSheet, number: number, offset: number, files: readonly string[] = []): readonly Completion[] {
  const site = siteAt(open, number, offset);
  if (site === null) return [];
  const { insertAt, replaceAt } = site;
  const seen = new Set<string>();
  return SOURCES.flatMap((source) => source(site, files))
    .sort((a, b) => a.rank - b.rank)
    .filter(({ label }) => !seen.has(label) && seen.add(label))
    .map((offered) => ({ ...offered, insertAt, replaceAt }));
}
