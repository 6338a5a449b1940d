// The commands, as a list.
import * as vscode from 'vscode';
import { compareWithRevision } from './commands/compare.ts';
import type { CommandContext, Register } from './commands/context.ts';
import { exportSheet } from './commands/export.ts';
import { goToWorst } from './commands/go-to-worst.ts';
import { newSheet } from './commands/new-sheet.ts';
import { openReference } from './commands/open-reference.ts';
import { recordAll } from './commands/record-all.ts';
import { sign } from './commands/sign.ts';

const COMMANDS: readonly Register[] = [newSheet, goToWorst, compareWithRevision, sign, exportSheet, recordAll, openReference];

export function commands(context: CommandContext): vscode.Disposable {
  return vscode.Disposable.from(...COMMANDS.map((register) => register(context)));
}
