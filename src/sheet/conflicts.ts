// Regions of a file that a merge left with conflict markers, as git writes them.
import type { FileLines } from './file-lines.ts';

/** Lines `from` up to, not including, `to`. */
export interface LineRange {
  readonly from: number;
  readonly to: number;
}

const OURS = /^<{7}(?: |$)/;
const MIDDLE = /^={7}$/;
const THEIRS = /^>{7} \S/;
const MARKER = /^(?:<{7}(?: |$)|={7}$|\|{7}(?: |$)|>{7}(?: |$))/;

/** Whether a line is a conflict marker. */
export function isConflictMarker(line: string): boolean {
  return MARKER.test(line);
}

/**
 * The conflicting regions, markers included. An opening marker counts even where its other markers are gone, and a closing one
 * where a middle one stands before it: a half-resolved conflict is still one.
 */
export function findConflicts(lines: FileLines): readonly LineRange[] {
  if (!/[<>]{7}/.test(lines.text)) return [];
  const found: LineRange[] = [];
  let ours = -1;
  let middle = -1;
  for (let i = 0; i < lines.count; i++) {
    const line = lines.line(i);
    if (OURS.test(line)) {
      if (ours >= 0) found.push({ from: ours, to: ours + 1 });
      ours = i;
      middle = -1;
    } else if (MIDDLE.test(line)) {
      middle = i;
    } else if (THEIRS.test(line) && (ours >= 0 || middle >= 0)) {
      found.push({ from: ours >= 0 ? ours : middle, to: i + 1 });
      ours = -1;
      middle = -1;
    }
  }
  if (ours >= 0) found.push({ from: ours, to: ours + 1 });
  return found;
}
