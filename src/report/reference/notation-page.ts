// The page of the notation, from its reference in syntax/: prose and examples with their results.
import text from '../../../syntax/reference.md';
import { proseRenderer } from '../prose.ts';
import type { ReferencePage } from './frame.ts';
import { linkNames, type Places } from './places.ts';

const FILE = 'notation.html';
const TITLE = 'The notation';

export function notationPage(places: Places): ReferencePage {
  const markdown = text.replace(/^<!-- (?:end )?results -->\n/gm, '');
  const html = proseRenderer({ entry: () => null }, TITLE)
    .render(markdown)
    .replace(/<td[^>]*>[^<]*<\/td>/g, withCode);
  return { file: FILE, title: TITLE, part: 'notation', body: linkNames(html, FILE, places) };
}

/** A cell of results: what a message quotes is code. */
function withCode(cell: string): string {
  return cell.replace(/`([^`]*)`/g, '<code>$1</code>');
}
