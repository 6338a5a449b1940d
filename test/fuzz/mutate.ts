// Changes to a text as mistakes, merges and malice make them: parts lost, doubled, moved, repeated, strange characters put in.
import type { Random } from './random.ts';

/** Characters and words that have troubled readers of text before. */
const STRANGE = [
  '\0', '\t', '\r', '\n', '\r\n', '\v', '\f', '\u0085', '\u2028', '\u2029', '\u00a0', '\u2009', '\u3000', '\ufeff', '\u200b', '\u200d', '\u00ad',
  '\u202e', '\u2066', '\u2069', '\u061c', '\ud800', '\udfff', '\u0301', '🙂', '👩‍🔧', 'ﬁ', 'İ', 'ß', 'Ω', 'K', 'а', 'ν', '−', '–', '—', '“', '”',
  '"', "'", '`', '```', '~~~', '|', '\\', '\\|', '<', '>', '&', '&amp;', '<!--', '-->', '<script>', '](', '[', ']', '(', ')', '{', '}', '#', '*', '_',
  '$', '%', '@', '=', '+', '-', '.', ',', ';', ':', '/', '^', '±', '²', '⁻¹', '0', '1', '9', '1e308', '1e-320', '-0', '00', '1,5', '0x10', 'NaN',
  'Infinity', 'null', 'undefined', '__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', '---', '...', '&a', '*a', '<<', '!!', '? ',
]; // biome-ignore format: a list of pieces

const MOST_CHANGES = 6;
/** Longer texts are cut, so that a run is many inputs and not one. */
const LONGEST = 20_000;

/** A text changed in one to six places; `words` belong to the language, `other` is another text of it. */
export function mutate(text: string, words: readonly string[], other: string, random: Random): string {
  let changed = text;
  for (let n = 1 + random.below(MOST_CHANGES); n > 0; n--) changed = random.of(CHANGES)(changed, words, other, random);
  return changed.length > LONGEST ? changed.slice(0, LONGEST) : changed;
}

type Change = (text: string, words: readonly string[], other: string, random: Random) => string;

const CHANGES: readonly Change[] = [
  // A part is lost.
  (text, _w, _o, random) => splice(text, place(text, random), length(random), ''),
  // A word of the language is put in, or takes the place of a part.
  (text, words, _o, random) => splice(text, place(text, random), 0, random.of(words)),
  (text, words, _o, random) => splice(text, place(text, random), length(random), random.of(words)),
  // So does something strange.
  (text, _w, _o, random) => splice(text, place(text, random), random.below(2), random.of(STRANGE)),
  // A part is doubled, or repeated many times.
  (text, _w, _o, random) => repeated(text, 2, random),
  (text, _w, _o, random) => repeated(text, 2 + random.below(60), random),
  // A part moves.
  (text, _w, _o, random) => {
    const [from, long] = [place(text, random), length(random)];
    const part = text.slice(from, from + long);
    const rest = splice(text, from, long, '');
    return splice(rest, place(rest, random), 0, part);
  },
  // A part of another text is put in.
  (text, _w, other, random) => {
    const from = place(other, random);
    return splice(text, place(text, random), random.below(8), other.slice(from, from + 1 + random.below(80)));
  },
  // Any character changes to its neighbour.
  (text, _w, _o, random) => {
    const at = place(text, random);
    return splice(text, at, 1, String.fromCharCode((text.charCodeAt(at) || 65) ^ (1 << random.below(8))));
  },
  // The text ends here.
  (text, _w, _o, random) => text.slice(0, place(text, random)),
  // All lines end in another way.
  (text, _w, _o, random) => text.replace(/\r\n?|\n/g, random.of(['\n', '\r\n', '\r', '\n\n'])),
];

function place(text: string, random: Random): number {
  return random.below(text.length + 1);
}

function length(random: Random): number {
  return 1 + random.below(random.chance(80) ? 6 : 60);
}

function splice(text: string, at: number, long: number, by: string): string {
  return text.slice(0, at) + by + text.slice(at + long);
}

function repeated(text: string, times: number, random: Random): string {
  const [from, long] = [place(text, random), length(random)];
  return splice(text, from, 0, text.slice(from, from + long).repeat(times));
}
