// Characters that turn the writing direction: a person reads the text around them otherwise than it stands in the file.
import type { Problem } from '../text/problem.ts';
import { type Span, span } from '../text/span.ts';
import { sheetProblem } from './problems.ts';

/** Embeddings, overrides and isolates (UAX 9, table 4). */
const CONTROLS = /[\u202a-\u202e\u2066-\u2069]+/g;

/** Warns of each run of them in a text but for the parts (in the order of the text) that others look after. */
export function directionControls(text: string, except: readonly Span[] = []): readonly Problem[] {
  const problems: Problem[] = [];
  let next = 0;
  for (const { 0: run, index } of text.matchAll(CONTROLS)) {
    while (next < except.length && except[next]!.end <= index) next++;
    if (next < except.length && except[next]!.start <= index) continue;
    const characters = [...new Set(run)].map((c) => `U+${c.charCodeAt(0).toString(16).toUpperCase()}`).join(', ');
    problems.push(sheetProblem('direction-control', span(index, index + run.length), { characters }));
  }
  return problems;
}
