// A click on a symbol in the results goes to where its name is defined.
import * as vscode from 'vscode';
import * as z from 'zod/mini';
import { definitionByName } from '../../assist/definition.ts';
import { notebookSheet } from '../page.ts';
import type { Sessions } from '../sessions.ts';

const renderer = 'ampwright.ledger';

/** What the renderer may send; anything else is dropped. */
const message = z.strictObject({ type: z.literal('reveal'), name: z.string().check(z.minLength(1), z.maxLength(400)) });

export function reveals(sessions: Sessions): vscode.Disposable {
  return vscode.notebooks.createRendererMessaging(renderer).onDidReceiveMessage(async ({ editor, message: received }) => {
    const asked = message.safeParse(received);
    const session = sessions.of(editor.notebook);
    if (!asked.success || !session) return;
    await session.update();
    if (!session.answer) return;
    const place = definitionByName(session.answer.open, asked.data.name);
    const location = place && notebookSheet(editor.notebook, session.answer).locate(place);
    if (location) await vscode.commands.executeCommand('vscode.open', location.uri, { selection: location.range });
  });
}
