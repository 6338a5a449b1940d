// A sheet that is open in an editor compared with a revision: the page that shows it, and the same as Markdown. Plain data in and out.
import { comparisonsMarkdown } from '../report/comparison/markdown.ts';
import { comparisonsPage, type Links } from '../report/comparison/page.ts';
import { compareSince } from './compare.ts';

export interface ComparisonAsked {
  /** Of the sheet, on the disk. */
  readonly path: string;
  /** Of the sheet, as it stands in the editor. */
  readonly text: string;
  /** The older revision; null: where the present work left the default branch. */
  readonly since: string | null;
}

export interface ComparisonTexts {
  /** HTML whose links are `#line-7`, to a line of the sheet, and `#copy`. */
  readonly page: string;
  readonly markdown: string;
}

const LINKS: Links = { line: (_, line) => `#line-${line}`, actions: [{ title: 'Copy as Markdown', href: '#copy' }] };

/** Throws `GitError`. */
export async function comparisonTexts({ path, text, since }: ComparisonAsked): Promise<ComparisonTexts> {
  const comparisons = await compareSince([path], { since, open: new Map([[path, text]]) });
  return { page: comparisonsPage(comparisons, LINKS), markdown: comparisonsMarkdown(comparisons) };
}
