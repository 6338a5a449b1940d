// Formatting of calc blocks: spacing, and clauses in columns. Nothing else of a file is touched.
import * as vscode from 'vscode';
import { formatEdits } from '../../assist/formatting.ts';
import { contentOf } from '../../assist/location.ts';
import { span } from '../../text/span.ts';
import { PAGES, type Pages } from '../pages.ts';

export function formatting(pages: Pages): vscode.Disposable {
  const edits = async (document: vscode.TextDocument, within?: vscode.Range): Promise<vscode.TextEdit[]> => {
    const page = await pages.of(document);
    return (page?.texts ?? []).flatMap((text) => {
      if (!page || text.kind !== 'block') return [];
      const code = contentOf(page.open, text) ?? '';
      const whole = page.range({ text, at: span(0, code.length) });
      const part = whole && within ? whole.intersection(within) : whole;
      if (!whole || !part) return [];
      const before = document.offsetAt(whole.start);
      const lines = span(document.offsetAt(part.start) - before, document.offsetAt(part.end) - before);
      return formatEdits(code, lines).flatMap(({ at, text: newText }) => {
        const range = page.range({ text, at });
        return range ? [vscode.TextEdit.replace(range, newText)] : [];
      });
    });
  };
  return vscode.Disposable.from(
    vscode.languages.registerDocumentFormattingEditProvider(PAGES, { provideDocumentFormattingEdits: (document) => edits(document) }),
    vscode.languages.registerDocumentRangeFormattingEditProvider(PAGES, { provideDocumentRangeFormattingEdits: edits }),
  );
}
