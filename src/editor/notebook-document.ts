// The notebook of the editor's API, taken as a sheet's cells.
import * as vscode from 'vscode';
import { type FileLayout, type Layout, type NotebookCell, type SheetText, sheetText } from './notebook-text.ts';

/** Where the serializer leaves the layout of the file. Both keys are declared transient: they are derived from the file. */
export interface CellMetadata {
  readonly layout: Layout;
}
export interface DocumentMetadata {
  readonly file: FileLayout;
}

/** A cell as it stands in the editor now. */
function cellOf(cell: vscode.NotebookCell): NotebookCell {
  const { document, metadata } = cell;
  return {
    markup: cell.kind === vscode.NotebookCellKind.Markup,
    language: document.languageId,
    text: document.getText(),
    layout: (metadata as Partial<CellMetadata>).layout ?? null,
  };
}

/** The text of the sheet as it stands in the editor now. */
export function currentText(notebook: vscode.NotebookDocument): SheetText {
  return sheetText(notebook.getCells().map(cellOf), (notebook.metadata as Partial<DocumentMetadata>).file ?? null);
}
