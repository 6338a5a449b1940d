// The commands that package.json declares, there before their code is.
import * as vscode from 'vscode';

/** Registers all of them: when one is called, `load` has their code take the place of these, and it is carried out. */
export function commandsAhead({ extension }: vscode.ExtensionContext, load: () => Promise<unknown>): vscode.Disposable {
  const { contributes } = extension.packageJSON as { contributes: { commands: readonly { command: string }[] } };
  const ahead = contributes.commands.map(({ command }) =>
    vscode.commands.registerCommand(command, async (...values: unknown[]) => {
      await load();
      return vscode.commands.executeCommand(command, ...values);
    }),
  );
  return vscode.Disposable.from(...ahead);
}
