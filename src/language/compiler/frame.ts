// What a running closure sees besides the values that it has captured: its locals and the run of the statement.
import type { Problem } from '../../text/problem.ts';
import type { Item } from '../program.ts';
import type { Combined } from '../uncertainty/combine.ts';
import type { Uncertain } from '../uncertainty/dual.ts';
import type { ChoiceFound } from './choices.ts';

/** One evaluation of one item. */
export interface Run {
  readonly item: Item;
  /** Warnings and notes found on the way ("undecided within the uncertainty"). */
  readonly notes: Problem[];
  /** How many made inputs this evaluation has met. */
  met: number;
  /** Whether inputs are shifted (U6): then no notes are taken, and made inputs keep their uncertainty. */
  readonly shifting: boolean;
  /** What the last choice did, for the entry that shows it. */
  choice: ChoiceFound | null;
  /** The combined uncertainty of x, by shifting inputs where derivatives do not serve; `again` computes x anew. */
  readonly spread: (x: Uncertain, again: (run: Run) => Uncertain) => { readonly combined: Combined; readonly shifted: boolean };
}

/** Locals of one call or statement. */
export interface Frame {
  readonly locals: unknown[];
  readonly run: Run;
}

/** Compiled code. */
export type Evaluate<T = unknown> = (frame: Frame) => T;
