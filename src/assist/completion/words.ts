// Words of the notation where a statement begins and behind a complete value.
import { WORDS } from '../words.ts';
import { type Offer, offer } from './item.ts';
import type { Site } from './site.ts';

const STATEMENTS = ['shall', 'should', 'curve', 'tabulate', 'instrument', 'action', 'use'];

export function wordOffers({ places }: Site): readonly Offer[] {
  const begins = places.some(({ kind }) => kind === 'statement');
  const behind = places.some(({ kind }) => kind === 'behind');
  return WORDS.flatMap(({ word, form, meaning }) => {
    const statement = STATEMENTS.includes(word);
    if (!(statement ? begins : behind)) return [];
    return [offer(statement ? 'statement' : 'word', word, { detail: form, documentation: [{ kind: 'text', text: meaning }], rank: 6 })];
  });
}
