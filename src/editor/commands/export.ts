// Exports the sheet in front: the page for an audit, or its results for another program.
import * as vscode from 'vscode';
import type { ExportAsked } from '../../node/export.ts';
import type { Paper } from '../../report/typeset/document.ts';
import { encodeSheet } from '../../sheet/decode.ts';
import { SHEET_ENDING } from '../sheet-documents.ts';
import { type CommandContext, diskPath, type Register, sheetFor, tell, versionOf } from './context.ts';
import { type SavedSheet, savedSheet } from './saved-sheet.ts';

interface Format extends vscode.QuickPickItem {
  readonly format: ExportAsked['format'];
}

const FORMATS: readonly Format[] = [
  {
    label: 'Page for an Audit',
    description: 'HTML',
    detail: 'One file that explains itself: formulas with values put in, registers, cautions',
    format: { ending: 'html' },
  },
  pdf('a4', 'A4'),
  pdf('letter', 'Letter'),
  {
    label: 'Results as a Table',
    description: 'CSV',
    detail: 'Entries and requirements, one a line',
    format: { ending: 'csv' },
  },
  {
    label: 'Results as Data',
    description: 'JSON',
    detail: 'Every entry, requirement and problem, values unrounded',
    format: { ending: 'json' },
  },
];

function pdf(paper: Paper, name: string): Format {
  const detail = 'The same on paper, for filing: PDF/A-2a';
  return { label: `Page for an Audit on ${name}`, description: 'PDF', detail, format: { ending: 'pdf', paper } };
}

export const exportSheet: Register = (context) =>
  vscode.commands.registerCommand('ampwright.export', async (called?: unknown) => {
    const session = await sheetFor(context, called);
    if (!session) return;
    const format = await vscode.window.showQuickPick(formats(context), {
      title: 'Export Sheet',
      placeHolder: 'What for',
      matchOnDescription: true,
    });
    const sheet = format && (await savedSheet(session, 'the export'));
    const target = sheet && (await askTarget(session.notebook.uri, format));
    if (!target) return;
    const options = { location: vscode.ProgressLocation.Notification, title: `Exporting ${vscode.workspace.asRelativePath(target)}` };
    try {
      await vscode.window.withProgress(options, async () => {
        const made = await make(format, sheet, session.notebook.uri, context);
        await vscode.workspace.fs.writeFile(target, typeof made === 'string' ? encodeSheet(made) : made);
      });
    } catch (error) {
      return tell(error, 'The sheet was not exported');
    }
    await offerToOpen(target, sheet.evaluation.problems.filter(({ problem }) => problem.severity === 'error').length);
  });

async function askTarget(sheet: vscode.Uri, { format: { ending }, label }: Format): Promise<vscode.Uri | undefined> {
  const beside = sheet.with({ path: `${sheet.path.slice(0, -SHEET_ENDING.length)}.${ending}` });
  const filters = { [ending.toUpperCase()]: [ending] };
  const target = await vscode.window.showSaveDialog({ defaultUri: beside, filters, title: `Export: ${label}`, saveLabel: 'Export' });
  if (target?.path !== sheet.path) return target;
  tell('that is the sheet itself', 'The sheet was not exported');
  return undefined;
}

/** What can't be made here is not offered: typesetting wants Node. */
function formats({ desktop }: CommandContext): readonly Format[] {
  return FORMATS.filter(({ format }) => format.ending !== 'pdf' || desktop !== null);
}

async function make(
  { format }: Format,
  { evaluation, files }: SavedSheet,
  uri: vscode.Uri,
  context: CommandContext,
): Promise<string | Uint8Array> {
  const path = vscode.workspace.asRelativePath(uri);
  const version = versionOf(context);
  const disk = gitPath(uri, context);
  if (context.desktop) return context.desktop.inWorker('export', { text: evaluation.sheet.text, files, format, path, version, disk });
  if (format.ending === 'pdf') throw new Error('it is typeset where the editor has Node');
  const { textExport } = await import('../../report/exports.ts');
  return textExport(format.ending, { ...evaluation, version, ...('because' in disk ? { history: disk } : {}) }, path);
}

/** Where git may be asked of the file; else why it is not. */
function gitPath(uri: vscode.Uri, { desktop }: CommandContext): ExportAsked['disk'] {
  const path = diskPath(uri);
  if (!desktop || path === null) return { because: 'git is out of reach in this editor' };
  return vscode.workspace.isTrusted ? { path } : { because: 'the workspace was not trusted, and git was not asked' };
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
