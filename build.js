// Builds the bundles: the extension for Node and for the browser, the notebook renderer, the command line.
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
const editor = { ...shared, entryPoints: ['src/editor/extension.ts'], format: 'cjs', external: ['vscode'] };

await Promise.all([
  build({ ...editor, outfile: 'dist/extension.cjs', platform: 'node' }),
  // The browser host takes `extension.cjs` for CommonJS, and then loads `extension.cjs.js`: it adds the suffix to every path without it.
  build({ ...editor, outfile: 'dist/browser/extension.cjs.js', platform: 'browser' }),
  build({ ...shared, entryPoints: ['src/renderer/renderer.ts'], outfile: 'dist/renderer.js', format: 'esm', platform: 'browser' }),
  build({
    ...shared,
    entryPoints: ['src/cli/main.ts'],
    outfile: 'dist/cli.js',
    format: 'esm',
    platform: 'node',
    banner: { js: '#!/usr/bin/env node\nimport { createRequire } from "node:module";\nconst require = createRequire(import.meta.url);' },
  }),
]);
