// Outline and folding of calc cells.
import * as vscode from 'vscode';
import { folds } from '../../assist/folding.ts';
import { block as blockText } from '../../assist/location.ts';
import { type OutlineSymbol, type SymbolKind, symbols } from '../../assist/symbols.ts';
import type { Sessions } from '../sessions.ts';
import { blockOf, CELLS, rangeOf } from '../spots.ts';

const KINDS: Readonly<Record<SymbolKind, vscode.SymbolKind>> = {
  input: vscode.SymbolKind.Constant,
  computed: vscode.SymbolKind.Variable,
  table: vscode.SymbolKind.Struct,
  column: vscode.SymbolKind.Field,
  function: vscode.SymbolKind.Function,
  requirement: vscode.SymbolKind.Boolean,
  curve: vscode.SymbolKind.Array,
  tabulation: vscode.SymbolKind.Array,
  instrument: vscode.SymbolKind.Object,
  action: vscode.SymbolKind.Event,
  use: vscode.SymbolKind.Module,
};

export function outline(sessions: Sessions): vscode.Disposable {
  return vscode.Disposable.from(
    vscode.languages.registerDocumentSymbolProvider(CELLS, {
      async provideDocumentSymbols(document) {
        const block = await blockOf(sessions, document);
        return block ? symbols(block.answer.open, blockText(block.number)).map((symbol) => shown(document, symbol)) : null;
      },
    }),
    vscode.languages.registerFoldingRangeProvider(CELLS, {
      async provideFoldingRanges(document) {
        const block = await blockOf(sessions, document);
        if (!block) return null;
        return folds(block.answer.open, blockText(block.number)).map(({ kind, at }) => {
          const { start, end } = rangeOf(document, at);
          return new vscode.FoldingRange(start.line, end.line, kind === 'comment' ? vscode.FoldingRangeKind.Comment : undefined);
        });
      },
    }),
  );
}

function shown(document: vscode.TextDocument, { kind, name, detail, at, nameAt, children }: OutlineSymbol): vscode.DocumentSymbol {
  const symbol = new vscode.DocumentSymbol(name || ' ', detail, KINDS[kind], rangeOf(document, at), rangeOf(document, nameAt));
  symbol.children = children.map((child) => shown(document, child));
  return symbol;
}
