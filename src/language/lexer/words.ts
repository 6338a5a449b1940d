// Words: names, reserved words, and `pi` (L9, L12, K1).
import { span } from '../../text/span.ts';
import { nameSpelling, wordEnd } from '../name.ts';
import { lexingProblem } from '../problems/lexing.ts';
import { RESERVED, type ReservedWord } from '../token.ts';
import { takePi } from './quantities.ts';
import { matchAt, type Scan, take } from './scan.ts';
import { mixedScripts } from './scripts.ts';

const RESERVED_WORDS: ReadonlySet<string> = new Set(RESERVED);

function isReserved(word: string): word is ReservedWord {
  return RESERVED_WORDS.has(word);
}

/** A word of plain letters, which has one spelling only. */
const PLAIN_WORD = /[A-Za-z_]\w*(?![\w\u0080-\uffff])/y;

export function readWord(scan: Scan): boolean {
  const word = matchAt(PLAIN_WORD, scan.text, scan.at);
  return word === null ? readSpelling(scan) : takeWord(scan, scan.at + word.length, word);
}

/** A word with other letters: settles its spelling, and reports what may be mistaken in it. */
function readSpelling(scan: Scan): boolean {
  const end = wordEnd(scan.text, scan.at);
  if (end === scan.at) return false;
  const written = scan.text.slice(scan.at, end);
  const at = span(scan.at, end);
  const spelling = nameSpelling(written);
  const plain = spelling.normalize('NFKC');
  if (plain !== spelling) scan.problems.push(lexingProblem('look-alike', at, { found: `\`${written}\``, meant: plain }));
  const mixed = plain === spelling ? mixedScripts(written.normalize('NFC')) : null;
  if (mixed !== null) scan.problems.push(lexingProblem('mixed-scripts', at, { name: written, ...mixed }));
  return takeWord(scan, end, plain);
}

/** Behind a dot any word is a column (K1). */
function takeWord(scan: Scan, end: number, word: string): boolean {
  const last = scan.tokens.at(-1);
  const column = !scan.first && last?.kind === 'punctuation' && last.mark === '.';
  if (!column && word === 'pi') return takePi(scan, end);
  if (!column && isReserved(word)) take(scan, end, { kind: 'word', word });
  else take(scan, end, { kind: 'name', name: word });
  return true;
}
