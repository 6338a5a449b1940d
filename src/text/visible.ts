// Text of a sheet where it is shown outside the sheet: on one line, with nothing in it that steers a terminal or turns the writing direction.
import { shortened } from './shortened.ts';

/** In UTF-16 code units: no sentence is longer, only what a broken line quotes. */
const LONGEST = 1000;

/** What a page can't show, or what would turn the writing direction of its surroundings; tabs and line ends stay. */
const UNREADABLE = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/g;

/** A text on a page: control characters and changes of the writing direction are shown by their code point. */
export function readable(text: string): string {
  return text.replace(UNREADABLE, codePoint);
}

const CONTROLS = /[\u0000-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]/g;

/**
 * A text on one line: tabs and line ends are blanks, other control characters (escape sequences, changes of writing direction) are
 * shown by their code point, so that a sheet can't steer what shows it. Of a very long text beginning and end are shown.
 */
export function visible(text: string): string {
  const part = shortened(text, LONGEST);
  return part.replace(/\r\n|[\t\r\n]/g, ' ').replace(CONTROLS, codePoint);
}

function codePoint(character: string): string {
  return `\\u{${character.charCodeAt(0).toString(16)}}`;
}
