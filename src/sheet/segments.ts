// Cuts a file's lines into segments: front matter, prose from heading to heading, calc blocks with their results.
import { nearSpellings } from '../text/near.ts';
import type { Problem } from '../text/problem.ts';
import { findConflicts, isConflictMarker, type LineRange } from './conflicts.ts';
import type { FileLines } from './file-lines.ts';
import type { Block } from './markdown.ts';
import { sheetProblem } from './problems.ts';
import { closesResults, isResultsRow, opensResults } from './results-block.ts';

/** Where a calc block's recorded results stand, and whether they are whole. */
export interface ResultsLines extends LineRange {
  readonly closed: boolean;
  readonly conflict: boolean;
}

/** Lines `from` up to, not including, `to`. The segments of a file follow on each other without a gap. */
export type Segment =
  | (LineRange & { readonly kind: 'front matter' })
  | (LineRange & { readonly kind: 'prose'; readonly conflict: boolean })
  | (LineRange & { readonly kind: 'calc'; readonly fence: LineRange; readonly closed: boolean; readonly results: ResultsLines | null });

export interface Segments {
  readonly segments: readonly Segment[];
  /** Blocks outside calc blocks and their results. */
  readonly blocks: readonly Block[];
  /** Regions that a person must resolve; conflicts in recorded results alone are not among them. */
  readonly conflicts: readonly LineRange[];
  /** The lines of all conflicts. */
  readonly conflictLines: ReadonlySet<number>;
}

/** Cuts the lines at the given blocks, whose lines are counted in the file; `first` is the line behind the front matter. */
export function cutSegments(lines: FileLines, blocks: readonly Block[], first: number, problems: Problem[]): Segments {
  const conflicts = findConflicts(lines);
  const conflictLines = linesOf(conflicts);
  const settled: ResultsLines[] = [];
  const segments: Segment[] = first > 0 ? [{ kind: 'front matter', from: 0, to: first }] : [];
  const others: Block[] = [];
  let done = first;
  const proseUpTo = (line: number) => {
    if (line > done) segments.push(prose(done, line, false));
    done = Math.max(done, line);
  };
  for (const block of blocks) {
    if (block.from < done) continue;
    if (block.level === 0 && block.kind === 'heading') proseUpTo(block.from);
    if (!isCalc(block, lines, problems)) {
      others.push(block);
      continue;
    }
    proseUpTo(block.from);
    const closed = isClosed(block, lines);
    const results = closed ? resultsBelow(block.to, lines, conflictLines) : null;
    if (results?.conflict) settled.push(results);
    done = results?.to ?? block.to;
    segments.push({ kind: 'calc', from: block.from, to: done, fence: { from: block.from, to: block.to }, closed, results });
  }
  proseUpTo(lines.count);
  const settledLines = linesOf(settled);
  const open = conflicts.filter((region) => ![...linesOf([region])].every((line) => settledLines.has(line)));
  for (const region of open) problems.push(sheetProblem('conflict-markers', lines.between(region.from, region.to), {}));
  return { segments: mergeConflicts(segments, open), blocks: others, conflicts: open, conflictLines };
}

function linesOf(ranges: readonly LineRange[]): ReadonlySet<number> {
  const all = new Set<number>();
  for (const { from, to } of ranges) for (let i = from; i < to; i++) all.add(i);
  return all;
}

/** Whether a word was meant for `ampwright`: spelt nearly so, in two parts, or as it sounds. */
function isNear(word: string): boolean {
  return /^amp?[ _-]?w?ri(?:ght|te)$/i.test(word) || (/^a/i.test(word) && nearSpellings(word, ['ampwright']).length > 0);
}

/** Whether a block is a calc block; reports one that was meant to be. */
function isCalc(block: Block, lines: FileLines, problems: Problem[]): boolean {
  if (block.kind !== 'fence') return false;
  const word = block.info.split(/\s/, 1)[0]!;
  const line = lines.line(block.from);
  if (word === 'ampwright') {
    if (block.level === 0 && line.startsWith(block.markup)) return true;
    problems.push(sheetProblem('block-not-at-margin', lines.between(block.from, block.from + 1), {}));
  } else if (isNear(word)) {
    const start = lines.start(block.from) + line.indexOf(word);
    problems.push(sheetProblem('info-string-near', { start, end: start + word.length }, { info: word }));
  }
  return false;
}

function isClosed(block: Block, lines: FileLines): boolean {
  const last = lines.line(block.to - 1);
  const end = /^ {0,3}(`{3,}|~{3,})[ \t]*$/.exec(last)?.[1];
  return block.to - block.from > 1 && end !== undefined && end.startsWith(block.markup);
}

/** The results block behind line `from`, with only blank lines between. */
function resultsBelow(from: number, lines: FileLines, conflictLines: ReadonlySet<number>): ResultsLines | null {
  const open = skipBlank(from, lines);
  return open < lines.count && opensResults(lines.line(open)) ? resultsFrom(open, lines, conflictLines) : null;
}

/** The results block that opens on line `open`: rows of a table and blank lines up to the closing comment, or to the last row. */
export function resultsFrom(open: number, lines: FileLines, conflictLines: ReadonlySet<number>): ResultsLines {
  let conflict = false;
  let end = open + 1;
  for (let i = skipBlank(end, lines); i < lines.count; i = skipBlank(i + 1, lines)) {
    const line = lines.line(i);
    if (closesResults(line)) return { from: open, to: i + 1, closed: true, conflict };
    const marker = conflictLines.has(i) && isConflictMarker(line);
    if (!marker && !isResultsRow(line)) break;
    conflict ||= marker;
    if (!conflict) end = i + 1;
  }
  return { from: open, to: end, closed: false, conflict: false };
}

function skipBlank(from: number, lines: FileLines): number {
  let i = from;
  while (i < lines.count && lines.blank(i)) i++;
  return i;
}

/** Segments that meet a conflicting region become one prose segment with it. */
function mergeConflicts(segments: readonly Segment[], conflicts: readonly LineRange[]): readonly Segment[] {
  if (conflicts.length === 0) return segments;
  const merged: Segment[] = [];
  let next = 0;
  for (const segment of segments) {
    while (next < conflicts.length && conflicts[next]!.to <= segment.from) next++;
    const region = conflicts[next];
    const last = merged.at(-1);
    if (!region || region.from >= segment.to) merged.push(segment);
    else if (last && region.from < segment.from) merged[merged.length - 1] = prose(last.from, segment.to, true);
    else merged.push(prose(segment.from, segment.to, true));
  }
  return merged;
}

function prose(from: number, to: number, conflict: boolean): Segment {
  return { kind: 'prose', from, to, conflict };
}
