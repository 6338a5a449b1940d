// The sheet in front as a file: what a signature or an export speaks of. An unsaved one is saved first, when the user says so.
import * as vscode from 'vscode';
import { type ClosedSheet, evaluateClosed } from '../closed-sheet.ts';
import type { Session } from '../session.ts';
import { tell } from './context.ts';

export type SavedSheet = Extract<ClosedSheet, { readonly bytes: Uint8Array }>;

/** The file with its answer; undefined where the user decides against saving, or the file can't be read. */
export async function savedSheet({ notebook }: Session, purpose: string): Promise<SavedSheet | undefined> {
  if (notebook.isDirty && !(await saved(notebook, purpose))) return undefined;
  const closed = await evaluateClosed(notebook.uri);
  if (!('refused' in closed)) return closed;
  tell(closed.refused, "The file of this sheet can't be read");
  return undefined;
}

async function saved(notebook: vscode.NotebookDocument, purpose: string): Promise<boolean> {
  const save = { label: 'Save, then Go On', detail: `With its results, so that the file and ${purpose} say the same` };
  const leave = { label: 'Leave It', detail: 'Nothing is written' };
  const picked = await vscode.window.showQuickPick([save, leave], { title: 'This Sheet Has Unsaved Changes' });
  return picked === save && (await notebook.save());
}
