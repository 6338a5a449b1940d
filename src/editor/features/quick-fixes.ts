// The mends of problems as quick fixes.
import * as vscode from 'vscode';
import { touches } from '../../text/span.ts';
import type { Sessions } from '../sessions.ts';
import { blockOf, CELLS, rangeOf } from '../spots.ts';

export function quickFixes(sessions: Sessions): vscode.Disposable {
  const provider: vscode.CodeActionProvider = {
    async provideCodeActions(document, range, { diagnostics }) {
      const block = await blockOf(sessions, document);
      const problems = block?.answer.result.cells[block.number]?.problems ?? [];
      const [start, end] = [document.offsetAt(range.start), document.offsetAt(range.end)];
      const here = problems.filter(({ at }) => touches(at, start) || touches(at, end) || (start <= at.start && at.end <= end));
      return here.flatMap((problem) =>
        problem.mends.map((mend, i) => {
          const action = new vscode.CodeAction(mend.title, vscode.CodeActionKind.QuickFix);
          action.edit = new vscode.WorkspaceEdit();
          for (const { at, text } of mend.edits) action.edit.replace(document.uri, rangeOf(document, at), text);
          action.diagnostics = diagnostics.filter(({ message }) => message === problem.message);
          action.isPreferred = i === 0 && problem.mends.length === 1;
          return action;
        }),
      );
    },
  };
  return vscode.languages.registerCodeActionsProvider(CELLS, provider, { providedCodeActionKinds: [vscode.CodeActionKind.QuickFix] });
}
