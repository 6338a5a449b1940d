// Text to tokens: hand-written, one pass, total. Every character belongs to exactly one token or piece of trivia.
import type { Problem } from '../text/problem.ts';
import { readBlanks, readComment, readLineEnd, readOtherComment } from './lexer/blanks.ts';
import { readDate } from './lexer/dates.ts';
import { readNumber } from './lexer/numbers.ts';
import { type Reader, startScan } from './lexer/scan.ts';
import { readOtherSign, readSign, readSuperscript } from './lexer/signs.ts';
import { readStray } from './lexer/stray.ts';
import { readMisquotedText, readText } from './lexer/texts.ts';
import { readWord } from './lexer/words.ts';
import type { Token, Trivia } from './token.ts';

export interface Lexed {
  readonly tokens: readonly Token[];
  readonly trivia: readonly Trivia[];
  /** In the order of their places. */
  readonly problems: readonly Problem[];
}

/** In order: the first that takes something wins. The last takes anything. */
const READERS: readonly Reader[] = [
  readBlanks,
  readLineEnd,
  readComment,
  readOtherComment,
  readText,
  readWord,
  readDate,
  readNumber,
  readSuperscript,
  readOtherSign,
  readSign,
  readMisquotedText,
  readStray,
];

/** Reads the text of one calc block. Units are read with the catalogue alone: no name of the sheet changes a token. */
export function lex(text: string): Lexed {
  const scan = startScan(text);
  while (scan.at < text.length) {
    for (const read of READERS) if (read(scan)) break;
  }
  return { tokens: scan.tokens, trivia: scan.trivia, problems: scan.problems.sort((a, b) => a.at.start - b.at.start) };
}
