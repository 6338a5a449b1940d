// Finished pages beside the sheets: no script of theirs runs, and their links reach the named commands and nothing else.
import * as vscode from 'vscode';

export interface Page {
  /** One panel a kind: a new page takes the place of the one before. */
  readonly kind: 'comparison' | 'reference';
  readonly title: string;
  /** With the policy of a page that runs nothing. */
  readonly html: string;
  /** The element that is to be in view, by its `id`; only pages that hold no text of a sheet have one. */
  readonly at?: string | undefined;
  /** The commands that its links may call. */
  readonly commands: readonly string[];
}

const panels = new Map<Page['kind'], vscode.WebviewPanel>();

/** Shows a page, in the panel of its kind if there is one. */
export function showPage(page: Page): void {
  const there = panels.get(page.kind);
  const panel = there ?? opened(page);
  panel.title = page.title;
  const { at, commands } = page;
  panel.webview.options = { enableScripts: at !== undefined, enableForms: false, localResourceRoots: [], enableCommandUris: commands };
  panel.webview.html = at === undefined ? page.html : openedAt(page.html, at);
  panels.set(page.kind, panel);
  if (there) panel.reveal();
}

function opened({ kind, title }: Page): vscode.WebviewPanel {
  const panel = vscode.window.createWebviewPanel(`ampwright.${kind}`, title, vscode.ViewColumn.Active, { enableFindWidget: true });
  panel.onDidDispose(() => panels.delete(kind));
  return panel;
}

/** The page with the one script that may run on it: it brings an element into view and leads the keyboard there. */
function openedAt(html: string, id: string): string {
  const nonce = crypto.randomUUID();
  const script = `const at = document.getElementById(${JSON.stringify(id)}); if (at) { at.tabIndex = -1; at.focus(); at.scrollIntoView(); }`;
  return html
    .replace("default-src 'none'", () => `default-src 'none'; script-src 'nonce-${nonce}'`)
    .replace('</body>', () => `<script nonce="${nonce}">${script}</script>\n</body>`);
}
