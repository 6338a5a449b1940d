// How the open sheet stands, in the status bar: `4 hold · 1 fails · 2 inputs without source`. A click goes to the worst requirement.
import * as vscode from 'vscode';
import { sheetStatus } from '../../assist/block-status.ts';
import { worstRequirement } from '../../assist/worst-requirement.ts';
import { problemsOfFile } from '../../run/evaluate.ts';
import { sidesText, verdict } from '../../run/record.ts';
import type { RequirementResult, SheetResult } from '../../run/result.ts';
import type { Sessions } from '../sessions.ts';
import { MARKS } from './cell-status.ts';

export function statusBar(sessions: Sessions): vscode.Disposable {
  const item = vscode.window.createStatusBarItem('ampwright.sheet', vscode.StatusBarAlignment.Left, 10);
  item.name = 'Calc sheet';
  const show = () => {
    const notebook = vscode.window.activeNotebookEditor?.notebook;
    const answer = notebook && sessions.of(notebook)?.answer;
    if (!answer) return item.hide();
    const { open, result } = answer;
    const status = sheetStatus(result, problemsOfFile(open));
    const worst = worstRequirement(result);
    item.text = status ? `${MARKS[status.level]} ${status.text}` : 'No requirements';
    item.command = worst ? 'ampwright.goToWorst' : 'workbench.actions.view.problems';
    item.tooltip = tooltip(result, worst);
    item.accessibilityInformation = { label: `Calc sheet: ${status?.text ?? 'no requirements'}`, role: 'button' };
    item.show();
  };
  return vscode.Disposable.from(
    item,
    sessions.onDidAnswer(show),
    sessions.onDidClose(show),
    vscode.window.onDidChangeActiveNotebookEditor(show),
  );
}

/** The requirements that do not hold, or the closest one, and what a click does. */
function tooltip({ cells }: SheetResult, worst: RequirementResult | null): vscode.MarkdownString {
  const text = new vscode.MarkdownString();
  const open = cells.flatMap(({ statements }) => statements.filter((s) => s.kind === 'requirement' && s.status !== 'holds'));
  const listed = open.length > 0 ? open.slice(0, LISTED) : worst ? [worst] : [];
  for (const statement of listed) if (statement.kind === 'requirement') text.appendCodeblock(line(statement), 'text');
  if (open.length > LISTED) text.appendText(`and ${open.length - LISTED} more\n\n`);
  text.appendText(worst ? 'Click to go to the worst requirement' : 'Click to see the problems');
  return text;
}

const LISTED = 5;

function line({ force, condition, status, sides }: RequirementResult): string {
  return [`${force} ${condition}`, `  ${[sidesText(sides), ...verdict(status, sides)].filter((part) => part !== '').join(', ')}`].join(
    '\n',
  );
}
