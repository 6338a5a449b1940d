// A click on a symbol in the results goes to where its name is defined.
import * as vscode from 'vscode';
import { definitionByName } from '../../assist/definition.ts';
import { nameToReveal } from '../../view/reveal.ts';
import { notebookSheet } from '../page.ts';
import type { Sessions } from '../sessions.ts';

const renderer = 'ampwright.ledger';

export function reveals(sessions: Sessions): vscode.Disposable {
  return vscode.notebooks.createRendererMessaging(renderer).onDidReceiveMessage(async ({ editor, message: received }) => {
    const name = nameToReveal(received);
    const session = sessions.of(editor.notebook);
    if (name === null || !session) return;
    await session.update();
    if (!session.answer) return;
    const place = definitionByName(session.answer.open, name);
    const location = place && notebookSheet(editor.notebook, session.answer).locate(place);
    if (location) await vscode.commands.executeCommand('vscode.open', location.uri, { selection: location.range });
  });
}
