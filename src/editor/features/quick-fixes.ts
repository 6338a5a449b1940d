// What mends a problem, as quick fixes; and the unit of a computed entry, to be declared.
import * as vscode from 'vscode';
import { declareUnit } from '../../assist/declare-unit.ts';
import { type Fix, fixesOf } from '../../assist/fixes.ts';
import type { Page, ShownSheet } from '../page.ts';
import { PAGES, type Pages } from '../pages.ts';
import { placedProblems } from '../placed-problems.ts';

export function quickFixes(pages: Pages): vscode.Disposable {
  const provider: vscode.CodeActionProvider = {
    async provideCodeActions(document, range, { diagnostics }) {
      const page = await pages.of(document);
      if (!page) return null;
      const mends = placedProblems(page).flatMap(({ problem, text }) => {
        const at = page.range({ text, at: problem.at });
        if (!at?.intersection(range)) return [];
        const fixes = fixesOf(page.open, text, problem);
        return fixes.flatMap((fix) => {
          const action = actionOf(page, fix, vscode.CodeActionKind.QuickFix);
          if (!action) return [];
          action.diagnostics = diagnostics.filter(({ message }) => message === problem.message);
          action.isPreferred = fixes.length === 1;
          return [action];
        });
      });
      const declared = declareUnit(page.open, page.spot(range.start));
      const rewritten = declared && actionOf(page, declared, vscode.CodeActionKind.RefactorRewrite);
      return rewritten ? [...mends, rewritten] : mends;
    },
  };
  const providedCodeActionKinds = [vscode.CodeActionKind.QuickFix, vscode.CodeActionKind.RefactorRewrite];
  return vscode.languages.registerCodeActionsProvider(PAGES, provider, { providedCodeActionKinds });
}

function actionOf(page: Page, fix: Fix, kind: vscode.CodeActionKind): vscode.CodeAction | null {
  const edit = editOf(page, fix);
  if (!edit) return null;
  const action = new vscode.CodeAction(fix.title, kind);
  action.edit = edit;
  return action;
}

function editOf(sheet: ShownSheet, { edits, snippet }: Fix): vscode.WorkspaceEdit | null {
  const all = new vscode.WorkspaceEdit();
  for (const edit of edits) {
    const place = sheet.locate(edit);
    if (!place) return null;
    if (snippet) all.set(place.uri, [new vscode.SnippetTextEdit(place.range, new vscode.SnippetString(edit.newText))]);
    else all.replace(place.uri, place.range, edit.newText);
  }
  return all;
}
