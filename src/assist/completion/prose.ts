// Completion in prose: the entries behind `](#` of a link, the columns of a chosen row, and CSV files in a table's caption.
import { resultOf } from '../../run/evaluate.ts';
import type { OpenSheet } from '../../run/open-sheet.ts';
import { type Span, span } from '../../text/span.ts';
import { type Completion, type Offer, offer } from './item.ts';

/** How far back a link is looked for; no link is longer. */
const REACH = 400;

const LINK = /\]\(#(?:([\p{L}_][\p{L}\p{M}\p{N}_]*)\.)?([\p{L}\p{M}\p{N}_]*)$/u;
const CAPTION = /^ {0,3}Table[ \t]+\S+[ \t]+(?:—|–|--|-)[ \t]+\[[^[\]]*\]\(([^\s()<>]*)$/;

/** What may be written at a place of the prose. */
export function proseCompletions(open: OpenSheet, offset: number, files: readonly string[]): readonly Completion[] {
  const { text } = open.loaded.sheet;
  const path = captionPath(text, offset);
  if (path) {
    const tables = files.filter((file) => /\.csv$/i.test(file));
    return tables.map((file) => ({ ...offer('file', file, { detail: 'table', rank: 0 }), ...path }));
  }
  const link = LINK.exec(text.slice(Math.max(0, offset - REACH), offset));
  if (!link) return [];
  const [, row, word] = link;
  const start = offset - word!.length;
  const end = offset + (/^[\p{L}\p{M}\p{N}_]*/u.exec(text.slice(offset, offset + REACH))?.[0].length ?? 0);
  const at = { insertAt: span(start, offset), replaceAt: span(start, end) };
  return (row === undefined ? entryOffers(open) : columnOffers(open, row)).map((o) => ({ ...o, ...at }));
}

/** The path that is being written in the caption of a table: up to the cursor, and the whole of it; null elsewhere. */
export function captionPath(text: string, offset: number): { readonly insertAt: Span; readonly replaceAt: Span } | null {
  const line = text.slice(Math.max(0, offset - REACH), offset).split(/[\r\n]/).at(-1)!; // biome-ignore format: one step
  const written = CAPTION.exec(line)?.[1];
  if (written === undefined) return null;
  const behind = /^[^\s()<>]*/.exec(text.slice(offset, offset + REACH))![0].length;
  return { insertAt: span(offset - written.length, offset), replaceAt: span(offset - written.length, offset + behind) };
}

function entryOffers(open: OpenSheet): readonly Offer[] {
  return [...resultOf(open).entries.values()].map(({ name, value }) => offer('entry', name, { detail: value?.short ?? '', rank: 0 }));
}

/** The cells of the row that an entry is. */
function columnOffers(open: OpenSheet, row: string): readonly Offer[] {
  const cells = resultOf(open).row(row);
  return cells.map(({ column, value }) => offer('column', column, { detail: value?.short ?? '', rank: 0 }));
}
