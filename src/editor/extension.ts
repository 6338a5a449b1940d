// What the extension brings to the editor, as a list.
import type * as vscode from 'vscode';

export function activate(_context: vscode.ExtensionContext): void {}
