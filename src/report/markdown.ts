// Text of a sheet in Markdown as forges read it (GitHub Flavored Markdown 0.29): nothing of it becomes markup, a link or a mention.
import { visible } from '../text/visible.ts';

const MARKUP = /[\\`*_~[\]<>|$]/g;
/** What forges turn into links or call people by without any markup. */
const AUTOMATIC = /(?<![\p{L}\p{N}])[@#](?=[\p{L}\p{N}])|\b(?:https?|ftp)(?=:\/\/)|\bwww(?=\.)/giu;

/** Plain text on one line, for a table's cell or the middle of a line. */
export function plainText(text: string): string {
  return visible(text)
    .replaceAll('&', '&amp;')
    .replace(MARKUP, (c) => (c === '<' ? '&lt;' : c === '>' ? '&gt;' : `\\${c}`))
    .replace(AUTOMATIC, '$&<!-- -->');
}

/** A code span on one line; `|` is escaped, as a table asks for. */
export function codeSpan(text: string): string {
  const inner = visible(text).replaceAll('|', '\\|');
  if (inner.trim() === '') return '';
  const longest = Math.max(0, ...[...inner.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  const pad = /^`|`$|^ .* $/.test(inner) ? ' ' : '';
  return `${fence}${pad}${inner}${pad}${fence}`;
}

/** A table's lines. */
export function pipeTable(heads: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(heads), line(heads.map(() => '---')), ...rows.map(line)];
}
