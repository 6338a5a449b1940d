// The beginning of a line: the words that begin statements, and the tables whose columns can be computed.

import { text } from '../hover/part.ts';
import { wordNamed } from '../words.ts';
import { type Offer, offer } from './item.ts';
import type { Site } from './site.ts';

const STATEMENTS: readonly (readonly [word: string, insert: string])[] = [
  ['shall', 'shall $1 <= $2$0'],
  ['should', 'should $1 <= $2$0'],
  ['curve', 'curve $1 over $2 from $3 to $4$0'],
  ['tabulate', 'tabulate $1 over $2 from $3 to $4 step $5$0'],
  ['instrument', 'instrument $1 ± ($2 + $3)  serial "$4"  due $5$0'],
  ['action', 'action "$1"  by "$2"  due $3$0'],
  ['use', 'use "$1"$0'],
];

export function statementOffers({ n, places }: Site): readonly Offer[] {
  if (!places.some(({ kind }) => kind === 'statement')) return [];
  const words = STATEMENTS.map(([word, insert]) => {
    const { form, meaning } = wordNamed(word)!;
    return offer('statement', word, { detail: form, documentation: [text(meaning)], insert, snippet: true, rank: 1 });
  });
  const tables = [...n.module.names].flatMap(([name, defined]) => {
    if (defined.kind !== 'table') return [];
    return [offer('table', `${name}.`, { detail: 'a computed column', insert: `${name}.$0`, snippet: true, rank: 2 })];
  });
  return [...words, ...tables];
}
