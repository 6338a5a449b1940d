// How a line of notation was changed: only the part that is not the same is marked.
import { diffArrays } from 'diff';
import type { Texts } from '../../review/comparison.ts';
import type { Cell, Piece } from './sections.ts';

/** Dates, names and numbers whole, blanks, and every other character by itself. */
const TOKENS = /\d{4}-\d{2}-\d{2}|[\p{L}\p{N}_.]+|\s+|[^\s]/gu;
/** Where less than this part of a line stayed, both lines are shown whole. */
const LEAST_SAME = 0.5;
const MOST_EDITS = 200;

/** Both lines as one, or one behind the other; a line that came or went is whole. */
export function rewritten({ old, new: now }: Texts): Cell {
  const whole = [old === null ? [] : went(old), now === null ? [] : came(now)].filter((cell) => cell.length > 0);
  const apart = whole.flatMap((cell, i): Cell => (i === 0 ? cell : [{ kind: 'plain', text: ' ' }, ...cell]));
  if (old === null || now === null) return apart;
  const parts = diffArrays(old.match(TOKENS) ?? [], now.match(TOKENS) ?? [], { maxEditLength: MOST_EDITS });
  if (parts === undefined) return apart;
  const pieces = parts.map(
    ({ value, added, removed }): Piece => ({ kind: added ? 'new code' : removed ? 'old code' : 'code', text: value.join('') }),
  );
  const same = pieces.reduce((sum, { kind, text }) => sum + (kind === 'code' ? text.length : 0), 0);
  return same < LEAST_SAME * Math.max(old.length, now.length) ? apart : pieces;
}

const went = (text: string): Cell => [{ kind: 'old code', text }];
const came = (text: string): Cell => [{ kind: 'new code', text }];
