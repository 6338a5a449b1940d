// A target of fuzzing: what makes its inputs, and what must hold of any of them.
import assert from 'node:assert/strict';
import type { Problem } from '../../src/text/problem.ts';
import type { Span } from '../../src/text/span.ts';
import type { Make } from './grammar.ts';
import type { Random } from './random.ts';

export interface Target {
  /** The folder of its corpus, and its name for `npm run fuzz`. */
  readonly name: string;
  /** Texts of its language, from a grammar. */
  readonly make: Make;
  /** Words of its language, for mutations. */
  readonly words: readonly string[];
  /** Throws where the text is not treated as it should be. `random` decides what else is asked, such as a place in the text. */
  readonly check: (text: string, random: Random) => void;
}

/** What holds of the problems of any text: they stand in it, and say something that a person can read. */
export function checkProblems(problems: readonly Problem[], text: string): void {
  for (const problem of problems) {
    checkPlace(problem.at, text, problem.code);
    for (const { edits } of problem.mends) for (const edit of edits) checkPlace(edit.at, text, problem.code);
    const own = problem.message.replace(/`[^`]*`|"[^"]*"/g, '`…`');
    assert.ok(/^\S/u.test(problem.message) && !/[.!]$/u.test(own), `${problem.code}: ${problem.message}`);
    for (const [word] of own.matchAll(/\bundefined\b|\bNaN\b|\[object|\bnull\b/g))
      assert.ok(text.includes(word), `${problem.code}: ${problem.message}`);
  }
}

export function checkPlace(at: Span, text: string, what: string): void {
  assert.ok(0 <= at.start && at.start <= at.end && at.end <= text.length, `${what} at ${at.start} to ${at.end} of ${text.length}`);
}
