// Operators, punctuation, `±` and superscripts, in all their accepted spellings (L12); and what is typed for them by mistake.
import { lexingProblem } from '../problems/lexing.ts';
import { superscriptPower } from '../superscript.ts';
import type { Operator, Punctuation } from '../token.ts';
import { isDigit } from './characters.ts';
import { readUnitBehindColon } from './quantities.ts';
import { matchAt, type Scan, take } from './scan.ts';

type Sign = { readonly operator: Operator } | { readonly mark: Punctuation } | 'plusminus';

const op = (operator: Operator): Sign => ({ operator });
const mark = (m: Punctuation): Sign => ({ mark: m });

/** Spelling to sign; the longer spelling first where one begins another. */
const SIGNS: Readonly<Record<string, readonly (readonly [spelling: string, sign: Sign])[]>> = group([
  ['+/-', 'plusminus'], ['±', 'plusminus'],
  ['+', op('+')], ['-', op('-')], ['\u2212', op('-')],
  ['*', op('*')], ['·', op('*')], ['\u22C5', op('*')], ['×', op('*')], ['/', op('/')], ['÷', op('/')], ['^', op('^')], ['√', op('√')],
  ['<=', op('<=')], ['≤', op('<=')], ['<', op('<')], ['>=', op('>=')], ['≥', op('>=')], ['>', op('>')],
  ['==', op('==')], ['!=', op('!=')], ['≠', op('!=')],
  ['(', mark('(')], [')', mark(')')], ['[', mark('[')], [']', mark(']')], [',', mark(',')], [':', mark(':')], ['.', mark('.')], ['=', mark('=')],
]); // biome-ignore format: a table

/** What other notations write; read as meant, with an error that offers the notation's own sign. */
const OTHER: Readonly<Record<string, readonly (readonly [spelling: string, meant: string])[]>> = group([
  ['**', '^'], ['<>', '!='], ['=<', '<='], ['=>', '>='], [':=', '='], ['===', '=='], ['!==', '!='],
  ['\u2010', '-'], ['\u2011', '-'], ['\u2012', '-'], ['–', '-'], ['—', '-'], ['\u2015', '-'],
  ['∙', '·'], ['•', '·'], ['∗', '*'], ['⁄', '/'], ['∕', '/'], ['≦', '<='], ['≧', '>='],
]); // biome-ignore format: a table

/** Rows by the first character of their spelling. */
function group<T>(rows: readonly (readonly [string, T])[]): Record<string, (readonly [string, T])[]> {
  const groups: Record<string, (readonly [string, T])[]> = Object.create(null);
  for (const row of rows) {
    const first = row[0][0]!;
    groups[first] = [...(groups[first] ?? []), row];
  }
  return groups;
}

export function readSign(scan: Scan): boolean {
  const c = scan.text[scan.at]!;
  for (const [spelling, sign] of SIGNS[c] ?? []) {
    if (scan.text.startsWith(spelling, scan.at)) return takeSign(scan, scan.at + spelling.length, sign);
  }
  return false;
}

/** Must come before `readSign`, whose signs begin some of these. */
export function readOtherSign(scan: Scan): boolean {
  const c = scan.text[scan.at]!;
  for (const [spelling, meant] of OTHER[c] ?? []) {
    if (!scan.text.startsWith(spelling, scan.at)) continue;
    const sign = SIGNS[meant[0]!]!.find(([own]) => own === meant)![1];
    const end = scan.at + spelling.length;
    const at = { start: scan.at, end };
    const ascii = /^[ -~]+$/.test(spelling);
    if (ascii) scan.problems.push(lexingProblem('other-operator', at, { found: spelling, meant }));
    else scan.problems.push(lexingProblem('look-alike', at, { found: `\`${spelling}\``, meant }));
    return takeSign(scan, end, sign);
  }
  return false;
}

function takeSign(scan: Scan, end: number, sign: Sign): boolean {
  if (sign === 'plusminus') take(scan, end, { kind: 'plusminus' });
  else if ('operator' in sign) take(scan, end, { kind: 'operator', operator: sign.operator });
  else {
    const at = take(scan, end, { kind: 'punctuation', mark: sign.mark });
    if (sign.mark === ':') readUnitBehindColon(scan);
    if (sign.mark === ',' && isDigit(scan.text[at.start - 1]) && isDigit(scan.text[end])) {
      scan.problems.push(lexingProblem('comma-in-number', at, { decimal: null, joined: null, separated: ', ' }));
    }
  }
  return true;
}

const SUPERSCRIPT = /⁻?[⁰¹²³⁴-⁹]{1,9}/y;

export function readSuperscript(scan: Scan): boolean {
  const written = matchAt(SUPERSCRIPT, scan.text, scan.at);
  if (written === null) return false;
  take(scan, scan.at + written.length, { kind: 'superscript', power: superscriptPower(written) });
  return true;
}
