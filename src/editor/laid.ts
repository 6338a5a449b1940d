// How a sheet lies in its notebook: which cell shows which piece of the file, and what was edited since.
import type * as vscode from 'vscode';
import { calcCells, type Sheet, type SheetCell } from '../sheet/sheet.ts';

/** The cells of a notebook at one moment. */
export interface Snapshot {
  readonly cells: readonly vscode.NotebookCell[];
  readonly texts: readonly string[];
  readonly languages: readonly string[];
}

/** A sheet as it was read from the notebook, and the cells as they are now: since then only code of blocks may have changed. */
export interface Laid {
  readonly sheet: Sheet;
  /** The notebook cell of a cell of the file; none for a block in prose that the user has just typed. */
  readonly shownBy: ReadonlyMap<SheetCell, vscode.NotebookCell>;
  /** The notebook cells of the calc cells, by number. */
  readonly blocks: readonly (vscode.NotebookCell | undefined)[];
  readonly snapshot: Snapshot;
}

export function snapshot(notebook: vscode.NotebookDocument): Snapshot {
  const cells = notebook.getCells();
  return { cells, texts: cells.map((cell) => cell.document.getText()), languages: cells.map((cell) => cell.document.languageId) };
}

/** The sheet in the cells that it was read from. `starts` says where the text of each of them begins in it. */
export function lay(sheet: Sheet, starts: readonly (number | null)[], snapshot: Snapshot): Laid {
  const byStart = new Map(snapshot.cells.map((cell, i) => [starts[i], cell]));
  const shownBy = new Map<SheetCell, vscode.NotebookCell>();
  for (const cell of sheet.cells) {
    const shown = byStart.get(cell.kind === 'prose' ? cell.at.start : cell.code.start);
    if (shown) shownBy.set(cell, shown);
  }
  return { sheet, shownBy, blocks: calcCells(sheet).map((cell) => shownBy.get(cell)), snapshot };
}

/** Whether the same cells of a notebook show the same blocks. */
export function liesAs(a: Laid, b: Laid): boolean {
  return sameCells(a.snapshot, b.snapshot) && a.blocks.length === b.blocks.length && a.blocks.every((cell, i) => cell === b.blocks[i]);
}

function sameCells(before: Snapshot, now: Snapshot): boolean {
  return (
    before.cells.length === now.cells.length &&
    now.cells.every((cell, i) => cell === before.cells[i] && now.languages[i] === before.languages[i])
  );
}

/** The numbers of the blocks whose code is another now; null where anything else has changed too. */
export function editedBlocks({ snapshot: before, blocks }: Laid, now: Snapshot): readonly number[] | null {
  if (!sameCells(before, now)) return null;
  const numbers = now.cells.flatMap((cell, i) => (now.texts[i] === before.texts[i] ? [] : [blocks.indexOf(cell)]));
  return numbers.includes(-1) ? null : numbers;
}
