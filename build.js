// Builds the bundles (the extension for Node and for the browser, the notebook renderer, the command line) and the pages of the reference.
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
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
const inParts = { ...editor, format: 'esm', splitting: true, sourcemap: shared.sourcemap && 'inline', write: false };

const bundles = () => [
  nodeExtension(),
  browserExtension(),
  cp('src/library', `${out}/library`, { recursive: true, filter: (path) => !path.endsWith('.ts') }),
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
 * The extension for Node, in parts: what is not needed from the start (`import()`) is loaded when it is. The bundler splits ES modules alone,
 * and editors of 1.91 load CommonJS alone, so each part is turned into CommonJS afterwards.
 */
async function nodeExtension() {
  const { outputFiles } = await build({
    ...inParts,
    entryPoints: { extension: 'src/editor/entry/node.ts', 'extension/worker': 'src/node/worker.ts' },
    outdir: out,
    outExtension: { '.js': '.cjs' },
    chunkNames: 'extension/[name]-[hash]',
    platform: 'node',
    alias: { 'csv-parse/browser/esm/sync': 'csv-parse/sync', yaml: './node_modules/yaml/browser/index.js' },
    // Packages with files or native parts of their own are not in the bundle; they are looked up from where the bundle lies.
    define: { 'import.meta.url': 'bundleUrl' },
    banner: { js: 'const bundleUrl = require("node:url").pathToFileURL(__filename).href;' },
    plugins: [
      noLinkFinder,
      librarySheets({
        onLoad: (name) => `import { readFileSync } from 'node:fs';
          export default readFileSync(new URL('../library/${name}', import.meta.url), 'utf8');`,
      }),
    ],
  });
  await rm(`${out}/extension`, { recursive: true, force: true });
  for (const { path, text } of outputFiles) await writeCommonJs(path, text, { platform: 'node', supported: { 'dynamic-import': false } });
}

/**
 * The extension for the browser, in the same parts. The editor loads one file there, so that file loads the others (`loadPart`), of which
 * each is told all that it requires.
 */
async function browserExtension() {
  const folder = `${out}/browser`;
  const { outputFiles, metafile } = await build({
    ...inParts,
    entryPoints: { sheets: 'src/editor/extension.ts' },
    outdir: folder,
    chunkNames: '[name]-[hash]',
    platform: 'browser',
    metafile: true,
    plugins: [noLinkFinder, librarySheets({ onResolve: (name) => ({ path: `../library/${name}`, external: true }) })],
  });
  const made = new Map(Object.entries(metafile.outputs).map(([path, output]) => [basename(path), output]));
  const importsOf = (file, kind) => made.get(file).imports.flatMap((one) => (one.kind === kind ? [one.path] : []));
  /** The file as the others require it, behind all that it requires itself. */
  const inOrder = (file) => [
    ...new Set([
      ...importsOf(file, 'import-statement').flatMap((path) => {
        if (path === 'vscode') return [];
        return path.startsWith('../') ? [path] : inOrder(basename(path));
      }),
      `./${file}`,
    ]),
  ];
  const filesOf = (file) => JSON.stringify(inOrder(file));
  await rm(folder, { recursive: true, force: true });
  for (const { path, text } of outputFiles) {
    const file = basename(path);
    const code = importsOf(file, 'dynamic-import').reduce((whole, later) => {
      const name = basename(later);
      return whole.replaceAll(`import("./${name}")`, `loadPart(${filesOf(name)})`);
    }, text);
    await writeCommonJs(path, code, { platform: 'browser' });
  }
  await build({
    ...editor,
    entryPoints: ['src/editor/entry/browser.ts'],
    // The browser host takes `extension.cjs` for CommonJS, and then loads `extension.cjs.js`: it adds the suffix to every path without it.
    outfile: `${folder}/extension.cjs.js`,
    platform: 'browser',
    define: { SHEET_PARTS: filesOf('sheets.js') },
  });
}

/** The Markdown reader brings what finds links in plain text. It is never asked to (`linkify` is off), so the editor need not load it. */
const noLinkFinder = {
  name: 'no finder of links in plain text',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^linkify-it$/ }, ({ path }) => ({ path, namespace: 'left-out' }));
    onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({ contents: 'export class LinkifyIt {}' }));
  },
};

/** The library's sheets are files beside the extension: no code, and shown to who asks for a function's definition. */
function librarySheets({ onResolve, onLoad }) {
  const filter = /\/library\/[\w-]+\.ampwright\.md$|^\.\/[\w-]+\.ampwright\.md$/;
  return {
    name: 'sheets of the library as files',
    setup({ onResolve: resolves, onLoad: loads }) {
      if (onResolve) resolves({ filter }, ({ path }) => onResolve(basename(path)));
      if (onLoad) loads({ filter }, ({ path }) => ({ contents: onLoad(basename(path)), loader: 'js' }));
    },
  };
}

async function writeCommonJs(path, text, options) {
  const { minify, target, charset } = shared;
  const { code } = await transform(text, { ...options, format: 'cjs', minify, target, charset, sourcemap: inParts.sourcemap });
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, code);
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
