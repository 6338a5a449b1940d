// The commands. Their code is loaded when one of them is called first.
import * as vscode from 'vscode';
import type { CommandContext } from './commands/context.ts';
import { commandsAhead } from './commands-ahead.ts';

export function commands(context: CommandContext): vscode.Disposable {
  let registered: vscode.Disposable;
  let loading: Promise<void> | null = null;
  const load = async () => {
    const { COMMANDS } = await import('./commands/all.ts');
    registered.dispose();
    registered = vscode.Disposable.from(...COMMANDS.map((register) => register(context)));
  };
  registered = commandsAhead(context.extension, () => {
    // A file that could not be fetched may come the next time.
    loading ??= load().catch((error) => {
      loading = null;
      throw error;
    });
    return loading;
  });
  return { dispose: () => registered.dispose() };
}
