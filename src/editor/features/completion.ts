// Completion in calc cells: names with their values, functions, units, columns, sources, words.
import * as vscode from 'vscode';
import type { CompletionKind } from '../../assist/completion/item.ts';
import { completions } from '../../assist/completion.ts';
import type { Sessions } from '../sessions.ts';
import { blockOf, CELLS, rangeOf, spotOf } from '../spots.ts';
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

export function completion(sessions: Sessions): vscode.Disposable {
  const provider: vscode.CompletionItemProvider = {
    async provideCompletionItems(document, position) {
      const block = await blockOf(sessions, document);
      if (!block) return null;
      return completions(block.answer.open, spotOf(block, position)).map((offered, i) => {
        const item = new vscode.CompletionItem({ label: offered.label, description: offered.detail }, KINDS[offered.kind]);
        item.insertText = offered.snippet ? new vscode.SnippetString(offered.insert) : offered.insert;
        item.range = { inserting: rangeOf(document, offered.insertAt), replacing: rangeOf(document, offered.replaceAt) };
        item.sortText = `${i}`.padStart(5, '0');
        item.documentation = shownParts(offered.documentation);
        return item;
      });
    },
  };
  return vscode.languages.registerCompletionItemProvider(CELLS, provider, '.', ' ', ':');
}
