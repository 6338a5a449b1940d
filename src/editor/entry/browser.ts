// The extension in a browser's worker.
import type * as vscode from 'vscode';
import { start } from '../extension.ts';

export function activate(context: vscode.ExtensionContext): void {
  start(context, null);
}
