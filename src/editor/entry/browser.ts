// The extension in a browser's worker.
import * as vscode from 'vscode';
import type * as extension from '../extension.ts';
import { waitForSheets } from '../wait-for-sheets.ts';
import { loadParts } from './parts.ts';

/** The files of the part that is loaded with the first sheet; the build knows them. */
declare const SHEET_PARTS: readonly string[];

export function activate(context: vscode.ExtensionContext): void {
  const load = loadParts(vscode.Uri.joinPath(context.extensionUri, 'dist', 'browser'));
  waitForSheets(context, null, () => load<typeof extension>(SHEET_PARTS));
}
