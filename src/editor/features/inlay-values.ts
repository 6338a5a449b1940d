// Values at the line's end, where someone has asked for them.
import * as vscode from 'vscode';
import { inlayValues } from '../../assist/inlay-values.ts';
import { span } from '../../text/span.ts';
import { PAGES, type Pages } from '../pages.ts';
import type { Sessions } from '../sessions.ts';

const setting = 'ampwright.valuesAtLineEnd';

export function lineEndValues(pages: Pages, sessions: Sessions): vscode.Disposable {
  const changed = new vscode.EventEmitter<void>();
  const provider: vscode.InlayHintsProvider = {
    onDidChangeInlayHints: changed.event,
    async provideInlayHints(document, within) {
      if (!vscode.workspace.getConfiguration().get<boolean>(setting, false)) return [];
      const page = await pages.of(document);
      return page?.texts.flatMap((text) => {
        if (text.kind !== 'block') return [];
        return inlayValues(page.open, text.number).flatMap(({ offset, text: value }) => {
          const at = page.range({ text, at: span(offset, offset) })?.start;
          if (!at || !within.contains(at)) return [];
          const hint = new vscode.InlayHint(at, value);
          hint.paddingLeft = true;
          return [hint];
        });
      });
    },
  };
  return vscode.Disposable.from(
    changed,
    vscode.languages.registerInlayHintsProvider(PAGES, provider),
    // A value may change with an edit of another cell.
    sessions.onDidAnswer(() => changed.fire()),
    vscode.workspace.onDidChangeConfiguration((event) => {
      if (event.affectsConfiguration(setting)) changed.fire();
    }),
  );
}
