// Prose and comments that changed, word by word. Tables, results and values of entries are no prose.
import { diffArrays, diffWords } from 'diff';
import type { ProseChange } from '../comparison.ts';
import { type Paragraph, paragraphs } from './paragraphs.ts';
import { changeOf, type Pair } from './side.ts';

/** More differences than this (paragraphs, or words of one place) are not looked for: all of it then counts as written anew. */
const MOST_EDITS = 1000;

/** Places where the words are not the same; how lines are broken is no difference. */
export function compareProse(pair: Pair): readonly ProseChange[] {
  const [olds, news] = [paragraphs(pair, 'old'), paragraphs(pair, 'new')];
  const texts = (of: readonly Paragraph[]) => of.map(({ text }) => text);
  const parts = diffArrays(texts(olds), texts(news), { maxEditLength: MOST_EDITS }) ?? [
    { value: texts(olds), removed: true, added: false },
    { value: texts(news), removed: false, added: true },
  ];
  const changes: ProseChange[] = [];
  let [i, j] = [0, 0];
  let gone: readonly Paragraph[] = [];
  const settle = (come: readonly Paragraph[]) => {
    if (gone.length + come.length > 0) changes.push(proseChange(gone, come));
    gone = [];
  };
  for (const { value, removed, added } of parts) {
    if (!added) i += value.length;
    if (!removed) j += value.length;
    if (removed) gone = olds.slice(i - value.length, i);
    else settle(added ? news.slice(j - value.length, j) : []);
  }
  settle([]);
  return changes;
}

function proseChange(old: readonly Paragraph[], now: readonly Paragraph[]): ProseChange {
  const [first, second] = [old[0] ?? null, now[0] ?? null];
  return {
    change: changeOf(first, second),
    line: { old: first?.line ?? null, new: second?.line ?? null },
    heading: (second ?? first)!.heading,
    words: words(old.map(({ text }) => text).join('\n\n'), now.map(({ text }) => text).join('\n\n')),
  };
}

function words(old: string, now: string): ProseChange['words'] {
  const parts = diffWords(old, now, { maxEditLength: MOST_EDITS });
  if (parts === undefined)
    return [
      { kind: 'removed', text: old },
      { kind: 'added', text: now },
    ];
  return parts.map(({ value, added, removed }) => ({ kind: added ? 'added' : removed ? 'removed' : 'same', text: value }));
}
