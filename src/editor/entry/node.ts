// The extension in a host with Node: on a desktop, or on a server.
import type * as vscode from 'vscode';
import { leadsOut } from '../../node/files.ts';
import { writeAtomically } from '../../node/write-atomically.ts';
import { start } from '../extension.ts';

export function activate(context: vscode.ExtensionContext): void {
  start(context, { writeAtomically, leadsOut, tools: () => import('../../node/command-tools.ts') });
}
