// The sheets that are open as text, as in a text diff, a merge, or by choice.
import * as vscode from 'vscode';
import type { Page } from './page.ts';
import { isSheetText } from './sheet-documents.ts';
import { openTextSession, type TextSession } from './text-session.ts';

/** How long typing may pause before problems follow, in milliseconds. */
const pause = 400;

export interface TextSessions extends vscode.Disposable {
  /** The page of a document; undefined where it is no sheet that is opened as text. */
  page(document: vscode.TextDocument): Promise<Page> | undefined;
  /** Fires when a sheet in view has been read anew. */
  readonly onDidRead: vscode.Event<Page>;
  readonly onDidClose: vscode.Event<vscode.TextDocument>;
}

export function openTextSessions(): TextSessions {
  const sessions = new Map<vscode.TextDocument, TextSession>();
  const timers = new Map<vscode.TextDocument, ReturnType<typeof setTimeout>>();
  const read = new vscode.EventEmitter<Page>();
  const closed = new vscode.EventEmitter<vscode.TextDocument>();

  const sessionOf = (document: vscode.TextDocument): TextSession => {
    const session = sessions.get(document) ?? openTextSession(document, () => later(document, 0));
    sessions.set(document, session);
    return session;
  };
  const later = (document: vscode.TextDocument, time: number) => {
    clearTimeout(timers.get(document));
    timers.set(
      document,
      setTimeout(async () => {
        if (!document.isClosed) read.fire(await sessionOf(document).page());
      }, time),
    );
  };
  const show = (editors: readonly vscode.TextEditor[]) => {
    for (const { document } of editors) if (isSheetText(document) && !sessions.has(document)) later(document, 0);
  };
  const close = (document: vscode.TextDocument) => {
    clearTimeout(timers.get(document));
    timers.delete(document);
    sessions.get(document)?.dispose();
    if (sessions.delete(document)) closed.fire(document);
  };
  const listeners = vscode.Disposable.from(
    vscode.window.onDidChangeVisibleTextEditors(show),
    vscode.workspace.onDidCloseTextDocument(close),
    vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
      if (contentChanges.length > 0 && sessions.has(document)) later(document, pause);
    }),
  );
  show(vscode.window.visibleTextEditors);
  return {
    page: (document) => (isSheetText(document) ? sessionOf(document).page() : undefined),
    onDidRead: read.event,
    onDidClose: closed.event,
    dispose() {
      listeners.dispose();
      for (const timer of timers.values()) clearTimeout(timer);
      for (const session of sessions.values()) session.dispose();
      read.dispose();
      closed.dispose();
    },
  };
}
