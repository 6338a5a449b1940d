// Source text for Typst, in its code mode: calls, blocks and string literals. Text of a sheet stands in string literals and nowhere else.

/** An expression of Typst's code mode whose value is content or a string. */
export type Code = string;

/** Nothing at all. */
export const EMPTY: Code = '[]';

// What no face can show, and what would turn the writing direction of its surroundings: control characters, format characters of
// direction, lone surrogates, noncharacters (Unicode, chapter 23), private use.
const UNSHOWABLE =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff\ufff9-\ufffb]|\p{Noncharacter_Code_Point}|\p{Co}|\p{Cs}/gu;

/** A text with what can't be shown written as its code point. */
export function showable(text: string): string {
  return text.replace(UNSHOWABLE, codePoint);
}

/** `\u{e2a}` in place of a character. */
export function codePoint(character: string): string {
  return `\\u{${character.codePointAt(0)!.toString(16)}}`;
}

/** A string literal: whatever the text is, it stays text. */
export function quoted(text: string): Code {
  return `"${showable(text).replace(/[\\"\n\r\t]/g, (c) => ESCAPES[c]!)}"`;
}

const ESCAPES: Readonly<Record<string, string>> = { '\\': '\\\\', '"': '\\"', '\n': '\\n', '\r': '\\r', '\t': '\\t' };

// Runs of more than 16 characters without a blank get places where a line may break.
const LONG_RUN = /[^\s\u200b\u2e80-\ud7ff\uf900-\uffef]{17,}/gu;

/** A text as it is read: a long word or number may break where nothing else can. */
export function words(text: string): Code {
  return text.search(LONG_RUN) < 0 ? quoted(text) : call('run', ...pieces(showable(text)).map(quoted));
}

/** A text cut where its line may break: behind joints of a long run, else after every few characters. */
function pieces(text: string): readonly string[] {
  const cut = text.replace(LONG_RUN, (run) => run.replace(/[_./,;:)=+·&?-](?=.)|[^_./,;:)=+·&?-]{8}(?=.{3})/gu, '$&\u0000'));
  return cut.split('\u0000').filter((piece) => piece !== '');
}

/** `name(a, b)`; null is left out. `name` and the arguments are code. */
export function call(name: string, ...args: readonly (Code | null)[]): Code {
  return `${name}(${args.filter((arg) => arg !== null).join(', ')})`;
}

/** A named argument. */
export function named(name: string, value: Code): Code {
  return `${name}: ${value}`;
}

/** One after the other, as one expression. */
export function joined(codes: readonly Code[]): Code {
  const filled = codes.filter((code) => code !== EMPTY && code !== '""');
  if (filled.length === 0) return EMPTY;
  return filled.length === 1 ? filled[0]! : `{ ${filled.join('; ')} }`;
}

/** Paragraphs and blocks below each other, as one expression. */
export function below(codes: readonly Code[]): Code {
  const filled = codes.filter((code) => code !== EMPTY && code !== '""');
  return filled.length < 2 ? (filled[0] ?? EMPTY) : `{ ${filled.join('; parbreak(); ')} }`;
}

/** An array; Typst wants a comma behind a single element. */
export function array(codes: readonly Code[]): Code {
  return codes.length === 1 ? `(${codes[0]},)` : `(${codes.join(', ')})`;
}
