// All open sheets: a session for each notebook of ours, told of every change of its text.
import * as vscode from 'vscode';
import { type OwnedSession, openSession, type Session } from './session.ts';
import { isSheet, notebookType } from './sheet-documents.ts';

/** How long typing may pause before results follow, in milliseconds: longer where the whole sheet has to be read again. */
const pause = { block: 60, sheet: 250 } as const;

/** All open sheets. */
export interface Sessions extends vscode.Disposable {
  all(): Iterable<Session>;
  of(notebook: vscode.NotebookDocument): Session | undefined;
  /** Fires when a sheet has a new answer to be shown. */
  readonly onDidAnswer: vscode.Event<Session>;
  /** Fires when the text of a sheet has gone on and its results do not follow, since live results are turned off. */
  readonly onDidFallBehind: vscode.Event<Session>;
  readonly onDidClose: vscode.Event<Session>;
}

/** Follows the notebooks of the editor. */
export function openSessions(): Sessions {
  const sessions = new Map<vscode.NotebookDocument, OwnedSession>();
  const answered = new vscode.EventEmitter<Session>();
  const behind = new vscode.EventEmitter<Session>();
  const closed = new vscode.EventEmitter<Session>();
  const isLive = () => vscode.workspace.getConfiguration('ampwright').get<boolean>('liveResults', true);
  const open = (notebook: vscode.NotebookDocument) => {
    if (!isSheet(notebook) || sessions.has(notebook)) return;
    const session = openSession(notebook, { answered: (of) => answered.fire(of), fellBehind: (of) => behind.fire(of) });
    session.follow(isLive());
    sessions.set(notebook, session);
  };
  const close = (notebook: vscode.NotebookDocument) => {
    const session = sessions.get(notebook);
    if (!session) return;
    sessions.delete(notebook);
    session.dispose();
    closed.fire(session);
  };
  // One edit makes several events, and an execution about seven more: only those that change the text count.
  const change = ({ notebook, contentChanges, cellChanges }: vscode.NotebookDocumentChangeEvent) => {
    const edited = cellChanges.filter((change) => change.document);
    if (contentChanges.length + edited.length === 0) return;
    const blocksAlone = contentChanges.length === 0 && edited.every(({ cell }) => cell.document.languageId === notebookType);
    sessions.get(notebook)?.changed(blocksAlone ? pause.block : pause.sheet);
  };
  const listeners = vscode.Disposable.from(
    vscode.workspace.onDidOpenNotebookDocument(open),
    vscode.workspace.onDidCloseNotebookDocument(close),
    vscode.workspace.onDidChangeNotebookDocument(change),
    vscode.workspace.onDidSaveNotebookDocument((notebook) => void sessions.get(notebook)?.show()),
    vscode.workspace.onDidChangeConfiguration((event) => {
      if (event.affectsConfiguration('ampwright.liveResults')) for (const session of sessions.values()) session.follow(isLive());
    }),
  );
  for (const notebook of vscode.workspace.notebookDocuments) open(notebook);
  return {
    all: () => sessions.values(),
    of: (notebook) => sessions.get(notebook),
    onDidAnswer: answered.event,
    onDidFallBehind: behind.event,
    onDidClose: closed.event,
    dispose() {
      listeners.dispose();
      for (const session of sessions.values()) session.dispose();
      answered.dispose();
      behind.dispose();
      closed.dispose();
    },
  };
}
