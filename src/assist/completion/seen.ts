// A statement as far as it is written before the cursor: its words, and what they ask for next.
import type { Statement } from '../../language/ast.ts';
import type { Token } from '../../language/token.ts';
import type { Site } from './site.ts';

export interface Seen {
  /** With a word at the cursor. */
  readonly statement: Statement;
  readonly last: Token | undefined;
  readonly has: (word: string) => boolean;
  readonly count: (word: string) => number;
  /** The word so many tokens before the cursor; null where that is no word. */
  readonly wordBack: (tokens: number) => string | null;
  /** Whether the cursor is inside brackets, where no clause stands. */
  readonly inside: boolean;
}

/** Null where no statement has begun. */
export function seenBefore({ item, before }: Site): Seen | null {
  if (!item) return null;
  const words = before.map(wordOf);
  const count = (word: string) => words.filter((w) => w === word).length;
  const marks = (...of: string[]) => before.filter((token) => token.kind === 'punctuation' && of.includes(token.mark)).length;
  return {
    statement: item.statement,
    last: before.at(-1),
    count,
    has: (word) => count(word) > 0,
    wordBack: (tokens) => words.at(-tokens) ?? null,
    inside: marks('(', '[') > marks(')', ']'),
  };
}

function wordOf(token: Token): string | null {
  if (token.kind === 'word') return token.word;
  return token.kind === 'name' ? token.name : null;
}
