// The direction of imports: src/ keeps to it, and each rule finds what it forbids.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';

interface Violation {
  readonly rule: { readonly name: string };
  readonly from: string;
  readonly to: string;
}

/** Runs the checker over src/ of a folder; `rule from -> to` for each violation. */
function violations(folder: string): string[] {
  const program = resolve('node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const run = spawnSync(process.execPath, [program, '--config', '.dependency-cruiser.cjs', '--output-type', 'json', 'src'], {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  assert.notEqual(run.stdout, '', run.stderr);
  const report = JSON.parse(run.stdout) as { summary: { violations: Violation[] } };
  return report.summary.violations.map((v) => `${v.rule.name} ${v.from} -> ${v.to}`);
}

describe('imports', () => {
  it('go one way through src/, without cycles, and the core imports neither vscode nor node: modules', () => {
    assert.deepEqual(violations('.'), []);
  });

  it('give the core no clock, no randomness, no network and no generated code', () => {
    const core = ['text', 'units', 'language', 'sheet', 'library', 'run', 'review', 'assist', 'view', 'report'];
    const outside = /\bDate\.now\b|\bnew Date\(\s*\)|\bMath\.random\b|\bperformance\b|\bfetch\(|\beval\(|\bnew Function\b|\bprocess\b/;
    const found = core
      .flatMap((name) => readdirSync(join('src', name), { recursive: true, encoding: 'utf8' }).map((file) => join('src', name, file)))
      .filter((path) => path.endsWith('.ts'))
      .flatMap((path) => {
        const code = readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*|'(?:[^'\\\n]|\\.)*'/g, '');
        const hit = outside.exec(code);
        return hit ? [`${path}: ${hit[0]}`] : [];
      });
    assert.deepEqual(found, []);
  });

  describe('against the direction are found:', () => {
    const row = (rule: string, from: string, to: string, imported: string) => ({ rule, from, to, imported });
    const forbidden = [
      row('text-imports', 'src/text/a.ts', 'src/units/b.ts', '../units/b.ts'),
      row('language-imports', 'src/language/a.ts', 'src/run/b.ts', '../run/b.ts'),
      row('run-imports', 'src/run/a.ts', 'src/view/b.ts', '../view/b.ts'),
      row('view-imports', 'src/view/a.ts', 'src/report/b.ts', '../report/b.ts'),
      row('view-imports', 'src/view/c.ts', 'src/editor/d.ts', '../editor/d.ts'),
      row('renderer-imports', 'src/renderer/a.ts', 'src/run/b.ts', '../run/b.ts'),
      row('editor-imports', 'src/editor/a.ts', 'src/cli/b.ts', '../cli/b.ts'),
      row('node-imports', 'src/node/a.ts', 'src/cli/c.ts', '../cli/c.ts'),
      row('vscode-in-editor-only', 'src/assist/a.ts', 'node_modules/@types/vscode/index.d.ts', 'vscode'),
      row('node-modules-in-node-and-cli-only', 'src/sheet/a.ts', 'fs', 'node:fs'),
      row('terminal-packages-in-cli-only', 'src/report/t.ts', 'node_modules/commander/index.js', 'commander'),
      row('what-is-shipped-is-a-dependency', 'src/cli/dev.ts', 'node_modules/mocha/index.js', 'mocha'),
      row('resolvable', 'src/cli/gone.ts', './nowhere.ts', './nowhere.ts'),
      row('no-cycle', 'src/units/x.ts', 'src/units/y.ts', './y.ts'),
    ];
    let found: string[] = [];
    let folder = '';

    before(() => {
      folder = mkdtempSync(join(tmpdir(), 'ampwright-imports-'));
      const write = (path: string, text: string) => {
        mkdirSync(dirname(join(folder, path)), { recursive: true });
        writeFileSync(join(folder, path), text);
      };
      for (const { to } of forbidden) if (to.startsWith('src/')) write(to, 'export const value = 1;\n');
      const importing = (path: string) => `import * as other from '${path}';\nexport const value = other;\n`;
      for (const { from, imported } of forbidden) write(from, importing(imported));
      write('src/units/y.ts', importing('./x.ts'));
      write('node_modules/@types/vscode/package.json', JSON.stringify({ name: '@types/vscode', version: '1.0.0', types: 'index.d.ts' }));
      write('node_modules/@types/vscode/index.d.ts', "declare module 'vscode' {}\n");
      for (const name of ['commander', 'mocha']) {
        write(`node_modules/${name}/package.json`, JSON.stringify({ name, version: '1.0.0', main: 'index.js' }));
        write(`node_modules/${name}/index.js`, 'module.exports = {};\n');
      }
      const dependencies = { commander: '1.0.0' };
      write('package.json', JSON.stringify({ name: 'fixture', dependencies, devDependencies: { mocha: '1.0.0' } }));
      for (const file of ['.dependency-cruiser.cjs', 'tsconfig.json']) copyFileSync(file, join(folder, file));
      found = violations(folder);
    });
    after(() => rmSync(folder, { recursive: true, force: true }));

    for (const { rule, from, to } of forbidden)
      it(`${from} -> ${to} (${rule})`, () => assert.ok(found.includes(`${rule} ${from} -> ${to}`), found.join('\n')));
  });
});
