// Opens a sheet's file as a notebook and saves it: with results computed from the text, and every other byte as it was.
import * as vscode from 'vscode';
import { recordSheet } from '../run/record.ts';
import { decodeSheet, encodeSheet } from '../sheet/decode.ts';
import { tellOfLargeSheet } from './large-sheet.ts';
import type { CellMetadata, DocumentMetadata } from './notebook-document.ts';
import { notebookCells, sheetText } from './notebook-text.ts';
import type { Sessions } from './sessions.ts';
import { isSheet } from './sheet-documents.ts';

/** The serializer of sheets. */
export function serializer(sessions: Sessions): vscode.NotebookSerializer & vscode.Disposable {
  // The serializer is not told which notebook it saves, nor given what is transient: both are found in the open notebook.
  let saving: vscode.NotebookDocument | undefined;
  const willSave = vscode.workspace.onWillSaveNotebookDocument(({ notebook }) => {
    saving = notebook;
  });
  return {
    deserializeNotebook(bytes) {
      const data = deserialized(bytes);
      tellOfLargeSheet(bytes.length, data.cells.length, sessions);
      return data;
    },
    async serializeNotebook(data) {
      const notebook = openNotebook(data, saving);
      const session = notebook && sessions.of(notebook);
      return encodeSheet(session ? recordSheet(await session.evaluate()) : unopened(data));
    },
    dispose: () => willSave.dispose(),
  };
}

function deserialized(bytes: Uint8Array): vscode.NotebookData {
  const text = decodeSheet(bytes);
  if (typeof text !== 'string') throw refusal(`This file can't be opened as a sheet: ${text.refused}. It stays as it is.`);
  const { cells, file } = notebookCells(text);
  const data = new vscode.NotebookData(
    cells.map(({ markup, language, text, layout }) => {
      const kind = markup ? vscode.NotebookCellKind.Markup : vscode.NotebookCellKind.Code;
      const cell = new vscode.NotebookCellData(kind, text, language);
      cell.metadata = { layout } satisfies CellMetadata;
      return cell;
    }),
  );
  data.metadata = { file } satisfies DocumentMetadata;
  return data;
}

/** The editor itself shows nothing of an error but that there was one. */
function refusal(words: string): Error {
  void vscode.window.showErrorMessage(words);
  return new Error(words);
}

/** The open notebook whose cells are these; of two that are alike the one whose saving was announced last. */
function openNotebook(data: vscode.NotebookData, saving: vscode.NotebookDocument | undefined): vscode.NotebookDocument | undefined {
  const alike = vscode.workspace.notebookDocuments.filter((notebook) => isSheet(notebook) && holds(notebook, data));
  return alike.find((notebook) => notebook === saving) ?? alike.find((notebook) => notebook.isDirty) ?? alike[0];
}

function holds(notebook: vscode.NotebookDocument, { cells }: vscode.NotebookData): boolean {
  return (
    cells.length === notebook.cellCount &&
    cells.every((cell, i) => {
      const { kind, document } = notebook.cellAt(i);
      return kind === cell.kind && document.languageId === cell.languageId && oneLineEnd(document.getText()) === oneLineEnd(cell.value);
    })
  );
}

/** The text of cells that are in no open notebook: new, and without results, since the files that they read are not known. */
function unopened({ cells }: vscode.NotebookData): string {
  const all = cells.map(({ kind, languageId, value }) => {
    return { markup: kind === vscode.NotebookCellKind.Markup, language: languageId, text: value, layout: null };
  });
  return sheetText(all, null).text;
}

const oneLineEnd = (text: string): string => text.replace(/\r\n?/g, '\n');
