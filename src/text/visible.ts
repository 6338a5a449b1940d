// Text of a sheet where it is shown outside the sheet: on one line, with nothing in it that steers a terminal or turns the writing direction.
import { shortened } from './shortened.ts';

/** In UTF-16 code units: no sentence is longer, only what a broken line quotes. */
const LONGEST = 1000;

const CONTROLS = /[\u0000-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]/g;

/**
 * A text on one line: tabs and line ends are blanks, other control characters (escape sequences, changes of writing direction) are
 * shown by their code point, so that a sheet can't steer what shows it. Of a very long text beginning and end are shown.
 */
export function visible(text: string): string {
  const part = shortened(text, LONGEST);
  return part.replace(/\r\n|[\t\r\n]/g, ' ').replace(CONTROLS, (c) => `\\u{${c.charCodeAt(0).toString(16)}}`);
}
