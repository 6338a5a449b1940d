// What the extension brings to the editor, as a list. All of this is loaded with the first sheet.
import * as vscode from 'vscode';
import { commands } from './commands.ts';
import type { Desktop } from './desktop.ts';
import { cellStatus } from './features/cell-status.ts';
import { diagnostics } from './features/diagnostics.ts';
import { hasRevisions } from './features/has-revisions.ts';
import { proseValues } from './features/prose-values.ts';
import { reveals } from './features/reveal.ts';
import { statusBar } from './features/status-bar.ts';
import { twoEditors } from './features/two-editors.ts';
import { lookThroughLinks } from './links.ts';
import { liveKernel } from './live-kernel.ts';
import { openPages } from './pages.ts';
import { serializer } from './serializer.ts';
import { openSessions, type Sessions } from './sessions.ts';
import { testing } from './testing.ts';
import { openTextSessions, type TextSessions } from './text-sessions.ts';

/** What is there before any sheet is. */
interface Given {
  /** Null in the browser's worker. */
  readonly desktop: Desktop | null;
  /** The part of the Testing view that is ours. */
  readonly tests: vscode.TestController;
}

/** Starts what sheets need, and gives what opens them. */
export function start(context: vscode.ExtensionContext, { desktop, tests }: Given): vscode.NotebookSerializer {
  lookThroughLinks(desktop?.leadsOut ?? null);
  const sessions = openSessions();
  const texts = openTextSessions();
  const sheets = serializer(sessions);
  context.subscriptions.push(
    sheets,
    sessions,
    texts,
    liveKernel(sessions, context.extension.id),
    diagnostics(sessions, texts),
    proseValues(sessions),
    reveals(sessions),
    statusBar(sessions),
    cellStatus(sessions),
    twoEditors(),
    hasRevisions(desktop),
    testing(tests, sessions),
    commands({ sessions, extension: context, desktop }),
    onceShown(sessions, texts, async () => {
      const { writingHelp } = await import('./writing-help.ts');
      context.subscriptions.push(writingHelp(openPages(sessions, texts), sessions));
    }),
  );
  return sheets;
}

/** Acts once, when the first sheet is shown. */
function onceShown(sessions: Sessions, texts: TextSessions, act: () => Promise<void>): vscode.Disposable {
  const shown = () => {
    waiting.dispose();
    void act();
  };
  const waiting = vscode.Disposable.from(sessions.onDidAnswer(shown), texts.onDidRead(shown));
  return waiting;
}
