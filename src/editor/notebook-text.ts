// A sheet's text as notebook cells, and notebook cells as text again: whatever was not edited keeps its bytes.
import { closingLine } from '../sheet/open-prose.ts';
import { readSheet } from '../sheet/read-sheet.ts';
import type { SheetCell } from '../sheet/sheet.ts';

/** What a cell of the notebook is made from. A conflict is prose that holds the markers of a merge and is shown as it stands. */
export type Part = 'front matter' | 'prose' | 'calc' | 'conflict';

/**
 * How the file has a cell: `before`, what the cell shows, `behind` and `after` are its bytes. Kept as cell metadata, which the editor carries
 * to and fro with the cells: `text` is what the cell shows where its line ends are not all those of the file, else null.
 */
export interface Layout {
  readonly part: Part;
  readonly before: string;
  readonly text: string | null;
  readonly behind: string;
  readonly after: string;
  /** Among the cells of the file, from 0. */
  readonly index: number;
}

/** What belongs to no cell. Kept as notebook metadata. */
export interface FileLayout {
  readonly lead: string;
  readonly lineEnd: string;
  /** What stands behind the last cell. */
  readonly end: string;
}

/** A cell as the editor has it; one that was added in the editor has no layout. */
export interface NotebookCell {
  readonly markup: boolean;
  readonly language: string;
  readonly text: string;
  readonly layout: Layout | null;
}

/** A sheet's text, and where the text of each notebook cell begins in it; null for a cell that is not written since it is empty. */
export interface SheetText {
  readonly text: string;
  readonly starts: readonly (number | null)[];
}

export const languageOf: Readonly<Record<Part, string>> = {
  'front matter': 'yaml',
  prose: 'markdown',
  calc: 'ampwright',
  conflict: 'plaintext',
};

/** The cells that the editor shows for a file's text. */
export function notebookCells(text: string): {
  readonly cells: readonly (NotebookCell & { readonly layout: Layout })[];
  readonly file: FileLayout;
} {
  const sheet = readSheet(text);
  const cells = sheet.cells.map((cell) => {
    const { text, ...around } = partsOf(cell);
    const layout = { ...around, text: withLineEnd(text, sheet.lineEnd) === text ? null : text };
    return { markup: layout.part === 'prose', language: languageOf[layout.part], text, layout };
  });
  return { cells, file: { lead: sheet.lead, lineEnd: sheet.lineEnd, end: sheet.cells.at(-1)?.after ?? '' } };
}

function partsOf(cell: SheetCell): Layout & { readonly text: string } {
  const { raw, at, after, index } = cell;
  if (cell.kind === 'prose') return { part: cell.conflict ? 'conflict' : 'prose', before: '', text: raw, behind: '', after, index };
  const [start, end] = [cell.code.start - at.start, cell.code.end - at.start];
  return { part: cell.kind, before: raw.slice(0, start), text: raw.slice(start, end), behind: raw.slice(end), after, index };
}

/** The file's text for the notebook's cells. Without a file layout the sheet is new: LF line ends and one at the end. */
export function sheetText(cells: readonly NotebookCell[], file: FileLayout | null): SheetText {
  const { lead, lineEnd, end } = file ?? { lead: '', lineEnd: '\n', end: '\n' };
  const written = cells.map((cell, place) => ({ ...piece(cell, lineEnd), place })).filter((piece) => piece.before + piece.text !== '');
  const starts: (number | null)[] = cells.map(() => null);
  let text = lead;
  for (const [i, { before, text: shown, behind, layout, place }] of written.entries()) {
    const next = written[i + 1];
    starts[place] = text.length + before.length;
    const asInFile = layout?.text === shown && next?.layout?.index === layout.index + 1;
    const ended = cells[place]!.markup ? (asInFile ? '' : openProse(shown, lineEnd)) : closed(before, shown, behind, lineEnd);
    text += before + shown + (next ? ended : behind);
    text += next ? separator(layout, next.layout, lineEnd) : end;
  }
  return { text, starts };
}

interface Piece {
  readonly before: string;
  readonly text: string;
  readonly behind: string;
  readonly layout: Layout | null;
}

function piece(cell: NotebookCell, lineEnd: string): Piece {
  const { layout } = cell;
  const fits = layout !== null && languageOf[layout.part] === cell.language && cell.markup === (layout.part === 'prose');
  if (fits && layout.text !== null && oneLineEnd(cell.text) === oneLineEnd(layout.text)) return { ...layout, text: layout.text, layout };
  const text = withLineEnd(cell.text, lineEnd);
  if (fits) return { ...surrounded(layout, text, lineEnd), layout };
  if (cell.markup) return { before: '', text, behind: '', layout };
  return { ...fenced(cell.language, text, lineEnd), layout };
}

/** An edited text between what surrounded the one that the file has. */
function surrounded({ part, before, behind }: Layout, text: string, lineEnd: string): Omit<Piece, 'layout'> {
  if (part === 'prose' || part === 'conflict') return { before, text, behind };
  const ended = behind !== '' && text !== '' && !/^[\r\n]/.test(behind) ? lineEnd + behind : behind;
  if (part === 'front matter' || !closes(before, text)) return { before, text, behind: ended };
  const longer = fenced('ampwright', text, lineEnd);
  return { ...longer, behind: longer.behind + ended.replace(/^\s*[`~]*[ \t]*/, '') };
}

/** Whether a line of the code would end the block that `before` opens. */
function closes(before: string, code: string): boolean {
  const fence = /^[`~]+/.exec(before)?.[0] ?? '```';
  const ends = oneLineEnd(code).matchAll(/^ {0,3}(`{3,}|~{3,})[ \t]*$/gm);
  return [...ends].some(([, end]) => end!.startsWith(fence));
}

/** A new block, whose fence is longer than any in the code. */
function fenced(language: string, code: string, lineEnd: string): Omit<Piece, 'layout'> {
  const longest = Math.max(2, ...Array.from(code.matchAll(/^ {0,3}(`{3,})/gm), ([, fence]) => fence!.length));
  const fence = '`'.repeat(longest + 1);
  return { before: fence + language + lineEnd, text: code, behind: (code === '' ? '' : lineEnd) + fence };
}

/** What stands behind the code of a block with more cells below: a block that is not closed would swallow them. */
function closed(before: string, text: string, behind: string, lineEnd: string): string {
  const fence = /^[`~]{3,}/.exec(before)?.[0];
  return behind === '' && fence ? (text === '' || /[\r\n]$/.test(text) ? '' : lineEnd) + fence : behind;
}

/** What stands behind prose that was typed, with more cells below: a fence or a comment that is still open would swallow them. */
function openProse(text: string, lineEnd: string): string {
  const line = closingLine(text);
  return line === '' ? '' : lineEnd + line;
}

/** Cells that followed on each other in the file keep what stood between them; others get a blank line. */
function separator(layout: Layout | null, next: Layout | null, lineEnd: string): string {
  if (layout && next && next.index === layout.index + 1) return layout.after;
  const lines = layout?.after.match(/\r\n|\r|\n/g)?.length ?? 0;
  return lines >= 2 ? layout!.after : lineEnd + lineEnd;
}

const withLineEnd = (text: string, lineEnd: string): string => {
  const lines = oneLineEnd(text);
  return lineEnd === '\n' ? lines : lines.replaceAll('\n', lineEnd);
};
const oneLineEnd = (text: string): string => text.replace(/\r\n?/g, '\n');
