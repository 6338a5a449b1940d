// Bundles the editor tests for the kind of extension host that will run them.
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { build } from 'esbuild';
import { repository } from './host/cache.ts';

/** Where the tests run. A file `x.test.ts` runs in both kinds of host, `x.HOST.test.ts` in the named one alone; the bench is a host of its own. */
export type Host = 'node' | 'browser' | 'restricted' | 'bench';

const suite = path.join(repository, 'test/editor/suite');
const bench = path.join(repository, 'test/bench/editor');

function filesFor(host: Host): string[] {
  if (host === 'bench') return readdirSync(bench).filter((file) => file.endsWith('.bench.ts'));
  const shared = host === 'restricted' ? [] : ['test'];
  return readdirSync(suite, { recursive: true, encoding: 'utf8' })
    .filter((file) => [...shared, `${host}.test`].includes(path.basename(file).split('.').slice(1, -1).join('.')))
    .sort();
}

/** Writes the bundle for `host` and returns its path; `grep` picks tests by their titles. Throws when there is no test for it. */
export async function bundleTests(host: Host, grep: string): Promise<string> {
  const files = filesFor(host);
  if (files.length === 0) throw new Error(`There is no editor test for the ${host} host.`);
  const browser = host === 'browser';
  const entry = path.join(repository, 'dist/test', host, 'tests.cjs');
  const load = files.map((file) => `() => import(${JSON.stringify(`./${file}`)})`).join(', ');
  await build({
    stdin: {
      contents: `
        import { start } from ${JSON.stringify(path.join(repository, 'test/editor/support/start.ts'))};
        const loadMocha = () => import('${browser ? 'mocha/mocha.js' : 'mocha'}').then((mocha) => globalThis.Mocha ?? mocha.default);
        export const run = () => start(loadMocha, [${load}], ${JSON.stringify(grep)});`,
      resolveDir: host === 'bench' ? bench : suite,
      loader: 'ts',
    },
    outfile: browser ? `${entry}.js` : entry, // as build.js does, and for the same reason
    bundle: true,
    format: 'cjs',
    platform: browser ? 'browser' : 'node',
    target: 'es2022',
    external: ['vscode', ...(browser ? [] : ['mocha'])],
    // The worker has none of Node's modules: the assertions come from a package with the same functions.
    ...(browser && {
      alias: { 'node:assert': 'assert/' },
      define: { 'process.env.NODE_DEBUG': '""' },
      banner: { js: 'globalThis.process ??= { env: {} };' },
    }),
    sourcemap: 'inline',
    logLevel: 'warning',
  });
  return entry;
}
