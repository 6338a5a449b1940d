// The packages as a stranger gets them: what is in them, and that they work where nothing else of the repository is.
import assert from 'node:assert/strict';
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';

const repository = resolve(import.meta.dirname, '../..');
const packages = join(repository, 'dist/packages');
const { version } = JSON.parse(readFileSync(join(repository, 'package.json'), 'utf8'));
const platform = `${process.platform}-${process.arch}`;

/** The files below a folder, by their path in it. */
function filesIn(folder: string): readonly string[] {
  const found = readdirSync(folder, { withFileTypes: true, recursive: true }).filter((entry) => entry.isFile());
  return found.map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/')).sort();
}

const SHIPPED =
  /^(?:package\.json|(?:readme|README|changelog|CHANGELOG|DEVELOPERS|MEASUREMENTS)\.md|LICENSE(?:\.txt)?|THIRD-PARTY-NOTICES\.txt|\.vsixmanifest)$/;
const PARTS =
  /^(?:dist\/(?:extension\.cjs|extension\/[\w-]+\.cjs|browser\/(?:extension\.cjs|[\w-]+)\.js|library\/\w+\.ampwright\.md|renderer\.js|reference\/.*\.html)|media\/.*|samples\/.*|templates\/.*\.md|syntax\/.*\.(?:json|md))$/;

describe('the packages', function () {
  this.timeout(180_000);
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'ampwright-packages-')));
  const run = (program: string, args: readonly string[], cwd = folder) =>
    execFileSync(program, args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  before(() => {
    run(process.execPath, ['build.js', '--minify'], repository);
    run(process.execPath, ['package.js'], repository);
  });
  after(() => {
    rmSync(folder, { recursive: true, force: true });
    // Other stages and people look at bundles that can be read.
    run(process.execPath, ['build.js'], repository);
  });

  /** Installs a VSIX as the editor's own command does; the folder of the extension. */
  function installed(file: string): string {
    const server = readdirSync(join(repository, '.vscode-test')).find((name) => name.startsWith('server-'))!;
    const data = mkdtempSync(join(folder, 'server-'));
    const args = [
      'out/server-main.js',
      '--accept-server-license-terms',
      '--install-extension',
      join(packages, file),
      '--server-data-dir',
      data,
    ];
    const said = run(process.execPath, args, join(repository, '.vscode-test', server));
    assert.match(said, /was successfully installed/);
    return join(data, 'extensions', readdirSync(join(data, 'extensions')).find((name) => name.startsWith('ampwright.ampwright-'))!);
  }

  const inEditor = (extension: string, title: string) => {
    const args = ['--import', 'tsx', 'test/editor/run.ts', 'node', '--extension', extension, '--grep', title];
    const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: repository, encoding: 'utf8' });
    assert.equal(status, 0, stdout + stderr);
    assert.match(stdout, /[1-9]\d* passing/);
  };

  it('for any machine holds bundles, samples, templates and documents, installs, and works in the editor', () => {
    const extension = installed(`ampwright-${version}.vsix`);
    assert.deepEqual(
      filesIn(extension).filter((file) => !SHIPPED.test(file) && !PARTS.test(file)),
      [],
    );
    for (const file of ['dist/extension.cjs', 'dist/browser/extension.cjs.js', 'dist/renderer.js', 'THIRD-PARTY-NOTICES.txt'])
      assert.ok(filesIn(extension).includes(file), file);
    inEditor(extension, 'the extension|function of the library|a PDF');
  });

  it('for this kind of machine holds the typesetting and the faces too', function () {
    const file = `ampwright-${platform}-${version}.vsix`;
    if (!readdirSync(packages).includes(file)) this.skip();
    const extension = installed(file);
    const others = filesIn(extension).filter((name) => !SHIPPED.test(name) && !PARTS.test(name));
    assert.ok(
      others.every((name) => /^dist\/node_modules\/@(?:myriaddreamin\/typst-ts-node-compiler|embedpdf\/fonts-)/.test(name)),
      others.join(),
    );
    assert.ok(others.some((name) => name.endsWith('.node')) && others.some((name) => /\.ttf$|\.otf$/.test(name)));
    inEditor(extension, 'a PDF');
  });

  it('states a licence for each package whose code is in a bundle', () => {
    const notices = readFileSync(join(installed(`ampwright-${version}.vsix`), 'THIRD-PARTY-NOTICES.txt'), 'utf8');
    for (const name of ['markdown-it', 'yaml', 'zod', 'csv-parse', '@noble/hashes', 'd3-array'])
      assert.ok(new RegExp(`^${name} \\d+\\.\\S+ \\(`, 'm').test(notices), name);
  });

  it('of the command line installs into an empty folder without the network, and evaluates a sheet', () => {
    const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
    run(npm, ['install', '--offline', '--omit=optional', '--no-audit', '--no-fund', join(packages, `ampwright-${version}.tgz`)]);
    const its = join(folder, 'node_modules/ampwright');
    assert.deepEqual(
      filesIn(its).filter(
        (file) =>
          !SHIPPED.test(file) && !/^(?:dist\/cli\.js|media\/sheet\.png|samples\/.*|syntax\/reference\.md|templates\/.*\.md)$/.test(file),
      ),
      [],
    );
    const said = run(join(folder, 'node_modules/.bin/ampwright'), ['evaluate', join(its, 'samples/starter-sizing.ampwright.md'), '--json']);
    const { entries } = JSON.parse(said);
    assert.match(entries.find((entry: { name: string }) => entry.name === 'I_n').text, /^34\.40 A ± /);
    const template = run(join(folder, 'node_modules/.bin/ampwright'), ['evaluate', join(its, 'templates/motor-list.ampwright.md')]);
    assert.match(template, /3 requirements hold/);
  });
});
