// Whether a sheet still says the same after its names were changed: each name refers to what it referred to, and nothing new is wrong.
import { resultOf, type SheetEvaluation } from '../run/evaluate.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import { insideSentence } from '../text/problem.ts';
import { contentOf } from './location.ts';
import { keyOf } from './referent.ts';
import { allOccurrences, type PlacedOccurrence } from './sheet-occurrences.ts';

/** What would be another thing afterwards, as the end of a sentence; null where all is as it was. */
export function changeOfMeaning(before: OpenSheet, after: OpenSheet): string | null {
  return newProblem(before, after) ?? otherReferent(before, after);
}

/** An error that was not there, or a local that has come to hide a name. */
function newProblem(before: OpenSheet, after: OpenSheet): string | null {
  const known = new Map<string, number>();
  for (const { code } of problemsOf(before)) known.set(code, (known.get(code) ?? 0) + 1);
  for (const { code, message } of problemsOf(after)) {
    const left = (known.get(code) ?? 0) - 1;
    known.set(code, left);
    if (left < 0) return `there would be a new problem: ${insideSentence(message)}`;
  }
  return null;
}

function problemsOf(open: OpenSheet): SheetEvaluation['sheet']['problems'] {
  const all = [...resultOf(open).cells.flatMap((cell) => cell.problems), ...open.loaded.sheet.problems];
  return all.filter(({ severity, code }) => severity === 'error' || code === 'local-hides');
}

/** Names that stood for one thing stand for one thing, and for nothing else: compared place by place, whatever the names are. */
function otherReferent(before: OpenSheet, after: OpenSheet): string | null {
  const [old, now] = [allOccurrences(before), allOccurrences(after)];
  const [oldGroups, nowGroups] = [groups(old), groups(now)];
  const other = now.findIndex((_, i) => oldGroups[i] !== nowGroups[i]);
  if (other < 0 && old.length === now.length) return null;
  const place = now[other];
  if (!place) return 'other names would be read';
  const written = (contentOf(after, place.text) ?? '').slice(place.at.start, place.at.end);
  return `\`${written}\` would mean something else where it is used already`;
}

/** For each place the first place of the same thing; -1 where a name refers to nothing. */
function groups(occurrences: readonly PlacedOccurrence[]): readonly number[] {
  const first = new Map<string, number>();
  return occurrences.map(({ referent }, i) => {
    if (referent === null) return -1;
    const key = keyOf(referent) ?? referent.kind;
    if (!first.has(key)) first.set(key, i);
    return first.get(key)!;
  });
}
