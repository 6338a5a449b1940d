// Completion: what may be written at a cursor, from sources in one ordered list.
import type { OpenSheet } from '../run/open-sheet.ts';
import { argumentOffers } from './completion/arguments.ts';
import { clauseOffers } from './completion/clauses.ts';
import { columnOffers } from './completion/columns.ts';
import type { Completion, Offer } from './completion/item.ts';
import { fileOffers, instrumentOffers, rangeOffers, sourceOffers, tableOffers, usedNameOffers } from './completion/names-in-place.ts';
import { proseCompletions } from './completion/prose.ts';
import { type Site, siteAt } from './completion/site.ts';
import { statementOffers } from './completion/statements.ts';
import { unitOffers } from './completion/units.ts';
import { valueOffers } from './completion/values.ts';
import { wordOffers } from './completion/words.ts';
import type { Spot } from './location.ts';

const SOURCES: readonly ((site: Site, files: readonly string[]) => readonly Offer[])[] = [
  columnOffers,
  argumentOffers,
  valueOffers,
  unitOffers,
  tableOffers,
  instrumentOffers,
  rangeOffers,
  usedNameOffers,
  sourceOffers,
  fileOffers,
  statementOffers,
  clauseOffers,
  wordOffers,
];

/** All that may stand at a place, best first. `files` are the sheets and CSV files of the workspace by their paths from this one. */
export function completions(open: OpenSheet, { text, offset }: Spot, files: readonly string[] = []): readonly Completion[] {
  if (text.kind === 'sheet') return proseCompletions(open, offset, files);
  const site = text.kind === 'block' ? siteAt(open, text.number, offset) : null;
  if (site === null) return [];
  const { insertAt, replaceAt } = site;
  const offers = SOURCES.flatMap((source) => source(site, files)).map((o) => ({ ...o, insertAt, replaceAt }));
  const seen = new Set<string>();
  return offers.sort((a, b) => a.rank - b.rank).filter(({ label }) => !seen.has(label) && seen.add(label));
}
