// Prose that leaves something open: behind it in a file, the next cell would be swallowed.
import { readBlocks } from './markdown.ts';

/** What Markdown constructs that run to the end of a file are closed by (CommonMark 0.31, 4.5 and 4.6), the fences aside; `</pre>` ends `<script>` and its like too. */
const CLOSERS = ['-->', '?>', ']]>', '>', '</pre>'];

/**
 * The line that must stand behind a prose cell's text so that a block can follow it: the end of a fence, a comment or raw HTML that
 * is still open. Empty where nothing is, as in nearly all prose.
 */
export function closingLine(prose: string): string {
  if (!swallows(prose)) return '';
  const fence = readBlocks(prose).at(-1)?.markup;
  const closers = fence ? [fence, ...CLOSERS] : CLOSERS;
  return closers.find((line) => !swallows(`${prose}\n${line}`)) ?? '';
}

/** Whether a calc block behind the text and a blank line would be part of the text. */
function swallows(prose: string): boolean {
  const last = readBlocks(`${prose}\n\n\`\`\`ampwright\n\`\`\`\n`).at(-1);
  return !(last?.kind === 'fence' && last.level === 0 && last.info === 'ampwright' && last.to - last.from === 2);
}
