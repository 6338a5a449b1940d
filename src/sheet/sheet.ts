// What a sheet is once its file has been read: cells that cover the text without losing a byte, and what they hold.
import type { LineMap } from '../text/lines.ts';
import type { Problem } from '../text/problem.ts';
import type { Span } from '../text/span.ts';
import type { FrontMatter } from './front-matter.ts';
import type { ProseValue } from './prose-values.ts';
import type { ResultRow } from './results-block.ts';
import type { Table } from './table.ts';
import type { TableCaption } from './table-caption.ts';

export type LineEnd = '\n' | '\r\n' | '\r';

/**
 * One piece of the file. `lead` of the sheet followed by `raw` and `after` of every cell, in order, is the file's text.
 * All spans are in the file.
 */
interface CellBase {
  /** Among all cells of the sheet, from 0. */
  readonly index: number;
  /** The piece without the separator behind it. */
  readonly at: Span;
  /** The file's text at `at`. */
  readonly raw: string;
  /** The separator: line ends and blank lines up to the next cell or the file's end. */
  readonly after: string;
  /** What an editor shows of the cell: the code, the YAML, or the Markdown. */
  readonly text: string;
}

/** The YAML between two lines `---` at the file's start. `text` is the YAML and stands at `code`. */
export interface FrontMatterCell extends CellBase {
  readonly kind: 'front matter';
  readonly code: Span;
}

/** Markdown from a heading (or the end of a block) to the next. `text` is `raw`. */
export interface ProseCell extends CellBase {
  readonly kind: 'prose';
  /** Whether it holds conflict markers of a merge; then nothing in it is evaluated or written. */
  readonly conflict: boolean;
}

/** A fenced block with the info string `ampwright`, and the recorded results under it. */
export interface CalcCell extends CellBase {
  readonly kind: 'calc';
  /** Among the calc cells, from 0. */
  readonly number: number;
  /** From the opening fence to the end of the closing one. */
  readonly fence: Span;
  /** `text`, the code without the line end before the closing fence: an offset in it plus `code.start` is an offset in the file. */
  readonly code: Span;
  /** Whether the closing fence is there; results are written only then. */
  readonly closed: boolean;
  readonly results: RecordedResults | null;
}

export type SheetCell = FrontMatterCell | ProseCell | CalcCell;

/** The results block under a calc cell, as it stands in the file. */
export interface RecordedResults {
  /** From `<!-- results -->` to the end of `<!-- end results -->`. */
  readonly at: Span;
  /** Its rows, or null where it is not a well-formed results block (a problem says why). */
  readonly rows: readonly ResultRow[] | null;
}

/** A sheet as its file has it. */
export interface Sheet {
  readonly text: string;
  readonly lines: LineMap;
  /** The file's first line end; LF where it has none. */
  readonly lineEnd: LineEnd;
  /** What stands before the first cell: a byte order mark, blank lines. */
  readonly lead: string;
  readonly cells: readonly SheetCell[];
  readonly frontMatter: FrontMatter;
  /** Pipe tables, in order of the text. */
  readonly tables: readonly Table[];
  /** Captions that link to a CSV file; `readCsvTable` makes a table of the caption and the file's text. */
  readonly csvTables: readonly TableCaption[];
  /** Links in prose that may stand for an entry's value. */
  readonly values: readonly ProseValue[];
  /** Regions with conflict markers. While there is one, `writeSheet` changes nothing. */
  readonly conflicts: readonly Span[];
  /** Problems of the file itself; places are in the file. */
  readonly problems: readonly Problem[];
}

// Sorted out once a sheet: each of many places may ask for them.
const known = new WeakMap<Sheet['cells'], readonly CalcCell[]>();

/** The calc cells, in order. */
export function calcCells(sheet: Sheet): readonly CalcCell[] {
  const calc = known.get(sheet.cells) ?? sheet.cells.filter((cell) => cell.kind === 'calc');
  known.set(sheet.cells, calc);
  return calc;
}
