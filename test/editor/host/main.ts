// The editor in a headless browser: starts server, browser and channel, runs the extension's tests in it, ends with their exit code.
import { appendFileSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { format, parseArgs } from 'node:util';
import type { Request } from 'playwright-core';
import { act, type Screen } from './actions.ts';
import { startBrowser } from './browser.ts';
import { openChannel } from './channel.ts';
import { addressSetting } from './protocol.ts';
import { startServer } from './server.ts';

/** The tests' own time limits come first; this one ends a run in which the editor never starts them. */
const longest = 40 * 60_000;

const { values: flags, positionals } = parseArgs({
  strict: false,
  allowPositionals: true,
  options: {
    extensionDevelopmentPath: { type: 'string' },
    extensionTestsPath: { type: 'string' },
    'user-data-dir': { type: 'string' },
    'extensions-dir': { type: 'string' },
    artifacts: { type: 'string' },
  },
});
const flag = (name: string): string => {
  const value = flags[name];
  if (typeof value !== 'string') throw new Error(`The flag --${name}=… is missing.`);
  return value;
};

async function main(): Promise<number> {
  const artifacts = flag('artifacts');
  const userData = flag('user-data-dir');
  const workspace = positionals[0];
  if (!workspace) throw new Error('Name the folder to open.');
  await mkdir(artifacts, { recursive: true });

  const browser = await startBrowser();
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, permissions: ['clipboard-read', 'clipboard-write'] });
  const page = await context.newPage();
  const requests = new Map<Request, number>();
  page.on('request', (request) => /vscode-resource|\/webview\//.test(request.url()) && requests.set(request, Date.now()));
  page.on('requestfinished', (request) => requests.delete(request));
  page.on('requestfailed', (request) => requests.delete(request));
  const screen: Screen = { page, artifacts, requests };
  const channel = await openChannel((action) => act(screen, action));
  await addSetting(userData, addressSetting, channel.address);
  const server = await startServer({
    data: path.join(userData, 'server'),
    userData,
    extensions: flag('extensions-dir'),
    log: path.join(artifacts, 'server.log'),
  });

  const log = path.join(artifacts, 'editor.log');
  const note = (kind: string, ...values: unknown[]) => appendFileSync(log, `${kind}: ${format(...values)}\n`);
  page.on('console', (message) => note(message.type(), message.text()));
  page.on('pageerror', (error) => note('uncaught', error));
  await page.exposeFunction('codeAutomationLog', (type: string, values: unknown[]) => note(type, ...values));
  const ended = new Promise<number>((resolve, reject) => {
    void page.exposeFunction('codeAutomationExit', resolve);
    page.on('crash', () => reject(new Error('The page that shows the editor crashed.')));
    setTimeout(() => reject(new Error(`The tests did not end within ${longest / 60_000} minutes.`)), longest).unref();
  });
  try {
    await page.goto(address(server.authority, workspace));
    return await ended;
  } catch (error) {
    await act(screen, { do: 'screenshot', name: 'at-the-end' });
    throw error;
  } finally {
    channel.close();
    await browser.close();
    await server.stop();
  }
}

/** The editor's page with the extension under development and its tests, as the browser build takes them. */
function address(authority: string, workspace: string): string {
  const remote = (file: string) => `vscode-remote://${authority}${path.resolve(file)}`;
  const payload: [string, string][] = [
    ['extensionDevelopmentPath', remote(flag('extensionDevelopmentPath'))],
    ['extensionTestsPath', remote(flag('extensionTestsPath'))],
    ['skipWelcome', 'true'],
  ];
  const query = new URLSearchParams({ folder: path.resolve(workspace), payload: JSON.stringify(payload) });
  return `http://${authority}/?${query}`;
}

async function addSetting(userData: string, name: string, value: string): Promise<void> {
  const file = path.join(userData, 'User/settings.json');
  const settings = JSON.parse(await readFile(file, 'utf8')) as Record<string, unknown>;
  await writeFile(file, JSON.stringify({ ...settings, [name]: value }, null, 2));
}

// The runner holds the other end of standard input: when it is gone, nobody waits for the tests.
process.stdin.on('end', () => process.exit(1)).resume();
for (const signal of ['SIGTERM', 'SIGHUP'] as const) process.once(signal, () => process.exit(1));

main().then(
  (code) => process.exit(code),
  (error) => {
    console.error(error);
    process.exit(1);
  },
);
