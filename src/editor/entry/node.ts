// The extension in a host with Node: on a desktop, or on a server.
import type * as vscode from 'vscode';
import { leadsOut } from '../../node/files.ts';
import { inRepository } from '../../node/in-repository.ts';
import { writeAtomically } from '../../node/write-atomically.ts';
import type { Desktop } from '../desktop.ts';
import { waitForSheets } from '../wait-for-sheets.ts';

const desktop: Desktop = {
  writeAtomically,
  leadsOut,
  inRepository,
  inWorker: (job, asked) => import('../../node/in-worker.ts').then(({ inWorker }) => inWorker(job, asked)),
};

export function activate(context: vscode.ExtensionContext): void {
  waitForSheets(context, desktop, () => import('../extension.ts'));
}
