// The tables of a sheet: pipe tables under a caption, and captions that link to a CSV file.
import type { Problem } from '../text/problem.ts';
import { type Span, span } from '../text/span.ts';
import type { FileLines } from './file-lines.ts';
import type { Block } from './markdown.ts';
import { splitRow, unescapeCell } from './pipe-row.ts';
import type { Table } from './table.ts';
import { looksLikeCaption, readCaption, type TableCaption } from './table-caption.ts';
import { MAX_ROWS, makeTable, type RawRow } from './table-columns.ts';
import { tableProblem } from './table-problems.ts';

export interface SheetTables {
  readonly tables: readonly Table[];
  readonly csvTables: readonly TableCaption[];
}

/** Reads every table in the blocks at the margin; what is wrong goes to `problems`. Of two tables of one name the first counts. */
export function readTables(lines: FileLines, blocks: readonly Block[], problems: Problem[]): SheetTables {
  const tables: Table[] = [];
  const csvTables: TableCaption[] = [];
  const names = new Map<string, Span>();
  const isFirst = ({ name, nameAt }: TableCaption) => {
    const first = names.get(name);
    if (first) problems.push(tableProblem('table-twice', nameAt, { name }, [{ at: first, label: 'the first one' }]));
    else names.set(name, nameAt);
    return !first;
  };
  const margin = blocks.filter((block) => block.level === 0);
  for (const [i, block] of margin.entries()) {
    if (block.kind !== 'paragraph' || !looksLikeCaption(lines.line(block.to - 1))) continue;
    const below = tableBelow(margin[i + 1], block.to, lines);
    const found: Problem[] = [];
    const caption = readCaption(lines.line(block.to - 1), lines.start(block.to - 1), found);
    if (caption?.path != null) {
      problems.push(...found);
      if (isFirst(caption)) csvTables.push(caption);
    } else if (below) {
      problems.push(...found);
      if (caption && isFirst(caption)) tables.push(readPipeTable(lines, caption, below, problems));
    } else if (caption && block.to - block.from === 1) {
      problems.push(tableProblem('caption-alone', caption.at, { name: caption.name }));
    }
  }
  return { tables, csvTables };
}

/** The block as a table, if it is one with only blank lines between it and line `from`. */
function tableBelow(block: Block | undefined, from: number, lines: FileLines): Block | null {
  if (block?.kind !== 'table') return null;
  for (let i = from; i < block.from; i++) if (!lines.blank(i)) return null;
  return block;
}

function readPipeTable(lines: FileLines, caption: TableCaption, block: Block, problems: Problem[]): Table {
  const cells = (i: number) => splitRow(lines.line(i), lines.start(i)).map(({ text, at }) => ({ text: unescapeCell(text), at }));
  const rows: RawRow[] = [];
  const first = block.from + 2;
  for (let i = first; i < Math.min(block.to, first + MAX_ROWS + 1); i++) {
    const its = cells(i);
    const at = lines.between(i, i + 1);
    rows.push({ texts: its.map((cell) => cell.text), at, placeOf: (column) => its[column]?.at ?? at });
  }
  const at = span(caption.at.start, lines.between(block.from, block.to).end);
  return makeTable(caption, { heads: cells(block.from), rows, keepPlaces: true, ragged: 'row-ragged' }, at, problems);
}
