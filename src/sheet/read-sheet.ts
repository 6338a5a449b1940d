// Reads a sheet's file: text in, cells with their places out. No byte is lost and no text is refused.
import { positionAt } from '../text/lines.ts';
import type { Problem } from '../text/problem.ts';
import { span } from '../text/span.ts';
import { directionControls } from './direction-controls.ts';
import { type FileLines, fileLines, lineEndFrom } from './file-lines.ts';
import { readFrontMatter } from './front-matter.ts';
import { frontMatterCode, frontMatterEnd, isDashes } from './front-matter-lines.ts';
import { type Block, readBlocks } from './markdown.ts';
import { sheetProblem } from './problems.ts';
import { readProseValues } from './prose-values.ts';
import { closesResults, opensResults, readResults } from './results-block.ts';
import { cutSegments, resultsFrom, type Segment, type Segments } from './segments.ts';
import type { Sheet, SheetCell } from './sheet.ts';
import { readTables } from './tables.ts';

/** Reads the text of a `*.ampwright.md` file. Never throws; what is wrong with the file is among `problems`. */
export function readSheet(text: string): Sheet {
  const problems: Problem[] = [];
  const lines = fileLines(text);
  const first = frontMatterEnd(lines);
  if (first === 0 && isDashes(lines, 0)) problems.push(sheetProblem('front-matter-not-closed', lines.between(0, 1), {}));
  const body = text.slice(lines.start(first));
  const blocks = readBlocks(body, first);
  const cut = cutSegments(lines, blocks, first, problems);
  const { lead, cells } = makeCells(lines, cut.segments, problems);
  reportStrayResults(lines, cut, cells, problems);
  const calm = cells.filter((cell) => cell.kind === 'prose' && !cell.conflict);
  const readable = blocksWithin(cut.blocks, lines, calm);
  const { tables, csvTables } = readTables(lines, readable, problems);
  const front = cells.find((cell) => cell.kind === 'front matter');
  // The lexer looks after the code of calc blocks; recorded results repeat what stands elsewhere.
  problems.push(
    ...directionControls(
      text,
      cells.filter((cell) => cell.kind === 'calc').map((cell) => cell.at),
    ),
  );
  return {
    text,
    lines: lines.map,
    lineEnd: lineEndFrom(text, 0),
    lead,
    cells,
    frontMatter: readFrontMatter(text, front?.code ?? null, problems),
    tables,
    csvTables,
    values: readProseValues(lines, readable),
    conflicts: cut.conflicts.map((region) => lines.between(region.from, region.to)),
    problems: problems.sort((a, b) => a.at.start - b.at.start),
  };
}

/** Cells of the segments; blank lines at a segment's end are the separator behind it. */
function makeCells(lines: FileLines, segments: readonly Segment[], problems: Problem[]): { lead: string; cells: readonly SheetCell[] } {
  const { text } = lines;
  const cells: SheetCell[] = [];
  const pieces: { segment: Segment; start: number; end: number }[] = [];
  for (const segment of segments) {
    let [from, to] = [segment.from, segment.to];
    while (from < to && lines.blank(from)) from++;
    while (to > from && lines.blank(to - 1)) to--;
    if (from < to) pieces.push({ segment, ...lines.between(from, to) });
  }
  let number = 0;
  for (const [index, { segment, start, end }] of pieces.entries()) {
    const after = text.slice(end, pieces[index + 1]?.start ?? text.length);
    const at = span(start, end);
    const raw = text.slice(start, end);
    // Written out: to spread one record into another takes ten times as long, and a long sheet has thousands.
    if (segment.kind === 'prose') cells.push({ kind: 'prose', index, at, raw, after, text: raw, conflict: segment.conflict });
    else if (segment.kind === 'front matter') {
      const code = frontMatterCode(lines, segment.to);
      cells.push({ kind: 'front matter', index, at, raw, after, code, text: text.slice(code.start, code.end) });
    } else {
      const { fence, code, text: inside, closed, results } = calcPart(lines, segment, end, problems);
      cells.push({ kind: 'calc', index, at, raw, after, number: number++, fence, code, text: inside, closed, results });
    }
  }
  return { lead: text.slice(0, pieces[0]?.start ?? text.length), cells };
}

function calcPart(lines: FileLines, segment: Segment & { kind: 'calc' }, end: number, problems: Problem[]) {
  const { fence, closed, results } = segment;
  const opening = lines.line(fence.from).match(/^[`~]+/)?.[0] ?? '```';
  const openingAt = lines.between(fence.from, fence.from + 1);
  if (!closed) problems.push(sheetProblem('block-not-closed', openingAt, { fence: opening }));
  const inner = lines.between(fence.from + 1, fence.to - (closed ? 1 : 0));
  const code = closed ? inner : span(Math.min(inner.start, end), Math.min(inner.end, end));
  const text = lines.text.slice(code.start, code.end);
  const inside = /(?:^|[\r\n]) {0,3}(?:`{3}|~{3})/.exec(text);
  if (inside !== null) {
    const { line } = positionAt(lines.map, code.start + inside.index + inside[0].length);
    const at = lines.between(line, line + 1);
    problems.push(sheetProblem('fence-in-block', at, { fence: opening }, [{ at: openingAt, label: 'opened here' }]));
  }
  const fenceAt = closed ? lines.between(fence.from, fence.to) : span(lines.start(fence.from), end);
  return { fence: fenceAt, code, text, closed, results: results && recorded(lines, results, problems) };
}

function recorded(lines: FileLines, results: NonNullable<(Segment & { kind: 'calc' })['results']>, problems: Problem[]) {
  const at = lines.between(results.from, results.to);
  if (results.conflict) problems.push(sheetProblem('results-conflict', at, {}));
  else if (!results.closed) problems.push(sheetProblem('results-not-closed', at, {}));
  return { at, rows: results.closed && !results.conflict ? readResults(lines.text.slice(at.start, at.end)) : null };
}

/** Reports comments of results blocks that stand where no results block is read. */
function reportStrayResults(lines: FileLines, cut: Segments, cells: readonly SheetCell[], problems: Problem[]): void {
  const behindResults = new Set(cells.flatMap((cell) => (hasResults(cells[cell.index - 1]) ? [cell.at.start] : [])));
  let done = 0;
  for (const block of cut.blocks) {
    if (block.level > 0 || block.kind !== 'html' || block.from < done) continue;
    const line = lines.line(block.from);
    if (closesResults(line)) problems.push(sheetProblem('results-end-alone', lines.between(block.from, block.from + 1), {}));
    if (!opensResults(line)) continue;
    const stray = resultsFrom(block.from, lines, cut.conflictLines);
    const at = lines.between(stray.from, stray.to);
    problems.push(sheetProblem(behindResults.has(at.start) ? 'results-twice' : 'results-without-block', at, {}));
    done = stray.to;
  }
}

function hasResults(cell: SheetCell | undefined): boolean {
  return cell?.kind === 'calc' && cell.results !== null;
}

/** The blocks that stand in one of the cells; both in the order of the text. */
function blocksWithin(blocks: readonly Block[], lines: FileLines, cells: readonly SheetCell[]): readonly Block[] {
  let next = 0;
  return blocks.filter((block) => {
    const start = lines.start(block.from);
    while (next < cells.length && cells[next]!.at.end < start) next++;
    return next < cells.length && cells[next]!.at.start <= start;
  });
}
