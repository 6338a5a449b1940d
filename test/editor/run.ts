// Runs the extension's tests in a real editor: `run.ts HOST… [--grep TITLE] [--desktop] [--extension FOLDER]`, hosts: node, browser, restricted, bench.
// `--desktop` takes a downloaded desktop editor, which no one sits at.
import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { runTests } from '@vscode/test-electron';
import { bundleTests, type Host } from './bundle.ts';
import { repository } from './host/cache.ts';

const settings = {
  'extensions.autoUpdate': false,
  'files.autoSave': 'off',
  'security.workspace.trust.enabled': false,
  'security.workspace.trust.startupPrompt': 'never',
  'telemetry.telemetryLevel': 'off',
  'window.confirmSaveUntitledWorkspace': false,
  'workbench.colorTheme': 'Default Light Modern',
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
};

const settingsFor: Record<Host, object> = {
  node: {},
  // Puts the extension into the browser's worker, in a build that could also run it in Node.
  browser: { 'remote.extensionKind': { 'ampwright.ampwright': ['web'] } },
  bench: {},
  restricted: { 'security.workspace.trust.enabled': true },
};

interface Options {
  readonly desktop: boolean;
  readonly grep: string;
  /** Where the extension lies; the repository, or an installed package. */
  readonly extension: string;
}

async function runIn(host: Host, { desktop, grep, extension }: Options): Promise<void> {
  const extensionTestsPath = await bundleTests(host, grep);
  const folder = await mkdtemp(path.join(tmpdir(), 'ampwright-editor-'));
  const workspace = path.join(folder, 'mill');
  const userData = path.join(folder, 'user');
  const artifacts = path.join(repository, 'test-artifacts', host);
  await rm(artifacts, { recursive: true, force: true });
  await cp(path.join(repository, 'test/editor/workspace'), workspace, { recursive: true });
  await mkdir(path.join(userData, 'User'), { recursive: true });
  await writeFile(path.join(userData, 'User/settings.json'), JSON.stringify({ ...settings, ...settingsFor[host] }, null, 2));
  const launchArgs = [workspace, `--user-data-dir=${userData}`, `--extensions-dir=${path.join(folder, 'extensions')}`];
  try {
    await runTests({
      ...(desktop ? { version: '1.100.3' } : { vscodeExecutablePath: path.join(repository, 'test/editor/host/vscode') }),
      extensionDevelopmentPath: extension,
      extensionTestsPath,
      launchArgs: desktop ? launchArgs : [...launchArgs, `--artifacts=${artifacts}`],
    });
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    desktop: { type: 'boolean', default: false },
    grep: { type: 'string', default: '' },
    extension: { type: 'string', default: repository },
  },
});
for (const host of positionals as Host[]) {
  const began = Date.now();
  console.log(`\nThe editor, ${host} extension host`);
  try {
    await runIn(host, values);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
  console.log(`${host}: ${((Date.now() - began) / 1000).toFixed(1)} s`);
}
