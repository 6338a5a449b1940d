// What the extension brings to the editor, as a list.
import type * as vscode from 'vscode';
import { commands } from './commands.ts';
import type { Desktop } from './desktop.ts';
import { cellStatus } from './features/cell-status.ts';
import { completion } from './features/completion.ts';
import { definitions } from './features/definition.ts';
import { diagnostics } from './features/diagnostics.ts';
import { formatting } from './features/formatting.ts';
import { hovers } from './features/hover.ts';
import { lineEndValues } from './features/inlay-values.ts';
import { outline } from './features/outline.ts';
import { proseValues } from './features/prose-values.ts';
import { quickFixes } from './features/quick-fixes.ts';
import { renames } from './features/rename.ts';
import { reveals } from './features/reveal.ts';
import { colours } from './features/semantic-tokens.ts';
import { signatures } from './features/signature-help.ts';
import { statusBar } from './features/status-bar.ts';
import { lookThroughLinks } from './links.ts';
import { liveKernel } from './live-kernel.ts';
import { openPages } from './pages.ts';
import { serializer } from './serializer.ts';
import { openSessions } from './sessions.ts';
import { testing } from './testing.ts';
import { openTextSessions } from './text-sessions.ts';

/** Starts the extension; `desktop` is null in the browser's worker. */
export function start(context: vscode.ExtensionContext, desktop: Desktop | null): void {
  lookThroughLinks(desktop?.leadsOut ?? null);
  const sessions = openSessions();
  const texts = openTextSessions();
  const pages = openPages(sessions, texts);
  context.subscriptions.push(
    // The serializer comes first: a sheet opens as soon as it is there.
    serializer(sessions),
    sessions,
    texts,
    liveKernel(sessions, context.extension.id),
    diagnostics(sessions, texts),
    proseValues(sessions),
    completion(pages),
    hovers(pages),
    definitions(pages),
    reveals(sessions),
    renames(pages),
    signatures(pages),
    outline(pages),
    formatting(pages),
    quickFixes(pages),
    colours(pages),
    lineEndValues(pages, sessions),
    statusBar(sessions),
    cellStatus(sessions),
    testing(sessions),
    commands({ sessions, extension: context, desktop }),
  );
}
