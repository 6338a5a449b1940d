// What the extension brings to the editor, as a list.
import type * as vscode from 'vscode';
import { completion } from './features/completion.ts';
import { definitions } from './features/definition.ts';
import { diagnostics } from './features/diagnostics.ts';
import { formatting } from './features/formatting.ts';
import { hovers } from './features/hover.ts';
import { outline } from './features/outline.ts';
import { proseValues } from './features/prose-values.ts';
import { quickFixes } from './features/quick-fixes.ts';
import { renames } from './features/rename.ts';
import { signatures } from './features/signature-help.ts';
import { statusBar } from './features/status-bar.ts';
import { liveKernel } from './live-kernel.ts';
import { serializer } from './serializer.ts';
import { openSessions } from './sessions.ts';

export function activate(context: vscode.ExtensionContext): void {
  const sessions = openSessions();
  context.subscriptions.push(
    // The serializer comes first: a sheet opens as soon as it is there.
    serializer(sessions),
    sessions,
    liveKernel(sessions, context.extension.id),
    diagnostics(sessions),
    proseValues(sessions),
    completion(sessions),
    hovers(sessions),
    definitions(sessions),
    renames(sessions),
    signatures(sessions),
    outline(sessions),
    formatting(),
    quickFixes(sessions),
    statusBar(sessions),
  );
}
