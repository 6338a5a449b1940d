// Lets Node import a *.md file as its text, as esbuild's text loader does in the bundles.
import { readFileSync } from 'node:fs';
import Module, { register } from 'node:module';
import { fileURLToPath } from 'node:url';

if (!new URL(import.meta.url).searchParams.has('hooks')) {
  register(`${import.meta.url}?hooks`);
  // Mocha loads test files by `require`, which knows no load hooks.
  Module._extensions['.md'] = (module, file) => {
    module.exports = { __esModule: true, default: readFileSync(file, 'utf8') };
  };
}

/** Node's load hook. */
export async function load(url, context, next) {
  if (!url.split('?')[0].endsWith('.md')) return next(url, context);
  const text = readFileSync(fileURLToPath(url), 'utf8');
  return { format: 'module', shortCircuit: true, source: `export default ${JSON.stringify(text)};` };
}
