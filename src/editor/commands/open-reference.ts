// The reference of the notation and the functions: pages that come with the extension.
import * as vscode from 'vscode';
import { commandLink, OPEN_REFERENCE } from '../command-link.ts';
import { showPage } from '../page-panel.ts';
import { type Register, tell } from './context.ts';

const START = 'index.html';

/** Opens a page, or a place on one, such as `motors.html#function-slip`. */
export const openReference: Register = ({ extension }) =>
  vscode.commands.registerCommand(OPEN_REFERENCE, async (wanted?: unknown) => {
    const [, page = START, at] = /^([\w-]+\.html)(?:#([\w-]+))?$/.exec(typeof wanted === 'string' ? wanted : '') ?? [];
    try {
      const file = vscode.Uri.joinPath(extension.extensionUri, 'dist', 'reference', page);
      const html = new TextDecoder().decode(await vscode.workspace.fs.readFile(file));
      showPage({ kind: 'reference', title: 'Ampwright Reference', html: linked(html), commands: [OPEN_REFERENCE], at });
    } catch (error) {
      tell(error, 'The reference was not opened');
    }
  });

/** The page with its links to the other pages as calls of the command. */
function linked(html: string): string {
  return html.replace(/ href="([\w-]+\.html(?:#[\w-]+)?)"/g, (_, place: string) => ` href="${commandLink(OPEN_REFERENCE, place)}"`);
}
