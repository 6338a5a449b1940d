// Builds the bundles (the extension for Node and for the browser, the notebook renderer, the command line) and the pages of the reference.
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const shared = {
  bundle: true,
  minify: process.argv.includes('--minify'),
  sourcemap: !process.argv.includes('--minify'),
  target: 'es2022',
  loader: { '.md': 'text' },
  logLevel: 'warning',
  legalComments: 'none',
};
const editor = { ...shared, format: 'cjs', external: ['vscode'] };

const bundles = () => [
  build({
    ...editor,
    entryPoints: ['src/editor/entry/node.ts'],
    outfile: 'dist/extension.cjs',
    platform: 'node',
    // Packages with files or native parts of their own are not in the bundle; they are looked up from where the bundle lies.
    define: { 'import.meta.url': 'bundleUrl' },
    banner: { js: 'const bundleUrl = require("node:url").pathToFileURL(__filename).href;' },
  }),
  // The browser host takes `extension.cjs` for CommonJS, and then loads `extension.cjs.js`: it adds the suffix to every path without it.
  build({ ...editor, entryPoints: ['src/editor/entry/browser.ts'], outfile: 'dist/browser/extension.cjs.js', platform: 'browser' }),
  build({ ...shared, entryPoints: ['src/renderer/renderer.ts'], outfile: 'dist/renderer.js', format: 'esm', platform: 'browser' }),
  build({
    ...shared,
    entryPoints: ['src/cli/main.ts'],
    outfile: 'dist/cli.js',
    format: 'esm',
    platform: 'node',
    banner: { js: '#!/usr/bin/env node\nimport { createRequire } from "node:module";\nconst require = createRequire(import.meta.url);' },
  }),
];

/** The reference is made by the code that it describes: bundled to a temporary file, run here, and its pages written to dist/reference. */
async function reference() {
  const folder = await mkdtemp(join(tmpdir(), 'ampwright-reference-'));
  const outfile = join(folder, 'reference.mjs');
  try {
    await build({ ...shared, entryPoints: ['src/report/reference.ts'], outfile, format: 'esm', platform: 'browser', sourcemap: false });
    const { referencePages } = await import(pathToFileURL(outfile));
    const { version } = JSON.parse(await readFile('package.json', 'utf8'));
    await mkdir('dist/reference', { recursive: true });
    await Promise.all(referencePages(version).map(({ file, html }) => writeFile(`dist/reference/${file}`, html)));
  } finally {
    await rm(folder, { recursive: true });
  }
}

await Promise.all(process.argv.includes('--reference') ? [reference()] : [...bundles(), reference()]);
