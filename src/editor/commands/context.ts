// What commands work with, and the sheet that one of them is about.
import * as vscode from 'vscode';
import type { Desktop } from '../desktop.ts';
import { showSheet } from '../reveal.ts';
import type { Session } from '../session.ts';
import type { Sessions } from '../sessions.ts';

export interface CommandContext {
  readonly sessions: Sessions;
  /** The extension's own files, its version, and what it remembers on this machine. */
  readonly extension: vscode.ExtensionContext;
  /** Null in the browser's worker. */
  readonly desktop: Desktop | null;
}

/** Registers one command. */
export type Register = (context: CommandContext) => vscode.Disposable;

/** The sheet that a command is about: the one whose file it was called on, else the one in front. Says so where there is none. */
export async function sheetFor({ sessions }: CommandContext, called: unknown): Promise<Session | undefined> {
  if (called instanceof vscode.Uri) return showSheet(called, sessions);
  const notebook = vscode.window.activeNotebookEditor?.notebook;
  const session = notebook && sessions.of(notebook);
  if (!session) void vscode.window.showInformationMessage('Open a calc sheet first.');
  return session;
}

/** The version of this extension. */
export function versionOf({ extension }: CommandContext): string {
  return String((extension.extension.packageJSON as { readonly version?: unknown }).version);
}

/** The path of a file on this machine's disk; null for one that is elsewhere. */
export function diskPath({ scheme, fsPath }: vscode.Uri): string | null {
  return scheme === 'file' ? fsPath : null;
}

/** Tells of what did not work, in a sentence. */
export function tell(error: unknown, what: string): void {
  const because = error instanceof Error ? error.message : String(error);
  void vscode.window.showErrorMessage(`${what}: ${because}${/[.!?]$/.test(because) ? '' : '.'}`);
}
