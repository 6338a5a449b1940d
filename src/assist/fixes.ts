// Quick fixes: what would mend a problem, from its mends and its facts, and what may be added without one.

import { SOURCE_KINDS } from '../language/token.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import type { Problem } from '../text/problem.ts';
import { span } from '../text/span.ts';
import { withoutEnd } from '../text/without-end.ts';
import type { LocatedEdit } from './edits.ts';
import { contentOf, type TextId } from './location.ts';

/** `snippet`: the new texts have tab stops (`$1`, `${1|a,b|}`), as completion has them. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly LocatedEdit[];
  readonly snippet: boolean;
}

/** The fixes of a problem that stands in a text, the likeliest first. */
export function fixesOf(open: OpenSheet, text: TextId, problem: Problem): readonly Fix[] {
  const mends = problem.mends.map(({ title, edits }): Fix => {
    return { title, edits: edits.map(({ at, text: newText }) => ({ text, at, newText })), snippet: false };
  });
  const own = FIXES[problem.code]?.(open, text, problem) ?? null;
  return own ? [...mends, own] : mends;
}

type FixMaker = (open: OpenSheet, text: TextId, problem: Problem) => Fix | null;

const FIXES: Readonly<Record<string, FixMaker>> = {
  'no-source': addSource,
  'source-required': addSource,
  'link-leads-nowhere': unlink,
};

/** A source behind an input's value, or at the end of a table's caption. */
function addSource(open: OpenSheet, text: TextId, { at }: Problem): Fix | null {
  const place = text.kind === 'block' ? behindValue(open, text.number, at.start) : lineEnd(contentOf(open, text) ?? '', at.start);
  if (place === null) return null;
  const newText = `  from \${1|${SOURCE_KINDS.join(',')}|} "\${2}"`;
  return { title: 'Add a source', edits: [{ text, at: span(place, place), newText }], snippet: true };
}

/** Behind the value of the entry that begins at an offset: the clauses that it has come after. */
function behindValue(open: OpenSheet, number: number, offset: number): number | null {
  const { statement } = open.cells[number]?.items.find((item) => item.statement.at.start === offset) ?? {};
  if (statement?.kind !== 'entry') return null;
  const { value } = statement;
  return value.kind === 'quantity' || value.kind === 'readings' ? Math.max(value.at.end, value.bounds?.at.end ?? 0) : value.at.end;
}

function lineEnd(content: string, offset: number): number {
  const rest = content.slice(offset);
  return offset + withoutEnd(rest.slice(0, rest.search(/[\r\n]|$/)), ' \t').length;
}

/** The words of the link without the link. */
function unlink(open: OpenSheet, text: TextId, { at }: Problem): Fix | null {
  const value = open.loaded.sheet.values.find((one) => one.at.start === at.start && one.at.end === at.end);
  if (text.kind !== 'sheet' || !value) return null;
  const words = open.loaded.sheet.text.slice(value.textAt.start, value.textAt.end);
  return { title: 'Remove the link, keep its words', edits: [{ text, at, newText: words }], snippet: false };
}
