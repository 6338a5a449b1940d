// Text as a terminal shows it: how many columns it takes, and what must not reach a terminal as it stands.
import stringWidth from 'string-width';

export { visible } from '../text/visible.ts';

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
