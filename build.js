// Builds the bundles (the extension for Node and for the browser, the notebook renderer, the command line) and the pages of the reference.
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, transform } from 'esbuild';

/** Another folder than dist/: `--out FOLDER`. */
const out = process.argv.includes('--out') ? process.argv[process.argv.indexOf('--out') + 1] : 'dist';

const shared = {
  bundle: true,
  minify: process.argv.includes('--minify'),
  sourcemap: !process.argv.includes('--minify'),
  target: 'es2022',
  loader: { '.md': 'text' },
  logLevel: 'warning',
  legalComments: 'none',
  charset: 'utf8',
};
const editor = { ...shared, format: 'cjs', external: ['vscode'] };

const bundles = () => [
  nodeExtension(),
  // The browser host takes `extension.cjs` for CommonJS, and then loads `extension.cjs.js`: it adds the suffix to every path without it.
  build({ ...editor, entryPoints: ['src/editor/entry/browser.ts'], outfile: `${out}/browser/extension.cjs.js`, platform: 'browser' }),
  build({ ...shared, entryPoints: ['src/renderer/renderer.ts'], outfile: `${out}/renderer.js`, format: 'esm', platform: 'browser' }),
  build({
    ...shared,
    entryPoints: ['src/cli/main.ts'],
    outfile: `${out}/cli.js`,
    format: 'esm',
    platform: 'node',
    banner: { js: '#!/usr/bin/env node\nimport { createRequire } from "node:module";\nconst require = createRequire(import.meta.url);' },
  }),
];

/**
 * The extension for Node, in parts: what only some command needs (`import()`) is loaded with it. The bundler splits ES modules alone, and
 * editors of 1.91 load CommonJS alone, so each part is turned into CommonJS afterwards.
 */
async function nodeExtension() {
  const sourcemap = shared.sourcemap && 'inline';
  const { outputFiles } = await build({
    ...editor,
    format: 'esm',
    splitting: true,
    sourcemap,
    write: false,
    entryPoints: { extension: 'src/editor/entry/node.ts' },
    outdir: out,
    outExtension: { '.js': '.cjs' },
    chunkNames: 'extension/[name]-[hash]',
    platform: 'node',
    alias: { 'csv-parse/browser/esm/sync': 'csv-parse/sync', yaml: './node_modules/yaml/browser/index.js' },
    // Packages with files or native parts of their own are not in the bundle; they are looked up from where the bundle lies.
    define: { 'import.meta.url': 'bundleUrl' },
    banner: { js: 'const bundleUrl = require("node:url").pathToFileURL(__filename).href;' },
  });
  await rm(`${out}/extension`, { recursive: true, force: true });
  for (const { path, text } of outputFiles) {
    const { minify, target, charset } = shared;
    const { code } = await transform(text, {
      format: 'cjs',
      platform: 'node',
      supported: { 'dynamic-import': false },
      minify,
      target,
      charset,
      sourcemap,
    });
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, code);
  }
}

/** The reference is made by the code that it describes: bundled to a temporary file, run here, and its pages written to dist/reference. */
async function reference() {
  const folder = await mkdtemp(join(tmpdir(), 'ampwright-reference-'));
  const outfile = join(folder, 'reference.mjs');
  try {
    await build({ ...shared, entryPoints: ['src/report/reference.ts'], outfile, format: 'esm', platform: 'browser', sourcemap: false });
    const { referencePages } = await import(pathToFileURL(outfile));
    const { version } = JSON.parse(await readFile('package.json', 'utf8'));
    await mkdir(`${out}/reference`, { recursive: true });
    await Promise.all(referencePages(version).map(({ file, html }) => writeFile(`${out}/reference/${file}`, html)));
  } finally {
    await rm(folder, { recursive: true });
  }
}

await Promise.all(process.argv.includes('--reference') ? [reference()] : [...bundles(), reference()]);
