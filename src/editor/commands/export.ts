// Exports the sheet in front: the page for an audit, or its results for another program.
import * as vscode from 'vscode';
import type { ReportInput } from '../../report/input.ts';
import type { Paper } from '../../report/typeset/document.ts';
import type { SheetEvaluation } from '../../run/evaluate.ts';
import { encodeSheet } from '../../sheet/decode.ts';
import type { Desktop } from '../desktop.ts';
import { SHEET_ENDING } from '../sheet-documents.ts';
import { type CommandContext, diskPath, type Register, sheetFor, tell, versionOf } from './context.ts';
import { savedSheet } from './saved-sheet.ts';

/** What an export is made from; `path` is the sheet's, as the export names it. */
interface Source {
  readonly input: ReportInput;
  readonly path: string;
  readonly desktop: Desktop | null;
}

interface Format extends vscode.QuickPickItem {
  readonly ending: string;
  /** Whether it can be made in a browser's worker too. */
  readonly everywhere: boolean;
  make(source: Source): Promise<string | Uint8Array>;
}

const FORMATS: readonly Format[] = [
  {
    label: 'Page for an Audit',
    description: 'HTML',
    detail: 'One file that explains itself: formulas with values put in, registers, cautions',
    ending: 'html',
    everywhere: true,
    make: async ({ input }) => (await import('../../report/page.ts')).auditPage(input),
  },
  pdf('a4', 'A4'),
  pdf('letter', 'Letter'),
  {
    label: 'Results as a Table',
    description: 'CSV',
    detail: 'Entries and requirements, one a line',
    ending: 'csv',
    everywhere: true,
    make: async ({ input }) => (await import('../../report/csv.ts')).sheetCsv(input),
  },
  {
    label: 'Results as Data',
    description: 'JSON',
    detail: 'Every entry, requirement and problem, values unrounded',
    ending: 'json',
    everywhere: true,
    make: async ({ input, path }) => (await import('../../report/json.ts')).evaluationJson(path, input),
  },
];

function pdf(paper: Paper, name: string): Format {
  const make = async ({ input, desktop }: Source) => {
    const outcome = await (await desktop!.tools()).pdfOf(input, paper);
    if (outcome.kind === 'refused') throw new Error(outcome.because);
    return outcome.bytes;
  };
  const detail = 'The same on paper, for filing: PDF/A-2a';
  return { label: `Page for an Audit on ${name}`, description: 'PDF', detail, ending: 'pdf', everywhere: false, make };
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
        const input = {
          ...sheet.evaluation,
          version: versionOf(context),
          ...(await fromGit(session.notebook.uri, sheet.evaluation, context)),
        };
        const made = await format.make({ input, path: vscode.workspace.asRelativePath(session.notebook.uri), desktop: context.desktop });
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

/** What can't be made here is not offered. */
function formats({ desktop }: CommandContext): readonly Format[] {
  return FORMATS.filter(({ everywhere }) => everywhere || desktop !== null);
}

/** What git knows of the file, where it may be asked. */
async function fromGit(
  uri: vscode.Uri,
  { files }: SheetEvaluation,
  { desktop }: CommandContext,
): Promise<Pick<ReportInput, 'history' | 'covered'>> {
  const path = diskPath(uri);
  if (!desktop || path === null) return { history: { because: 'git is out of reach in this editor' } };
  if (!vscode.workspace.isTrusted) return { history: { because: 'the workspace was not trusted, and git was not asked' } };
  const { changeHistory, coveredIn } = await desktop.tools();
  return { history: changeHistory(path), covered: coveredIn(path, files) };
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
