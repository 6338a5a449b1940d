// A sheet that is open as text: read when help is asked for or typing pauses, and evaluated only as far as the edits reach.
import type * as vscode from 'vscode';
import { editSheet } from '../run/edit-sheet.ts';
import { resultOf } from '../run/evaluate.ts';
import { type OpenSheet, openSheet } from '../run/open-sheet.ts';
import { openFiles, settled } from './files.ts';
import { type Page, textPage } from './page.ts';

export interface TextSession extends vscode.Disposable {
  readonly document: vscode.TextDocument;
  /** The document with the sheet as it stands now. */
  page(): Promise<Page>;
}

/** `stale` is called when a file that the sheet reads has changed. */
export function openTextSession(document: vscode.TextDocument, stale: () => void): TextSession {
  let open: OpenSheet | null = null;
  let page: Page | null = null;
  let version = -1;
  let busy: Promise<Page> | null = null;
  const files = openFiles(document.uri, () => {
    version = -1;
    stale();
  });
  async function bringUp(): Promise<Page> {
    if (page && version === document.version) return page;
    const text = document.getText();
    version = document.version;
    const now = await settled(files, () => {
      if (open) editSheet(open, text);
      else open = openSheet(text, files);
      return open;
    });
    page = textPage(document, now, resultOf(now));
    return page;
  }
  return {
    document,
    async page() {
      while (busy) await busy;
      busy = bringUp().finally(() => {
        busy = null;
      });
      return busy;
    },
    dispose: () => files.dispose(),
  };
}
