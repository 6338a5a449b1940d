// The requirements of every sheet of the workspace in the Testing view, whether the sheet is open or not.
import * as vscode from 'vscode';
import type { Sessions } from './sessions.ts';
import { changedRequirements, requirementItems } from './testing/requirement-items.ts';
import { runSheets } from './testing/run.ts';
import { sheetItems } from './testing/sheet-items.ts';

/** Fills the controller of the Testing view. */
export function testing(controller: vscode.TestController, sessions: Sessions): vscode.Disposable {
  const sheets = sheetItems(controller);
  controller.resolveHandler = async (item) => (item ? requirementItems(controller, item, sessions) : sheets.find());
  controller.refreshHandler = (token) => sheets.find(token);
  const run = (request: vscode.TestRunRequest, token: vscode.CancellationToken) =>
    runSheets({ controller, sheets, sessions }, request, token);
  controller.createRunProfile('Evaluate', vscode.TestRunProfileKind.Run, run, true);
  return vscode.Disposable.from(
    sheets,
    sessions.onDidAnswer((session) => {
      const item = controller.items.get(session.notebook.uri.toString());
      // What nobody has looked at yet is found out when somebody does.
      if (item && item.children.size > 0 && session.answer) changedRequirements(controller, item, session.answer);
    }),
  );
}
