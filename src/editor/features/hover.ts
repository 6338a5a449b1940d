// Hover: value, formula, source and users of the name under the pointer.
import * as vscode from 'vscode';
import type { HoverPart } from '../../assist/hover/part.ts';
import { hover } from '../../assist/hover.ts';
import { functionPlace, tablePlace } from '../../report/reference/places.ts';
import { commandLink, OPEN_REFERENCE } from '../command-link.ts';
import { PAGES, type Pages } from '../pages.ts';

export function hovers(pages: Pages): vscode.Disposable {
  return vscode.languages.registerHoverProvider(PAGES, {
    async provideHover(document, position) {
      const page = await pages.of(document);
      const spot = page?.spot(position);
      const found = page && spot && hover(page.open, spot);
      const range = found && page.range({ text: spot.text, at: found.at });
      return range ? new vscode.Hover(found.parts.map(shown), range) : null;
    },
  });
}

/** Several parts as one text. */
export function shownParts(parts: readonly HoverPart[]): vscode.MarkdownString {
  const words = new vscode.MarkdownString(parts.map((part) => shown(part).value).join('\n\n'));
  words.isTrusted = { enabledCommands: [OPEN_REFERENCE] };
  return words;
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
    case 'reference': {
      const place = part.of === 'function' ? functionPlace(part.name) : tablePlace(part.name);
      words.isTrusted = { enabledCommands: [OPEN_REFERENCE] };
      return words.appendMarkdown(`[Open in the reference](${commandLink(OPEN_REFERENCE, `${part.page}.html#${place}`)})`);
    }
  }
}
