// Outline and folding: of calc cells, and of the whole file where it is open as text.
import * as vscode from 'vscode';
import { folds } from '../../assist/folding.ts';
import type { TextId } from '../../assist/location.ts';
import { type OutlineSymbol, type SymbolKind, symbols } from '../../assist/symbols.ts';
import type { Page } from '../page.ts';
import { PAGES, type Pages } from '../pages.ts';

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

export function outline(pages: Pages): vscode.Disposable {
  return vscode.Disposable.from(
    vscode.languages.registerDocumentSymbolProvider(
      PAGES,
      {
        async provideDocumentSymbols(document) {
          const page = await pages.of(document);
          const all = page?.texts.flatMap((text) => symbols(page.open, text).flatMap((symbol) => shown(page, text, symbol) ?? []));
          return all?.sort((a, b) => a.range.start.compareTo(b.range.start));
        },
      },
      { label: 'Calc sheet' },
    ),
    vscode.languages.registerFoldingRangeProvider(PAGES, {
      async provideFoldingRanges(document) {
        const page = await pages.of(document);
        return page?.texts.flatMap((text) =>
          folds(page.open, text).flatMap(({ kind, at }) => {
            const range = page.range({ text, at });
            if (!range) return [];
            return [
              new vscode.FoldingRange(range.start.line, range.end.line, kind === 'comment' ? vscode.FoldingRangeKind.Comment : undefined),
            ];
          }),
        );
      },
    }),
  );
}

function shown(page: Page, text: TextId, { kind, name, detail, at, nameAt, children }: OutlineSymbol): vscode.DocumentSymbol | null {
  const [whole, own] = [page.range({ text, at }), page.range({ text, at: nameAt })];
  if (!whole || !own) return null;
  const symbol = new vscode.DocumentSymbol(name || ' ', detail, KINDS[kind], whole, own);
  symbol.children = children.flatMap((child) => shown(page, text, child) ?? []);
  return symbol;
}
