// Words that plates, offices and other notations have for what this notation calls otherwise: offered where they are met.
import { nearSpellings } from '../text/near.ts';

type Others = Readonly<Record<string, readonly string[]>>;

const table = (rows: readonly (readonly [others: string, ours: string])[]): Others =>
  Object.fromEntries(rows.flatMap(([others, ours]) => others.split(' ').map((other) => [other, ours.split(' ')])));

export const OTHER_STATEMENTS = table([
  ['must require requires assert ensure check', 'shall'],
  ['recommend prefer', 'should'],
  ['plot graph chart', 'curve'],
  ['import include', 'use'],
  ['todo task', 'action'],
  ['meter', 'instrument'],
]);

export const OTHER_CHOICES = table([
  ['smallest lowest minimum min', 'least'],
  ['largest biggest highest maximum max', 'greatest'],
]);

export const OTHER_SOURCES = table([
  ['nameplate label', 'plate'],
  ['reading readings measured meter survey', 'measurement'],
  ['catalogue catalog maker manufacturer sheet', 'datasheet'],
  ['norm code', 'standard regulation'],
  ['law', 'regulation'],
  ['book textbook', 'handbook'],
  ['test', 'report'],
  ['formula', 'calculation'],
  ['spec', 'specification'],
  ['experience', 'practice'],
  ['guess estimate assumed', 'assumption'],
]);

export const OTHER_FUNCTIONS = table([
  ['log', 'ln log10'],
  ['lg', 'log10'],
  ['average avg', 'mean'],
  ['maximum', 'max'],
  ['minimum', 'min'],
  ['length len', 'count'],
  ['int rounddown', 'floor'],
  ['roundup', 'ceil'],
  ['interp', 'interpolate'],
  ['trapz', 'integrate'],
  ['diff', 'differences'],
]);

export const OTHER_VALUES = table([
  ['true', 'yes'],
  ['false', 'no'],
]);

/** What a word was likely meant for: what this notation has for it, else what is spelt nearly so. */
export function likelyWords(word: string, others: Others, known: Iterable<string>): readonly string[] {
  const folded = word.toLowerCase();
  return Object.hasOwn(others, folded) ? others[folded]! : nearSpellings(word, known);
}
