// Ends a program by force at a moment of its run, as a power cut or an impatient user does.
import { spawn } from 'node:child_process';
import { watch } from 'node:fs';

/** After so many milliseconds, or as soon as it writes anything in a folder; null: it may run to its end. */
export type Moment = number | { readonly writesIn: string } | null;

/** Runs a program, ended by force at a moment if that comes first; its exit code, null where it was ended. */
export async function started(command: string, args: readonly string[], moment: Moment = null, cwd?: string): Promise<number | null> {
  const child = spawn(command, args, { stdio: 'ignore', cwd });
  const kill = () => child.kill('SIGKILL');
  const timer = typeof moment === 'number' ? setTimeout(kill, moment) : undefined;
  const watcher = moment !== null && typeof moment === 'object' ? watch(moment.writesIn, kill) : undefined;
  return new Promise((resolve) =>
    child.once('close', (code) => {
      clearTimeout(timer);
      watcher?.close();
      resolve(code);
    }),
  );
}
