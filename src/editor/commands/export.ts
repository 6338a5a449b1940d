// Exports the sheet in front: the page for an audit, or its results for another program.
import * as vscode from 'vscode';
import { sheetCsv } from '../../report/csv.ts';
import type { ReportInput } from '../../report/input.ts';
import { evaluationJson } from '../../report/json.ts';
import { auditPage } from '../../report/page.ts';
import { encodeSheet } from '../../sheet/decode.ts';
import { SHEET_ENDING } from '../find-sheets.ts';
import { type CommandContext, diskPath, type Register, sheetFor, tell, versionOf } from './context.ts';
import { savedSheet } from './saved-sheet.ts';

interface Format extends vscode.QuickPickItem {
  readonly ending: string;
  /** `path` is the sheet's, as the export names it. */
  make(input: ReportInput, path: string): string | Uint8Array | Promise<Uint8Array>;
}

const FORMATS: readonly Format[] = [
  {
    label: 'Page for an Audit',
    description: 'HTML',
    detail: 'One file that explains itself: the sheet with its formulas, values put in, registers and cautions',
    ending: 'html',
    make: (input) => auditPage(input),
  },
  { label: 'Results as a Table', description: 'CSV', detail: 'Entries and requirements, one a line', ending: 'csv', make: sheetCsv },
  {
    label: 'Results as Data',
    description: 'JSON',
    detail: 'Every entry, requirement and problem, values unrounded',
    ending: 'json',
    make: (input, path) => evaluationJson(path, input),
  },
];

export const exportSheet: Register = (context) =>
  vscode.commands.registerCommand('ampwright.export', async (called?: unknown) => {
    const session = await sheetFor(context, called);
    if (!session) return;
    const format = await vscode.window.showQuickPick(FORMATS, { title: 'Export Sheet', placeHolder: 'What for', matchOnDescription: true });
    const sheet = format && (await savedSheet(session, 'the export'));
    const target = sheet && (await askTarget(session.notebook.uri, format));
    if (!target) return;
    const options = { location: vscode.ProgressLocation.Notification, title: `Exporting ${vscode.workspace.asRelativePath(target)}` };
    try {
      await vscode.window.withProgress(options, async () => {
        const input = { ...sheet.evaluation, version: versionOf(context), history: historyOf(session.notebook.uri, context) };
        const made = await format.make(input, vscode.workspace.asRelativePath(session.notebook.uri));
        await vscode.workspace.fs.writeFile(target, typeof made === 'string' ? encodeSheet(made) : made);
      });
    } catch (error) {
      return tell(error, 'The sheet was not exported');
    }
    await offerToOpen(target, sheet.evaluation.problems.filter(({ problem }) => problem.severity === 'error').length);
  });

async function askTarget(sheet: vscode.Uri, { ending, label }: Format): Promise<vscode.Uri | undefined> {
  const beside = sheet.with({ path: `${sheet.path.slice(0, -SHEET_ENDING.length)}.${ending}` });
  const filters = { [ending.toUpperCase()]: [ending] };
  const target = await vscode.window.showSaveDialog({ defaultUri: beside, filters, title: `Export: ${label}`, saveLabel: 'Export' });
  if (target?.path !== sheet.path) return target;
  tell('that is the sheet itself', 'The sheet was not exported');
  return undefined;
}

/** The changes of the file as git has them, where git may be asked. */
function historyOf(uri: vscode.Uri, { desktop }: CommandContext): ReportInput['history'] {
  const path = diskPath(uri);
  if (!desktop || path === null) return { because: 'git is out of reach in this editor' };
  if (!vscode.workspace.isTrusted) return { because: 'the workspace was not trusted, and git was not asked' };
  try {
    return desktop.historyOf(path);
  } catch (error) {
    return { because: error instanceof Error ? error.message : String(error) };
  }
}

async function offerToOpen(target: vscode.Uri, errors: number): Promise<void> {
  const open = 'Open';
  const words = `Exported ${vscode.workspace.asRelativePath(target)}.`;
  const picked =
    errors === 0
      ? await vscode.window.showInformationMessage(words, open)
      : await vscode.window.showWarningMessage(
          `${words} The sheet has ${errors === 1 ? 'an error' : `${errors} errors`}, and the export says so.`,
          open,
        );
  if (picked !== open) return;
  // A program of this machine shows it best; where the file is on another one, the editor shows its text.
  const here = target.scheme === 'file' && vscode.env.uiKind === vscode.UIKind.Desktop && vscode.env.remoteName === undefined;
  if (here) await vscode.env.openExternal(target);
  else await vscode.commands.executeCommand('vscode.open', target);
}
