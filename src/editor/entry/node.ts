// The extension in a host with Node: on a desktop, or on a server.
import type * as vscode from 'vscode';
import { changeHistory } from '../../node/change-history.ts';
import { compareSince } from '../../node/compare.ts';
import { leadsOut } from '../../node/files.ts';
import { coveredIn } from '../../node/git-covered.ts';
import { pdfOf } from '../../node/pdf.ts';
import { revisionChoices } from '../../node/revision-choices.ts';
import { writeAtomically } from '../../node/write-atomically.ts';
import { start } from '../extension.ts';

export function activate(context: vscode.ExtensionContext): void {
  start(context, { compareSince, revisionChoices, changeHistory, coveredIn, pdfOf, writeAtomically, leadsOut });
}
