// Sizes of the minified bundles: what is loaded when the editor starts, until the first sheet is shown, and by each output.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { BenchRow } from './row.ts';

export function sizeBench(): BenchRow[] {
  const folder = mkdtempSync(join(tmpdir(), 'ampwright-size-'));
  try {
    execFileSync(process.execPath, ['build.js', '--minify', '--out', folder]);
    const node = join(folder, 'extension.cjs');
    const browser = join(folder, 'browser/extension.cjs.js');
    const sheets = readdirSync(join(folder, 'extension')).find((file) => /^extension-\w+\.cjs$/.test(file))!;
    return [
      row('extension in Node: code loaded at the editor’s start', required(node), 50_000),
      row('extension in Node: code loaded until the first sheet is shown', required(node, join(folder, 'extension', sheets)), 700_000),
      row('extension in the browser: code loaded at the editor’s start', required(browser), 50_000),
      row(
        'extension in the browser: code loaded until the first sheet is shown',
        required(browser, join(folder, 'browser/sheets.js')),
        700_000,
      ),
      row('library: sheets read with the first sheet', filesIn(join(folder, 'library')), 250_000),
      row('renderer: its bundle', [join(folder, 'renderer.js')], 100_000),
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Files of code and those that they require at once; what stands behind an arrow is loaded later. Sheets are no code. */
function required(...files: readonly string[]): readonly string[] {
  const found = new Set<string>();
  const visit = (file: string) => {
    if (found.has(file) || file.endsWith('.md')) return;
    found.add(file);
    const code = readFileSync(file, 'utf8');
    for (const [, later, path] of code.matchAll(/(=> ?\w+\()?require\("(\.{1,2}\/[^"]+)"\)/g)) {
      if (later === undefined) visit(join(dirname(file), path!));
    }
  };
  files.forEach(visit);
  return [...found];
}

const filesIn = (folder: string) => readdirSync(folder).map((file) => join(folder, file));

function row(what: string, files: readonly string[], most: number): BenchRow {
  const size = files.reduce((sum, file) => sum + statSync(file).size, 0);
  if (size === 0) throw new Error(`${what}: nothing was measured`);
  const kilo = (bytes: number) => `${Math.round(bytes / 1000)} kB`;
  return { what, aim: `at most ${kilo(most)}`, found: `${kilo(size)}, ${(size / most).toFixed(2)} of it`, holds: size <= most };
}
