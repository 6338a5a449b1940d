// Completion: names with their values, functions, units, columns, sources, words, files.
import * as vscode from 'vscode';
import type { CompletionKind } from '../../assist/completion/item.ts';
import { relativePath, wantsFiles } from '../../assist/completion/paths.ts';
import { completions } from '../../assist/completion.ts';
import { PAGES, type Pages } from '../pages.ts';
import { shownParts } from './hover.ts';

const KINDS: Readonly<Record<CompletionKind, vscode.CompletionItemKind>> = {
  entry: vscode.CompletionItemKind.Variable,
  function: vscode.CompletionItemKind.Function,
  parameter: vscode.CompletionItemKind.TypeParameter,
  local: vscode.CompletionItemKind.Variable,
  column: vscode.CompletionItemKind.Field,
  table: vscode.CompletionItemKind.Struct,
  instrument: vscode.CompletionItemKind.Interface,
  unit: vscode.CompletionItemKind.Unit,
  source: vscode.CompletionItemKind.Reference,
  word: vscode.CompletionItemKind.Keyword,
  statement: vscode.CompletionItemKind.Keyword,
  file: vscode.CompletionItemKind.File,
};

export function completion(pages: Pages): vscode.Disposable {
  const provider: vscode.CompletionItemProvider = {
    async provideCompletionItems(document, position) {
      const page = await pages.of(document);
      if (!page) return null;
      const spot = page.spot(position);
      const files = wantsFiles(page.open, spot) ? await filesFrom(page.uri) : [];
      return completions(page.open, spot, files).flatMap((offered, i) => {
        const inserting = page.range({ text: spot.text, at: offered.insertAt });
        const replacing = page.range({ text: spot.text, at: offered.replaceAt });
        if (!inserting || !replacing) return [];
        const item = new vscode.CompletionItem({ label: offered.label, description: offered.detail }, KINDS[offered.kind]);
        item.insertText = offered.snippet ? new vscode.SnippetString(offered.insert) : offered.insert;
        item.range = { inserting, replacing };
        item.sortText = `${i}`.padStart(5, '0');
        item.documentation = shownParts(offered.documentation);
        return [item];
      });
    },
  };
  return vscode.languages.registerCompletionItemProvider(PAGES, provider, '.', ' ', ':', '#', '"', '/', '(');
}

/** The sheets and CSV files of the workspace, by their paths from a sheet. */
async function filesFrom(sheet: vscode.Uri): Promise<readonly string[]> {
  const folder = vscode.workspace.getWorkspaceFolder(sheet);
  if (!folder) return [];
  const pattern = new vscode.RelativePattern(folder, '**/*.{ampwright.md,csv}');
  const found = await vscode.workspace.findFiles(pattern, undefined, 2000);
  return found
    .filter(({ path }) => path !== sheet.path)
    .map(({ path }) => relativePath(sheet.path, path))
    .sort();
}
