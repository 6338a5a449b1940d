// The page of the notation, from its reference in syntax/: prose and examples with their results.
import text from '../../../syntax/reference.md';
import { proseRenderer } from '../prose.ts';
import type { ReferencePage } from './frame.ts';
import { linkNames, type Places } from './places.ts';

const FILE = 'notation.html';
const TITLE = 'The notation';

export function notationPage(places: Places): ReferencePage {
  const markdown = text.replace(/^<!-- (?:end )?results -->\n/gm, '');
  const html = proseRenderer({ entry: () => null }, TITLE).render(markdown);
  return { file: FILE, title: TITLE, part: 'notation', body: linkNames(html, FILE, places) };
}
