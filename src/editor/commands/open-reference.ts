// The reference of the notation and the functions: pages that come with the extension.
import * as vscode from 'vscode';
import { commandLink, showPage } from '../page-panel.ts';
import { type Register, tell } from './context.ts';

const OPEN = 'ampwright.openReference';
const START = 'index.html';

export const openReference: Register = ({ extension }) =>
  vscode.commands.registerCommand(OPEN, async (wanted?: unknown) => {
    const page = typeof wanted === 'string' && /^[\w-]+\.html$/.test(wanted) ? wanted : START;
    try {
      const file = vscode.Uri.joinPath(extension.extensionUri, 'dist', 'reference', page);
      const html = new TextDecoder().decode(await vscode.workspace.fs.readFile(file));
      showPage({ kind: 'reference', title: 'Ampwright Reference', html: linked(html), commands: [OPEN] });
    } catch (error) {
      tell(error, 'The reference was not opened');
    }
  });

/** The page with its links to the other pages as calls of the command. */
function linked(html: string): string {
  return html.replace(/ href="([\w-]+\.html)(?:#[^"]*)?"/g, (_, page: string) => ` href="${commandLink(OPEN, page)}"`);
}
