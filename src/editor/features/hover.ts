// Hover: value, formula, source and users of the name under the pointer.
import * as vscode from 'vscode';
import type { HoverPart } from '../../assist/hover/part.ts';
import { hover } from '../../assist/hover.ts';
import type { Sessions } from '../sessions.ts';
import { blockOf, CELLS, rangeOf, spotOf } from '../spots.ts';

export function hovers(sessions: Sessions): vscode.Disposable {
  return vscode.languages.registerHoverProvider(CELLS, {
    async provideHover(document, position) {
      const block = await blockOf(sessions, document);
      const found = block && hover(block.answer.open, spotOf(block, position));
      return found ? new vscode.Hover(found.parts.map(shown), rangeOf(document, found.at)) : null;
    },
  });
}

/** Several parts as one text. */
export function shownParts(parts: readonly HoverPart[]): vscode.MarkdownString {
  return new vscode.MarkdownString(parts.map((part) => shown(part).value).join('\n\n'));
}

/** Texts come from sheets: they are shown as text, never as Markdown of their own. */
function shown(part: HoverPart): vscode.MarkdownString {
  const words = new vscode.MarkdownString();
  switch (part.kind) {
    case 'code':
      return words.appendCodeblock(part.text, 'ampwright');
    case 'text':
      return words.appendText(part.text);
    case 'fact':
      return words.appendText(`${part.about}: ${part.text}`);
  }
}
