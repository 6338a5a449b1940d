// Where writing help is given: in calc and prose cells of open sheets, and in sheets opened as text.
import * as vscode from 'vscode';
import type { LocatedEdit } from '../assist/edits.ts';
import { cellPage, type Page, type ShownSheet } from './page.ts';
import type { Sessions } from './sessions.ts';
import { isSheet, notebookType } from './sheet-documents.ts';
import type { TextSessions } from './text-sessions.ts';

/** Every document that can be a page: cells, and files by their name, whatever their language. */
export const PAGES: vscode.DocumentSelector = [
  { language: notebookType, notebookType },
  { language: 'markdown', notebookType },
  { pattern: '**/*.ampwright.md' },
];

export interface Pages {
  /** The page of a document, once its sheet has caught up with its text; undefined where it has none. */
  of(document: vscode.TextDocument): Promise<Page | undefined>;
}

export function openPages(sessions: Sessions, texts: TextSessions): Pages {
  return {
    async of(document) {
      const notebook = vscode.workspace.notebookDocuments.find(
        (one) => isSheet(one) && one.getCells().some((cell) => cell.document === document),
      );
      if (!notebook) return texts.page(document);
      const session = sessions.of(notebook);
      await session?.update();
      return session?.answer ? cellPage(notebook, session.answer, document) : undefined;
    },
  };
}

/** Edits of blocks and prose as one edit of the workspace; null where one of them can't be made here. */
export function workspaceEdit(sheet: ShownSheet, edits: readonly LocatedEdit[]): vscode.WorkspaceEdit | null {
  const all = new vscode.WorkspaceEdit();
  for (const edit of edits) {
    const place = edit.text.kind === 'file' || edit.text.kind === 'library' ? undefined : sheet.locate(edit);
    if (!place) return null;
    all.replace(place.uri, place.range, edit.newText);
  }
  return all;
}
