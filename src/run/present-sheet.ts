// The sheet's file as it would be with the edits of its blocks: its text, and where places of the text that was read have moved.
import { applyEdits } from '../sheet/edits.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import { calcCells, type Sheet } from '../sheet/sheet.ts';
import type { Edit, Problem } from '../text/problem.ts';
import type { Span } from '../text/span.ts';
import type { OpenSheet } from './open-sheet.ts';
import { moved } from './used-problems.ts';

/** Changes of blocks since the file was read, in the order of the file. */
function editsOf({ loaded, cells }: OpenSheet): readonly Edit[] {
  return calcCells(loaded.sheet).flatMap(({ number, code: at, text }) => {
    const code = cells[number]?.code ?? text;
    // A block without a line has none to end either.
    const end = code === '' || /^(?:[\r\n]|$)/.test(loaded.sheet.text.slice(at.end, at.end + 1)) ? '' : loaded.sheet.lineEnd;
    return code === text ? [] : [{ at, text: code + end }];
  });
}

/** The sheet as it is now; as it was read where an edit would break out of its block. */
export function presentSheet(open: OpenSheet): Sheet {
  const edits = editsOf(open);
  if (edits.length === 0) return open.loaded.sheet;
  const sheet = readSheet(applyEdits(open.loaded.sheet.text, edits));
  const cells = calcCells(sheet);
  const same = cells.length === open.cells.length && cells.every(({ text }, number) => text === open.cells[number]!.code);
  return same ? sheet : open.loaded.sheet;
}

/** By how much an offset of the file outside its blocks has moved since the file was read. */
export function movement(open: OpenSheet): (offset: number) => number {
  const edits = editsOf(open);
  return (offset) => edits.reduce((by, { at, text }) => (at.end <= offset ? by + text.length - (at.end - at.start) : by), 0);
}

/** A problem of the file outside its blocks where its places are now, those of its mends included. */
export function movedProblem(problem: Problem, by: (offset: number) => number): Problem {
  const now = (at: Span) => moved(at, by(at.start));
  const placed = <T extends { readonly at: Span }>(one: T): T => ({ ...one, at: now(one.at) });
  return {
    ...problem,
    at: now(problem.at),
    mends: problem.mends.map((mend) => ({ ...mend, edits: mend.edits.map(placed) })),
    places: problem.places.map((place) => (place.cell === undefined ? placed(place) : place)),
  };
}
