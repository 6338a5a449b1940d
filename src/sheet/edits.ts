// Changes to a text by ranges: everything outside the ranges keeps its bytes.
import type { Edit } from '../text/problem.ts';

/** The text with all edits made. Ranges do not overlap; order does not matter, edits at one place keep theirs. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  if (edits.length === 0) return text;
  const sorted = [...edits].sort((a, b) => a.at.start - b.at.start || a.at.end - b.at.end);
  const pieces: string[] = [];
  let done = 0;
  for (const edit of sorted) {
    pieces.push(text.slice(done, edit.at.start), edit.text);
    done = edit.at.end;
  }
  pieces.push(text.slice(done));
  return pieces.join('');
}
