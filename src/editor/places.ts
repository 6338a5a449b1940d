// Places of a sheet's file, and of the code of its blocks, as places in the cells of its notebook.
import * as vscode from 'vscode';
import { lineMap, positionAt } from '../text/lines.ts';
import type { Span } from '../text/span.ts';
import type { Laid } from './laid.ts';

/** Where a place of the file is shown. What is not shown itself (a fence, recorded results) counts as the nearest end of its cell. */
export function locationInFile({ sheet, shownBy }: Laid, { start, end }: Span): vscode.Location | undefined {
  const cell = sheet.cells.findLast(({ at }) => at.start <= start) ?? sheet.cells[0];
  const shown = cell && shownBy.get(cell);
  if (!shown) return undefined;
  const first = positionAt(sheet.lines, cell.kind === 'prose' ? cell.at.start : cell.code.start).line;
  const position = (offset: number) => {
    const { line, column } = positionAt(sheet.lines, offset);
    return line < first ? new vscode.Position(0, 0) : shown.document.validatePosition(new vscode.Position(line - first, column));
  };
  return new vscode.Location(shown.document.uri, new vscode.Range(position(start), position(end)));
}

/** Where a place in the code of the block with a number is shown. */
export function locationInBlock({ blocks }: Laid, number: number, code: string, { start, end }: Span): vscode.Location | undefined {
  const shown = blocks[number];
  if (!shown) return undefined;
  const lines = lineMap(code);
  const position = (offset: number) => {
    const { line, column } = positionAt(lines, offset);
    return new vscode.Position(line, column);
  };
  return new vscode.Location(shown.document.uri, new vscode.Range(position(start), position(end)));
}
