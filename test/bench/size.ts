// Sizes of the minified bundles: what the editor loads when the extension starts, and what each output loads.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { BenchRow } from './row.ts';

export function sizeBench(): BenchRow[] {
  const folder = mkdtempSync(join(tmpdir(), 'ampwright-size-'));
  try {
    execFileSync(process.execPath, ['build.js', '--minify', '--out', folder]);
    return [
      row('extension in Node: code loaded at its start', loadedAtStart(join(folder, 'extension.cjs')), 700_000),
      row('extension in the browser: its bundle', [join(folder, 'browser/extension.cjs.js')], 700_000),
      row('renderer: its bundle', [join(folder, 'renderer.js')], 100_000),
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A file and those that it requires at once; what stands behind an arrow is loaded later, with a command. */
function loadedAtStart(file: string, found = new Set<string>()): readonly string[] {
  if (found.has(file)) return [];
  found.add(file);
  const code = readFileSync(file, 'utf8');
  for (const [, later, path] of code.matchAll(/(=> ?\w+\()?require\("(\.{1,2}\/[^"]+)"\)/g)) {
    if (later === undefined) loadedAtStart(join(dirname(file), path!), found);
  }
  return [...found];
}

function row(what: string, files: readonly string[], most: number): BenchRow {
  const size = files.reduce((sum, file) => sum + statSync(file).size, 0);
  if (size === 0) throw new Error(`${what}: nothing was measured`);
  const kilo = (bytes: number) => `${Math.round(bytes / 1000)} kB`;
  return { what, aim: `at most ${kilo(most)}`, found: `${kilo(size)}, ${(size / most).toFixed(2)} of it`, holds: size <= most };
}
