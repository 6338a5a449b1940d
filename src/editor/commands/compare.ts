// Compares the sheet in front with a revision: what changed in meaning, as a page whose line numbers lead to the lines.
import * as vscode from 'vscode';
import { commandLink } from '../command-link.ts';
import { currentText } from '../notebook-document.ts';
import { showPage } from '../page-panel.ts';
import { revealLine } from '../reveal.ts';
import { SHEET_ENDING } from '../sheet-documents.ts';
import { askRevision } from './ask-revision.ts';
import { diskPath, type Register, sheetFor, tell } from './context.ts';

const COPY = 'ampwright.copyComparison';
const LINE = 'ampwright.showComparedLine';

export const compareWithRevision: Register = (context) => {
  /** As Markdown. */
  let latest: string | null = null;
  const compare = async (called?: unknown) => {
    const session = await sheetFor(context, called);
    const path = session && diskPath(session.notebook.uri);
    if (!session) return;
    if (!context.desktop || path == null) return tell('this sheet is not on a disk where git could be asked', FAILED);
    if (!vscode.workspace.isTrusted) return tell('git is asked in trusted workspaces only; trust this one first', FAILED);
    try {
      const { inWorker } = context.desktop;
      const since = await askRevision(await inWorker('revisions', path));
      if (since === undefined) return;
      const { text } = currentText(session.notebook);
      const under = { location: vscode.ProgressLocation.Window, title: `Comparing with ${since.label}` };
      const { page, markdown } = await vscode.window.withProgress(under, () =>
        inWorker('comparison', { path, text, since: since.revision }),
      );
      latest = markdown;
      showPage({
        kind: 'comparison',
        title: `Changes since ${since.label}`,
        html: withCommands(page, session.notebook.uri),
        commands: [COPY, LINE],
      });
    } catch (error) {
      tell(error, FAILED);
    }
  };
  const copy = async () => {
    if (latest === null) return void vscode.window.showInformationMessage('Compare a sheet with a revision first.');
    await vscode.env.clipboard.writeText(latest);
    vscode.window.setStatusBarMessage('Comparison copied as Markdown', 4000);
  };
  // A link of the page names a sheet and a line of it; whatever else calls is dropped.
  const line = (uri: unknown, number: unknown) => {
    if (typeof uri !== 'string' || !uri.endsWith(SHEET_ENDING) || !Number.isInteger(number) || Number(number) < 1) return;
    return revealLine(vscode.Uri.parse(uri), Number(number), context.sessions);
  };
  return vscode.Disposable.from(
    vscode.commands.registerCommand('ampwright.compare', compare),
    vscode.commands.registerCommand(COPY, copy),
    vscode.commands.registerCommand(LINE, line),
  );
};

/** The page's links as calls of the commands. No text of a sheet becomes a link there, so that these are all. */
function withCommands(html: string, sheet: vscode.Uri): string {
  return html.replace(/ href="#(?:line-(\d+)|copy)"/g, (_, line?: string) => {
    return ` href="${line === undefined ? commandLink(COPY) : commandLink(LINE, sheet.toString(), Number(line))}"`;
  });
}

const FAILED = 'The sheet was not compared';
