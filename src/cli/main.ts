// The program `ampwright`: reads its arguments, runs one command, ends with its exit code.
import { isMainThread } from 'node:worker_threads';
import { Command, CommanderError } from 'commander';
import { takeShare } from '../node/threads.ts';
import { COMMANDS } from './commands.ts';
import { type ExitCode, worse } from './exit.ts';
import { explain } from './outside.ts';
import { type Terminal, terminal } from './terminal.ts';
import { verifyFile } from './verify-file.ts';
import { VERSION } from './version.ts';

const EXIT_CODES = `
Exit codes: 0 all is well · 1 a finding · 2 an error in a sheet, in the arguments or outside.
NO_COLOR turns colours off; where output is no terminal there are none.`;

async function run(args: readonly string[], streams: Terminal): Promise<ExitCode> {
  let code: ExitCode = 0;
  const program = new Command('ampwright')
    .description('Calculation sheets for motor starters: evaluate, record, verify and export *.ampwright.md.')
    .version(VERSION, '--version', 'print the version')
    .helpOption('-h, --help', 'print help')
    .helpCommand('help [COMMAND]', 'print the help of a command')
    .addHelpText('after', EXIT_CODES)
    .showHelpAfterError('`ampwright --help` lists the commands, `ampwright COMMAND --help` describes one.')
    .exitOverride()
    .configureOutput({
      writeOut: streams.out.write,
      writeErr: streams.err.write,
      outputError: (text, write) => write(text.replace(/^error:/, streams.err.paint('red', 'error:'))),
      getOutHelpWidth: () => streams.out.width,
      getErrHelpWidth: () => streams.err.width,
    });
  const context = {
    terminal: streams,
    end: (ending: ExitCode) => {
      code = worse(code, ending);
    },
    file: new URL(import.meta.url),
  };
  for (const declare of COMMANDS) declare(program, context);
  try {
    await program.parseAsync(args, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    streams.err.line(`${streams.err.paint('red', 'error:')} ${explain(error)}`);
    return 2;
  }
}

async function start(): Promise<void> {
  const streams = terminal();
  let lost = false;
  // A reader such as `head` may close the pipe before everything is written; that is no failure of ours.
  const onLoss = (tell: (error: Error) => void) => (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') return;
    lost = true;
    tell(error);
  };
  process.stdout.on(
    'error',
    onLoss((error) => streams.err.line(`${streams.err.paint('red', 'error:')} standard output: ${explain(error)}`)),
  );
  process.stderr.on(
    'error',
    onLoss(() => undefined),
  );
  process.once('exit', () => {
    if (lost) process.exitCode = 2;
  });
  process.exitCode = await run(process.argv.slice(2), streams);
}

// Further threads of `verify` run this same program.
if (isMainThread) await start();
else takeShare(verifyFile);
