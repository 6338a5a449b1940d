// How the open sheet stands, in the status bar: `4 hold · 1 fails · 2 inputs without source`.
import * as vscode from 'vscode';
import { sheetStatus } from '../../assist/block-status.ts';
import type { Sessions } from '../sessions.ts';

export function statusBar(sessions: Sessions): vscode.Disposable {
  const item = vscode.window.createStatusBarItem('ampwright.sheet', vscode.StatusBarAlignment.Left, 10);
  item.name = 'Calc sheet';
  item.command = 'workbench.actions.view.problems';
  const show = () => {
    const notebook = vscode.window.activeNotebookEditor?.notebook;
    const answer = notebook && sessions.of(notebook)?.answer;
    if (!answer) return item.hide();
    const summary = sheetStatus(answer.result)?.text ?? 'No requirements';
    item.text = summary;
    item.tooltip = `${summary}. Shows the problems.`;
    item.accessibilityInformation = { label: `Calc sheet: ${summary}` };
    item.show();
  };
  return vscode.Disposable.from(
    item,
    sessions.onDidAnswer(show),
    sessions.onDidClose(show),
    vscode.window.onDidChangeActiveNotebookEditor(show),
  );
}
