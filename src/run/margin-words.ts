// A margin in words: how much is in hand or short. Every window says it so.
import type { Sides } from './result.ts';

/**
 * `14 % in hand`, `0.40 A short`, `exactly at the limit`; null where there is no margin, as between texts and of an equality that is
 * met. `width` makes the text of the margin and its percent, both without a sign.
 */
export function marginWords(sides: Sides, width: (margin: string, percent: string | null) => string): string | null {
  const { margin, percent, slack, relation } = sides;
  if (margin === '') return null;
  if (slack === 0) return EQUALITIES.has(relation) ? null : 'exactly at the limit';
  return `${width(withoutSign(margin), percent && withoutSign(percent))} ${slack > 0 ? 'in hand' : 'short'}`;
}

/** The margin in percent of the limit where it has one. */
export const shortest = (margin: string, percent: string | null): string => percent ?? margin;

const EQUALITIES: ReadonlySet<Sides['relation']> = new Set(['==', '!=', 'is', 'is not']);

const withoutSign = (text: string) => text.replace(/^[-−]/, '');
