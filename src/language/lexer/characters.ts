// What single characters are: letters, digits, blanks, line ends, and the ones that hide from the reader.

const LETTER = /^\p{L}$/u;
const MARK = /^\p{M}$/u;

/** The whole character (one code point) at an offset; empty behind the end of the text. */
export function characterAt(text: string, at: number): string {
  const point = text.codePointAt(at);
  return point === undefined ? '' : String.fromCodePoint(point);
}

/** 0 to 9: other scripts' digits are no digits here. */
export function isDigit(c: string | undefined): boolean {
  return c !== undefined && c >= '0' && c <= '9' && c.length === 1;
}

/** Whether a name may begin with the character: a letter of any script, or `_`; not `º`, which is typed for a degree sign. */
export function isLetter(c: string): boolean {
  if (c.length === 1 && c < '\u0080') return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c === '_';
  return c !== '' && c !== 'º' && LETTER.test(c) && !isFullWidth(c);
}

/** Whether a name may go on with the character. Combining marks count, so that a decomposed spelling is read whole. */
export function isNamePart(c: string): boolean {
  return isLetter(c) || isDigit(c) || (c >= '\u0300' && MARK.test(c));
}

/** Space, tab, and the no-break and thin spaces that texts of the trade carry (L12). */
export function isBlank(c: string | undefined): boolean {
  return c === ' ' || c === '\t' || c === '\u00A0' || c === '\u2009' || c === '\u202F';
}

export function isLineEnd(c: string | undefined): boolean {
  return c === '\n' || c === '\r';
}

/** Full-width forms of ASCII, as some keyboards type them. */
export function isFullWidth(c: string): boolean {
  return c >= '\uFF01' && c <= '\uFF5E' && c.length === 1;
}

/** Characters that turn the direction of the text around them: what is read would not be what is calculated. */
export const BIDI_CONTROL = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/;

/** Characters that can't be seen: zero-width spaces and joiners, soft hyphens, byte order marks, variation selectors. */
export const INVISIBLE = /\u00AD|\u034F|\u180E|[\u200B-\u200D]|[\u2060-\u2064]|[\uFE00-\uFE0F]|\uFEFF/;

/** `U+200B`. */
export function codePointName(c: string): string {
  return `U+${(c.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
