// Finished pages beside the sheets: no script runs in them, and their links reach the named commands and nothing else.
import * as vscode from 'vscode';

export interface Page {
  /** One panel a kind: a new page takes the place of the one before. */
  readonly kind: 'comparison' | 'reference';
  readonly title: string;
  readonly html: string;
  /** The commands that its links may call. */
  readonly commands: readonly string[];
}

const panels = new Map<Page['kind'], vscode.WebviewPanel>();

/** Shows a page, in the panel of its kind if there is one. */
export function showPage(page: Page): void {
  const there = panels.get(page.kind);
  const panel = there ?? opened(page);
  panel.title = page.title;
  panel.webview.options = { enableScripts: false, enableForms: false, localResourceRoots: [], enableCommandUris: page.commands };
  panel.webview.html = page.html;
  panels.set(page.kind, panel);
  if (there) panel.reveal();
}

function opened({ kind, title }: Page): vscode.WebviewPanel {
  const panel = vscode.window.createWebviewPanel(`ampwright.${kind}`, title, vscode.ViewColumn.Active, { enableFindWidget: true });
  panel.onDidDispose(() => panels.delete(kind));
  return panel;
}

/** A link that calls a command of the extension. */
export function commandLink(command: string, ...args: readonly unknown[]): string {
  return `command:${command}?${encodeURIComponent(JSON.stringify(args))}`;
}
