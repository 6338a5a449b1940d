// A document in which writing help is given, with the sheet that it shows: a cell of a notebook, or the whole file opened as text.
import * as vscode from 'vscode';
import { block, contentOf, type Location, SHEET, type Spot, spotInFile, type TextId } from '../assist/location.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import type { SheetResult } from '../run/result.ts';
import { calcCells, type SheetCell } from '../sheet/sheet.ts';
import { lineMap, positionAt } from '../text/lines.ts';
import type { Span } from '../text/span.ts';
import { libraryDocument } from './library-documents.ts';
import { locationInBlock, locationInFile } from './places.ts';
import type { Answer } from './session.ts';

/** An open sheet, and where its texts are shown. */
export interface ShownSheet {
  /** The sheet's file. */
  readonly uri: vscode.Uri;
  readonly open: OpenSheet;
  readonly result: SheetResult;
  /** Where a place of the sheet, or of a file that it uses, is shown; undefined where it is not. */
  locate(place: Location): vscode.Location | undefined;
}

export interface Page extends ShownSheet {
  readonly document: vscode.TextDocument;
  /** What the document shows: the code of one block, the prose of one cell, or everything. */
  readonly texts: readonly TextId[];
  spot(position: vscode.Position): Spot;
  /** Where a place is shown in this very document; null where it is not. */
  range(place: Location): vscode.Range | null;
}

/** A span of a document as its range. */
export function rangeOf(document: vscode.TextDocument, { start, end }: Span): vscode.Range {
  return new vscode.Range(document.positionAt(start), document.positionAt(end));
}

/** The sheet of a notebook. */
export function notebookSheet({ uri }: vscode.NotebookDocument, { open, result, laid }: Answer): ShownSheet {
  const locate = (place: Location): vscode.Location | undefined => {
    switch (place.text.kind) {
      case 'block':
        return locationInBlock(laid, place.text.number, open.cells[place.text.number]?.code ?? '', place.at);
      case 'sheet':
        return locationInFile(laid, place.at);
      default:
        return elsewhere(uri, open, place);
    }
  };
  return { uri, open, result, locate };
}

/** The page of a cell's document; undefined where it is no cell of the sheet that was read. */
export function cellPage(notebook: vscode.NotebookDocument, answer: Answer, document: vscode.TextDocument): Page | undefined {
  const { laid } = answer;
  const found = [...laid.shownBy].find(([, cell]) => cell.document === document)?.[0];
  if (!found || found.kind === 'front matter') return undefined;
  const sheet = notebookSheet(notebook, answer);
  const texts = [found.kind === 'calc' ? block(found.number) : SHEET];
  const range = (place: Location) => {
    const location = sheet.locate(place);
    return location?.uri.toString() === document.uri.toString() ? location.range : null;
  };
  const spot = (position: vscode.Position): Spot =>
    found.kind === 'calc'
      ? { text: block(found.number), offset: document.offsetAt(position) }
      : { text: SHEET, offset: offsetInProse(answer, found, position) };
  return { ...sheet, document, texts, spot, range };
}

function offsetInProse({ laid: { sheet } }: Answer, cell: SheetCell, { line, character }: vscode.Position): number {
  const first = positionAt(sheet.lines, cell.at.start).line;
  return Math.min((sheet.lines.starts[first + line] ?? cell.at.end) + character, cell.at.end);
}

/** The page of a sheet that is opened as text. */
export function textPage(document: vscode.TextDocument, open: OpenSheet, result: SheetResult): Page {
  const { sheet } = open.loaded;
  const starts = calcCells(sheet).map((cell) => cell.code.start);
  const range = ({ text, at }: Location) => {
    if (text.kind !== 'sheet' && text.kind !== 'block') return null;
    const by = text.kind === 'block' ? (starts[text.number] ?? 0) : 0;
    return rangeOf(document, { start: at.start + by, end: at.end + by });
  };
  const locate = (place: Location) => {
    const shown = range(place);
    return shown ? new vscode.Location(document.uri, shown) : elsewhere(document.uri, open, place);
  };
  return {
    uri: document.uri,
    open,
    result,
    document,
    texts: [SHEET, ...[...open.cells.keys()].map(block)],
    spot: (position) => spotInFile(sheet, document.offsetAt(position)),
    range,
    locate,
  };
}

/** A place in a file that the sheet uses, or in a sheet of the library. */
function elsewhere(sheet: vscode.Uri, open: OpenSheet, { text, at }: Location): vscode.Location | undefined {
  if (text.kind !== 'file' && text.kind !== 'library') return undefined;
  const content = contentOf(open, text);
  const lines = content === null ? null : lineMap(content);
  const position = (offset: number) => {
    const { line, column } = lines ? positionAt(lines, offset) : { line: 0, column: offset };
    return new vscode.Position(line, column);
  };
  const uri = text.kind === 'library' ? libraryDocument(text.name) : vscode.Uri.joinPath(sheet, '..', text.path);
  return new vscode.Location(uri, new vscode.Range(position(at.start), position(at.end)));
}
