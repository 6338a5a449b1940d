// The extension in a host with Node: on a desktop, or on a server.
import type * as vscode from 'vscode';
import { leadsOut } from '../../node/files.ts';
import { inRepository } from '../../node/in-repository.ts';
import { writeAtomically } from '../../node/write-atomically.ts';
import { waitForSheets } from '../wait-for-sheets.ts';

export function activate(context: vscode.ExtensionContext): void {
  const desktop = { writeAtomically, leadsOut, inRepository, tools: () => import('../../node/command-tools.ts') };
  waitForSheets(context, desktop, () => import('../extension.ts'));
}
