// Clauses behind a complete expression: those that the statement has a place for and does not have yet.
import type { Statement } from '../../language/ast.ts';
import { SOURCE_KINDS } from '../../language/token.ts';
import type { Offer } from './item.ts';
import { type Seen, seenBefore } from './seen.ts';
import type { Site } from './site.ts';
import { beginsRange, wordOffer } from './words.ts';

export function clauseOffers(site: Site): readonly Offer[] {
  const seen = site.places.some(({ kind }) => kind === 'behind') ? seenBefore(site) : null;
  if (seen === null || seen.inside || beginsRange(seen) || seen.wordBack(1) === 'for') return [];
  return CLAUSES.filter(({ of, missing }) => of.includes(seen.statement.kind) && missing(seen)).map(({ word, insert }) =>
    wordOffer(word, insert, 1),
  );
}

interface Clause {
  readonly word: string;
  readonly insert: string;
  readonly of: readonly Statement['kind'][];
  /** Whether the statement lacks it. */
  readonly missing: (seen: Seen) => boolean;
}

const CALCULATED = ['entry', 'column', 'function', 'requirement', 'curve', 'tabulation'] as const;
const SOURCED = [...CALCULATED, 'instrument'] as const;
const literalBefore = ({ last, has }: Seen) => (last?.kind === 'quantity' || last?.kind === 'number') && !has('within');
const lacks = (word: string) => (seen: Seen) => !seen.has(word);
const lacksReading = ({ statement }: Seen) => statement.kind === 'entry' && statement.reading === null;
const lacksDay = ({ statement, has }: Seen) => statement.kind === 'entry' && statement.reading !== null && !has('on');

const CLAUSES: readonly Clause[] = [
  { word: 'on', insert: 'on ', of: ['entry'], missing: lacksDay },
  {
    word: 'from',
    insert: `from \${1|${SOURCE_KINDS.join(',')}|} "$2"`,
    of: SOURCED,
    missing: ({ statement }) => statement.clauses.source === null,
  },
  { word: 'by', insert: 'by ', of: ['entry'], missing: lacksReading },
  { word: 'within', insert: 'within $1 to $2', of: ['entry'], missing: literalBefore },
  { word: 'needs', insert: 'needs $1 because "$2"', of: ['function'], missing: lacks('needs') },
  { word: 'because', insert: 'because "$1"', of: CALCULATED, missing: ({ statement }) => statement.clauses.because === null },
  { word: 'for each', insert: 'for each ', of: ['requirement'], missing: lacks('each') },
  { word: 'throughout', insert: 'throughout $1 from $2 to $3', of: ['requirement'], missing: lacks('throughout') },
  { word: 'accepted by', insert: 'accepted by "$1" until $2 because "$3"', of: ['requirement'], missing: lacks('accepted') },
  { word: 'with', insert: 'with $1 = $2', of: CALCULATED, missing: lacks('with') },
  { word: 'mark', insert: 'mark $1 "$2"', of: ['curve'], missing: ({ has }) => has('to') },
  { word: 'limit', insert: 'limit $1 "$2"', of: ['curve'], missing: ({ has }) => has('to') },
  { word: 'serial', insert: 'serial "$1"', of: ['instrument'], missing: lacks('serial') },
  { word: 'calibrated', insert: 'calibrated ', of: ['instrument'], missing: lacks('calibrated') },
  { word: 'by', insert: 'by "$1"', of: ['action'], missing: lacks('by') },
  { word: 'due', insert: 'due ', of: ['instrument', 'action'], missing: lacks('due') },
  { word: 'for', insert: 'for ', of: ['use'], missing: lacks('for') },
];
