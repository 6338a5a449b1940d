// The editor itself: the VS Code server inside the code-server package, without code-server around it.
import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { createWriteStream } from 'node:fs';
import { cp, mkdir, symlink } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { promisify } from 'node:util';
import { madeOnce } from './cache.ts';

const require = createRequire(import.meta.url);
const run = promisify(execFile);

export interface Server {
  readonly authority: string;
  stop(): Promise<void>;
}

/** A copy of the server with the JavaScript packages it runs on, taken from the npm registry by its own lock file. */
function installed(): Promise<string> {
  const manifest = require.resolve('code-server/package.json');
  const { version } = require(manifest) as { version: string };
  return madeOnce(`server-${version}`, async (folder) => {
    console.log(`Preparing the editor (code-server ${version}), once.`);
    await cp(path.join(path.dirname(manifest), 'lib/vscode'), folder, { recursive: true });
    // Its lock file predates newer npm versions' handling of peer dependencies, hence the flag.
    await run('npm', ['ci', '--omit=dev', '--ignore-scripts', '--legacy-peer-deps'], { cwd: folder });
    await symlink('node_modules', path.join(folder, 'node_modules.asar'));
    await addSearch(folder);
  });
}

/** `workspace.findFiles` needs ripgrep, which the server's own package would download when installed. */
async function addSearch(folder: string): Promise<void> {
  const binary = require.resolve(`@vscode/ripgrep-${process.platform}-${process.arch}/bin/rg`);
  const place = path.join(folder, 'node_modules/@vscode/ripgrep/bin');
  await mkdir(place, { recursive: true });
  await cp(binary, path.join(place, 'rg'));
}

/** Starts the server on a free loopback port; its log goes to `log`. */
export async function startServer(options: {
  readonly data: string;
  readonly userData: string;
  readonly extensions: string;
  readonly log: string;
}): Promise<Server> {
  const folder = await installed();
  const flags = [
    '--host',
    '127.0.0.1',
    '--port',
    '0',
    '--without-connection-token',
    '--accept-server-license-terms',
    '--telemetry-level',
    'off',
  ];
  const folders = ['--server-data-dir', options.data, '--user-data-dir', options.userData, '--extensions-dir', options.extensions];
  const child = spawn(process.execPath, ['out/server-main.js', ...flags, ...folders], { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] });
  // However this process ends, the server ends with it.
  process.once('exit', () => child.kill('SIGKILL'));
  const log = createWriteStream(options.log);
  child.stderr.pipe(log);
  const port = await listening(child);
  child.stdout.pipe(log);
  return { authority: `127.0.0.1:${port}`, stop: () => stopped(child) };
}

function listening(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let output = '';
    child.stdout!.on('data', (data: Buffer) => {
      output += data;
      const found = /agent listening on (\d+)/.exec(output);
      if (found) resolve(found[1]!);
    });
    child.once('exit', (code) => reject(new Error(`The editor's server ended with ${code} before it listened:\n${output}`)));
  });
}

function stopped(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.kill('SIGTERM');
    setTimeout(() => child.kill('SIGKILL'), 3000).unref();
  });
}
