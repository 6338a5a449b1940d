// A word for who opens a very large sheet: the editor takes a while to show it, and says so until it is there.
import * as vscode from 'vscode';
import type { Sessions } from './sessions.ts';

/** Bytes from which on a sheet takes the editor more than a moment. */
const LARGE = 1024 * 1024;
/** Milliseconds after which the word goes in any case: a search, or a comparison, reads a sheet without opening it. */
const LONGEST = 60_000;

/** Called with what was read; the word stands in the status bar until a sheet with as many cells has its results. */
export function tellOfLargeSheet(bytes: number, cells: number, sessions: Sessions): void {
  if (bytes < LARGE) return;
  const title = `$(loading~spin) A sheet of ${(bytes / LARGE).toFixed(1)} MiB is being opened, which takes the editor a while`;
  const message = vscode.window.setStatusBarMessage(title);
  const done = () => {
    clearTimeout(late);
    message.dispose();
    answered.dispose();
  };
  const late = setTimeout(done, LONGEST);
  const answered = sessions.onDidAnswer(({ notebook }) => notebook.cellCount === cells && done());
}
