// The fragments under which a forge reaches the headings of a page.
import { shownText } from './inline.ts';
import type { Block } from './markdown.ts';

/**
 * A heading's fragment as forges make it (common practice): lower case, punctuation left out, blanks as hyphens,
 * `-1`, `-2` … behind the second and further headings of the same text.
 */
export function headingSlugs(blocks: readonly Block[]): ReadonlySet<string> {
  const slugs = new Set<string>();
  const counts = new Map<string, number>();
  for (const block of blocks) {
    if (block.kind !== 'heading') continue;
    const plain = shownText(block.content)
      .toLowerCase()
      .replace(/[^\p{L}\p{M}\p{N}\p{Pc}\s-]/gu, '')
      .replace(/\s/g, '-');
    const count = counts.get(plain) ?? 0;
    counts.set(plain, count + 1);
    slugs.add(count === 0 ? plain : `${plain}-${count}`);
  }
  return slugs;
}
