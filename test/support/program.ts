// The real program as a child process: bundled once a test run, as build.js bundles it, into a temporary folder.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build } from 'esbuild';

export interface Outcome {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

const repository = resolve(import.meta.dirname, '../..');
const bundles = new Map<string, Promise<string>>();

/** The path of the bundled program. */
export function program(): Promise<string> {
  return bundled(join(repository, 'src/cli/main.ts'));
}

/** The path of a bundle of the program at `entry`: threads, too, run what plain Node can run. */
export function bundled(entry: string): Promise<string> {
  const known = bundles.get(entry) ?? makeBundle(entry);
  bundles.set(entry, known);
  return known;
}

async function makeBundle(entry: string): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'ampwright-program-'));
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  const outfile = join(folder, 'cli.js');
  await build({
    bundle: true,
    target: 'es2022',
    loader: { '.md': 'text' },
    logLevel: 'warning',
    entryPoints: [entry],
    outfile,
    format: 'esm',
    platform: 'node',
    banner: { js: 'import { createRequire } from "node:module";\nconst require = createRequire(import.meta.url);' },
  });
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }\n');
  return outfile;
}

export interface RunOptions {
  readonly cwd?: string;
  readonly env?: Readonly<Record<string, string>>;
  readonly input?: string;
}

/** Runs the program; the environment has nothing but PATH and what is given. */
export async function ampwright(args: readonly string[], options: RunOptions = {}): Promise<Outcome> {
  const run = spawnSync(process.execPath, [await program(), ...args], {
    cwd: options.cwd ?? repository,
    env: { PATH: process.env['PATH'] ?? '', ...options.env },
    encoding: 'utf8',
    input: options.input ?? '',
    maxBuffer: 1 << 28,
  });
  if (run.error) throw run.error;
  return { code: run.status, stdout: run.stdout, stderr: run.stderr };
}
