// Text as a terminal shows it: how many columns it takes, and what must not reach a terminal as it stands.
import stringWidth from 'string-width';

/** How many columns a text takes: wide characters two, combining ones none. */
export function columns(text: string): number {
  return stringWidth(text);
}

/** Fills up with blanks to `width` columns; a longer text stays as it is. */
export function padRight(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - columns(text)));
}

/** As `padRight`, with the blanks in front. */
export function padLeft(text: string, width: number): string {
  return ' '.repeat(Math.max(0, width - columns(text))) + text;
}

const CONTROLS = /[\u0000-\u001f\u007f-\u009f\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]/g;

/**
 * A text of a sheet on one line of a terminal: tabs and line ends are blanks, other control characters (escape sequences,
 * changes of writing direction) are shown by their code point, so that a sheet can't steer the terminal.
 */
export function visible(text: string): string {
  return text.replace(/\r\n|[\t\r\n]/g, ' ').replace(CONTROLS, (c) => `\\u{${c.charCodeAt(0).toString(16)}}`);
}

/** Breaks a text at blanks into lines of at most `width` columns; a longer word has a line of its own. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && columns(line) + 1 + columns(word) > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(line);
  return lines;
}
