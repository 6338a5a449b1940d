// Characters that belong to no token: run together into one error token, with a mend where it is clear what was meant.
import { span } from '../../text/span.ts';
import { lexingProblem } from '../problems/lexing.ts';
import { BIDI_CONTROL, characterAt, codePointName, INVISIBLE, isBlank, isDigit, isFullWidth, isLetter, isLineEnd } from './characters.ts';
import { type Scan, take } from './scan.ts';
import { isOtherQuote } from './texts.ts';

const OWN = '"#+-−*·⋅×/÷^√<≤>≥=≠±()[],:.⁰¹²³⁴⁵⁶⁷⁸⁹–—‐‑‒―∙•∗⁄∕≦≧';
const SPACE = /[\s\u0085\u200B\u3000]/;
/** What other notations write where this one has a word. */
const WORDS: Readonly<Record<string, string>> = { '&&': 'and', '||': 'or', '!': 'not' };
/** Nothing but a comment up to the end of the line. */
const ENDS = /^[ \t]*(?:#|[\r\n]|$)/;
const SUBSCRIPT = /[\u2080-\u2089]/;

type Kind = 'bidi' | 'invisible' | 'space' | 'full-width' | 'subscript' | 'degree' | 'unit' | 'other';

function kindOf(c: string): Kind {
  if (BIDI_CONTROL.test(c)) return 'bidi';
  if (INVISIBLE.test(c)) return 'invisible';
  if (SPACE.test(c)) return 'space';
  if (isFullWidth(c)) return 'full-width';
  if (SUBSCRIPT.test(c)) return 'subscript';
  if (c === 'º' || c === '˚') return 'degree';
  if (c === '%' || c === '°' || c === '℃' || c === '℉') return 'unit';
  return 'other';
}

/** Whether no other reader takes the character. `!` alone is stray, `!=` is not. */
function isStray(text: string, at: number, c: string): boolean {
  if (c === '!') return text[at + 1] !== '=';
  return !(isBlank(c) || isLineEnd(c) || isLetter(c) || isDigit(c) || isOtherQuote(c) || OWN.includes(c));
}

/** Takes at least one character, so that reading always comes to the end of the text. */
export function readStray(scan: Scan): boolean {
  const { text, at: start } = scan;
  let c = characterAt(text, start);
  const kinds = new Set<Kind>();
  let end = start;
  do {
    kinds.add(kindOf(c));
    end += c.length;
    c = characterAt(text, end);
  } while (c !== '' && isStray(text, end, c));
  report(scan, kinds.size === 1 ? [...kinds][0]! : 'other', start, end);
  take(scan, end, { kind: 'error' });
  return true;
}

function report(scan: Scan, kind: Kind, start: number, end: number): void {
  const at = span(start, end);
  const written = scan.text.slice(start, end);
  const first = characterAt(written, 0);
  const problem = () => {
    switch (kind) {
      case 'bidi':
        return lexingProblem('bidi-control', at, { characters: codePointName(first) });
      case 'invisible':
        return lexingProblem('invisible-character', at, { characters: codePointName(first) });
      case 'space':
        return lexingProblem('look-alike', at, { found: codePointName(first), meant: ' ' });
      case 'full-width':
        return lexingProblem('look-alike', at, { found: `\`${written}\``, meant: written.normalize('NFKC') });
      case 'subscript':
        return lexingProblem('look-alike', at, { found: `\`${written}\``, meant: `_${written.normalize('NFKC')}` });
      case 'degree':
        return lexingProblem('look-alike', at, { found: `\`${written}\``, meant: '°' });
      case 'unit':
        return lexingProblem('unit-without-number', at, { unit: written });
      case 'other':
        if (written === ';') return lexingProblem('stray-semicolon', at, { ends: ENDS.test(scan.text.slice(end, end + 200)) });
        if (Object.hasOwn(WORDS, written)) return lexingProblem('other-operator', at, { found: written, meant: WORDS[written]! });
        return lexingProblem('stray-characters', at, { characters: written });
    }
  };
  scan.problems.push(problem());
}
