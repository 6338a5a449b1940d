// What the extension brings to the editor, as a list.
import type * as vscode from 'vscode';
import { diagnostics } from './features/diagnostics.ts';
import { proseValues } from './features/prose-values.ts';
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
  );
}
