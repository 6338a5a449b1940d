// Words of the notation inside expressions: what begins a value, what a form asks for next, and what joins two values.
import { text } from '../hover/part.ts';
import { scopesFrom } from '../scope.ts';
import { wordNamed } from '../words.ts';
import { type Offer, offer } from './item.ts';
import { type Seen, seenBefore } from './seen.ts';
import type { Site } from './site.ts';

export function wordOffers(site: Site): readonly Offer[] {
  const value = site.places.find((place) => place.kind === 'value');
  if (value?.kind === 'value') {
    const inRow = [...scopesFrom(value.scope)].some(({ kind }) => kind === 'row');
    return VALUE.filter(([word]) => word !== 'row' || inRow).map(([word, insert]) => wordOffer(word, insert, 5));
  }
  const seen = site.places.some(({ kind }) => kind === 'behind') ? seenBefore(site) : null;
  return seen === null ? [] : BEHIND.filter(({ fits }) => fits(seen)).map(({ word, insert, rank }) => wordOffer(word, insert, rank));
}

/** A word as an offer; its meaning is told from the table of words. */
export function wordOffer(word: string, insert: string, rank: number): Offer {
  const known = wordNamed(word.split(' ')[0]!);
  const documentation = known ? [text(known.meaning)] : [];
  return offer('word', word, { detail: known?.form ?? '', documentation, insert, snippet: insert.includes('$'), rank });
}

const VALUE: readonly (readonly [word: string, insert: string])[] = [
  ['if', 'if $1 then $2 else $3'],
  ['least', 'least '],
  ['greatest', 'greatest '],
  ['first', 'first of '],
  ['the', 'the '],
  ['root', 'root of $1 over $2 from $3 to $4'],
  ['readings', 'readings [$1]'],
  ['not', 'not '],
  ['yes', 'yes'],
  ['no', 'no'],
  ['row', 'row.'],
];

interface Behind {
  readonly word: string;
  readonly insert: string;
  readonly rank: number;
  readonly fits: (seen: Seen) => boolean;
}

/** Behind `over x`, a range begins. */
export const beginsRange = ({ wordBack }: Seen): boolean => wordBack(2) === 'over' || wordBack(2) === 'throughout';
const inRange = ({ has, count }: Seen) => (has('over') || has('throughout')) && count('from') > count('to');
const hasValue = ({ statement: { kind } }: Seen) => kind !== 'instrument' && kind !== 'action' && kind !== 'use';
const behindValue = ({ last }: Seen) => last?.kind !== 'text' && last?.kind !== 'date';
const joins = (seen: Seen) => seen.wordBack(1) !== 'for' && hasValue(seen) && behindValue(seen) && !beginsRange(seen) && !inRange(seen);
const ofWanted = ({ has }: Seen) => ['least', 'greatest', 'the', 'first', 'root'].some(has) && !has('of');
const overWanted = ({ has, statement: { kind } }: Seen) => !has('over') && (kind === 'curve' || kind === 'tabulation' || has('root'));
const whereWanted = (seen: Seen) => joins(seen) && seen.count('of') + seen.count('each') - seen.count('root') > seen.count('where');

const BEHIND: readonly Behind[] = [
  { word: 'of', insert: 'of ', rank: 0, fits: ofWanted },
  { word: 'then', insert: 'then ', rank: 0, fits: ({ count }) => count('if') > count('then') },
  { word: 'else', insert: 'else ', rank: 0, fits: ({ count }) => count('then') > count('else') },
  { word: 'where', insert: 'where ', rank: 0, fits: whereWanted },
  { word: 'over', insert: 'over $1 from $2 to $3', rank: 0, fits: overWanted },
  { word: 'from', insert: 'from ', rank: 0, fits: beginsRange },
  { word: 'to', insert: 'to ', rank: 0, fits: inRange },
  { word: 'step', insert: 'step ', rank: 0, fits: ({ statement, has }) => statement.kind === 'tabulation' && has('to') && !has('step') },
  { word: 'log', insert: 'log', rank: 1, fits: ({ statement, has }) => statement.kind === 'curve' && has('to') && !has('log') },
  { word: 'each', insert: 'each ', rank: 0, fits: ({ statement, wordBack }) => statement.kind === 'requirement' && wordBack(1) === 'for' },
  { word: 'and', insert: 'and ', rank: 2, fits: joins },
  { word: 'or', insert: 'or ', rank: 2, fits: joins },
  { word: 'is', insert: 'is ', rank: 2, fits: joins },
  { word: 'is not', insert: 'is not ', rank: 2, fits: joins },
];
