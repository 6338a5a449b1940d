// Records the results of every sheet of the workspace, as saving each of them would.
import * as vscode from 'vscode';
import { recordSheet } from '../../run/record.ts';
import { encodeSheet } from '../../sheet/decode.ts';
import { evaluateClosed } from '../closed-sheet.ts';
import { findSheets } from '../find-sheets.ts';
import { type Replaced, replaceFile } from '../replace-file.ts';
import { type CommandContext, type Register, tell } from './context.ts';

export const recordAll: Register = (context) =>
  vscode.commands.registerCommand('ampwright.recordAll', async () => {
    const options = { location: vscode.ProgressLocation.Notification, title: 'Recording results', cancellable: true };
    const outcome = await vscode.window.withProgress(options, (progress, token) => recordEach(context, progress, token));
    await summarize(outcome);
  });

/** A sheet that was not written, and why. */
interface Left {
  readonly uri: vscode.Uri;
  readonly because: string;
}

interface Outcome {
  readonly recorded: number;
  readonly unchanged: number;
  readonly left: readonly Left[];
  readonly stopped: boolean;
}

async function recordEach(
  context: CommandContext,
  progress: vscode.Progress<{ message?: string; increment?: number }>,
  token: vscode.CancellationToken,
): Promise<Outcome> {
  const sheets = await findSheets(token);
  const counts = { recorded: 0, unchanged: 0 };
  const left: Left[] = [];
  for (const [i, uri] of sheets.entries()) {
    if (token.isCancellationRequested) break;
    progress.report({ message: `${i + 1} of ${sheets.length}`, increment: 100 / sheets.length });
    const done = await recordOne(uri, context);
    if (typeof done === 'string') counts[done]++;
    else left.push({ uri, because: done.because });
  }
  return { ...counts, left, stopped: token.isCancellationRequested };
}

async function recordOne(uri: vscode.Uri, { desktop }: CommandContext): Promise<Replaced> {
  const open = vscode.workspace.notebookDocuments.find((notebook) => notebook.uri.toString() === uri.toString());
  if (open?.isDirty) return { because: 'It has unsaved changes; saving it records it.' };
  const closed = await evaluateClosed(uri);
  if ('refused' in closed) return { because: `It can't be read: ${closed.refused}.` };
  if (closed.evaluation.sheet.conflicts.length > 0) return { because: 'A merge left its conflict in it; choose a side first.' };
  return replaceFile(uri, closed.bytes, encodeSheet(recordSheet(closed.evaluation)), desktop);
}

async function summarize({ recorded, unchanged, left, stopped }: Outcome): Promise<void> {
  const counts = [`Recorded ${recorded} ${recorded === 1 ? 'sheet' : 'sheets'}`, `${unchanged} unchanged`];
  const words = `${stopped ? 'Stopped. ' : ''}${[...counts, ...(left.length > 0 ? [`${left.length} not written`] : [])].join(', ')}.`;
  if (left.length === 0) return void vscode.window.showInformationMessage(words);
  const list = 'Show Them';
  if ((await vscode.window.showWarningMessage(words, list)) !== list) return;
  const items = left.map(({ uri, because }) => ({ label: vscode.workspace.asRelativePath(uri), detail: because, uri }));
  const picked = await vscode.window.showQuickPick(items, { title: 'Sheets That Were Not Written', matchOnDetail: true });
  if (!picked) return;
  try {
    await vscode.commands.executeCommand('vscode.open', picked.uri);
  } catch (error) {
    tell(error, 'The sheet was not opened');
  }
}
