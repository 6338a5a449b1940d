// Packages the extension (a VSIX for every machine, and one for this kind of machine with what the PDF needs) and the command line (a tgz
// for npm). Each is made from a folder that holds what is shipped and nothing else, with the licences of all that was bundled.
import { spawnSync } from 'node:child_process';
import { cp, mkdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { createVSIX } from '@vscode/vsce';
import { build } from 'esbuild';

const OUT = 'dist/packages';
const manifest = JSON.parse(await readFile('package.json', 'utf8'));
const { name, version } = manifest;

/** What the editor shows and the extension reads. */
const EXTENSION = [
  'dist/extension.cjs',
  'dist/extension',
  'dist/browser',
  'dist/library',
  'dist/renderer.js',
  'dist/reference',
  'media',
  'samples',
  'syntax',
  'templates',
];
const COMMAND_LINE = ['dist/cli.js', 'media/sheet.png', 'samples', 'syntax/reference.md', 'templates'];
const BOTH = ['README.md', 'CHANGELOG.md', 'DEVELOPERS.md', 'MEASUREMENTS.md', 'LICENSE'];

/** Packages with files or native parts of their own: not in the bundles, beside them in the package of a platform. */
const PLATFORM = `${process.platform}-${process.arch}`;
const COMPILER = '@myriaddreamin/typst-ts-node-compiler';
const NATIVE = {
  'linux-x64': `${COMPILER}-linux-x64-gnu`,
  'linux-arm64': `${COMPILER}-linux-arm64-gnu`,
  'darwin-arm64': `${COMPILER}-darwin-arm64`,
};
const FONTS = Object.keys(manifest.optionalDependencies).filter((one) => one.startsWith('@embedpdf/'));

const LICENCE_FILES = ['LICENSE', 'LICENSE.md', 'LICENSE.txt', 'LICENCE', 'license', 'License', 'LICENSE-MIT', 'OFL.txt', 'README.md'];

const shipped = (keys) => Object.fromEntries(keys.filter((key) => manifest[key] !== undefined).map((key) => [key, manifest[key]]));
const about = ['name', 'version', 'description', 'license', 'repository', 'type', 'engines'];

/** A folder with these files and this manifest. */
async function stage(folder, files, its, bundled) {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  for (const file of [...files, ...BOTH])
    await cp(file, `${folder}/${file}`, { recursive: true, filter: (path) => !/\.(?:ts|map)$/.test(path) });
  // What is here is what is shipped: the packager asks for this file, or warns.
  await writeFile(`${folder}/.vscodeignore`, '');
  await writeFile(`${folder}/package.json`, `${JSON.stringify(its, null, 2)}\n`);
  await writeFile(`${folder}/THIRD-PARTY-NOTICES.txt`, await notices(bundled));
}

/** The packages whose code is in the bundles of these entry points. */
async function bundledPackages(entryPoints, platform) {
  const { metafile } = await build({
    entryPoints, platform, bundle: true, write: false, metafile: true, outdir: 'dist', format: 'esm', logLevel: 'error', loader: { '.md': 'text' }, external: ['vscode'],
  }); // biome-ignore format: options side by side
  const found = Object.keys(metafile.inputs).flatMap((path) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[0].slice(0, -1) ?? []);
  return [...new Set(found)].sort();
}

/** Name, version and licence of each package, as its own files state them, each text once. One without a licence stops the packaging. */
async function notices(folders) {
  const packagesOf = new Map();
  for (const folder of folders) {
    const its = JSON.parse(await readFile(`${folder}/package.json`, 'utf8'));
    const text = (await firstOf(folder, LICENCE_FILES))?.trim();
    if (!its.license || !text) throw new Error(`${folder} states no licence`);
    packagesOf.set(text, [...(packagesOf.get(text) ?? []), `${its.name} ${its.version} (${its.license})`]);
  }
  const parts = [...packagesOf].map(([text, packages]) => `${packages.join('\n')}\n\n${text}\n`);
  return `Ampwright contains code of these packages, under their licences.\n\n${parts.join(`\n${'-'.repeat(80)}\n\n`)}`;
}

async function firstOf(folder, names) {
  for (const file of names) {
    const text = await readFile(`${folder}/${file}`, 'utf8').catch(() => null);
    if (text !== null) return text;
  }
  return null;
}

const size = async (file) => console.log(`${file}: ${((await stat(file)).size / 1e6).toFixed(2)} MB`);

await rm(OUT, { recursive: true, force: true });
await mkdir(OUT, { recursive: true });
const editorCode = [
  ...(await bundledPackages(['src/editor/entry/node.ts'], 'node')),
  ...(await bundledPackages(['src/editor/entry/browser.ts', 'src/editor/extension.ts', 'src/renderer/renderer.ts'], 'browser')),
];
const extension = shipped([
  ...about,
  'displayName',
  'publisher',
  'main',
  'browser',
  'activationEvents',
  'capabilities',
  'contributes',
  'icon',
  'categories',
  'keywords',
]);
const folder = 'dist/stage/extension';
await stage(folder, EXTENSION, extension, [...new Set(editorCode)].sort());
const quiet = { cwd: folder, dependencies: false, allowMissingRepository: true, rewriteRelativeLinks: false };
await createVSIX({ ...quiet, packagePath: `${process.cwd()}/${OUT}/${name}-${version}.vsix` });
await size(`${OUT}/${name}-${version}.vsix`);

if (NATIVE[PLATFORM] && (await stat(`node_modules/${NATIVE[PLATFORM]}`).catch(() => null))) {
  const beside = [COMPILER, NATIVE[PLATFORM], ...FONTS];
  await stage(folder, EXTENSION, extension, [...new Set([...editorCode, ...beside.map((one) => `node_modules/${one}`)])].sort());
  for (const one of beside) await cp(`node_modules/${one}`, `${folder}/dist/node_modules/${one}`, { recursive: true, dereference: true });
  await createVSIX({ ...quiet, target: PLATFORM, packagePath: `${process.cwd()}/${OUT}/${name}-${PLATFORM}-${version}.vsix` });
  await size(`${OUT}/${name}-${PLATFORM}-${version}.vsix`);
}

const program = {
  ...shipped([...about, 'private', 'bin', 'optionalDependencies']),
  files: [...COMMAND_LINE, ...BOTH, 'THIRD-PARTY-NOTICES.txt'],
};
await stage('dist/stage/program', COMMAND_LINE, program, await bundledPackages(['src/cli/main.ts'], 'node'));
const npm = spawnSync('npm', ['pack', '--silent', '--pack-destination', '../../packages'], {
  cwd: 'dist/stage/program',
  encoding: 'utf8',
  shell: process.platform === 'win32',
});
if (npm.status !== 0) throw new Error(npm.stderr);
await size(`${OUT}/${npm.stdout.trim()}`);
await rm('dist/stage', { recursive: true });
