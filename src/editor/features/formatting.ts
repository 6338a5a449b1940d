// Formatting of calc cells: spacing, and clauses in columns.
import * as vscode from 'vscode';
import { formatEdits } from '../../assist/formatting.ts';
import { CELLS, rangeOf } from '../spots.ts';

export function formatting(): vscode.Disposable {
  const edits = (document: vscode.TextDocument, range?: vscode.Range) => {
    const within = range && { start: document.offsetAt(range.start), end: document.offsetAt(range.end) };
    return formatEdits(document.getText(), within).map(({ at, text }) => vscode.TextEdit.replace(rangeOf(document, at), text));
  };
  return vscode.Disposable.from(
    vscode.languages.registerDocumentFormattingEditProvider(CELLS, { provideDocumentFormattingEdits: (document) => edits(document) }),
    vscode.languages.registerDocumentRangeFormattingEditProvider(CELLS, { provideDocumentRangeFormattingEdits: edits }),
  );
}
