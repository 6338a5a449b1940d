// Golden files: what was approved before. UPDATE=1 rewrites them, to be read in the difference before they are committed.
import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** Compares a text with the golden file at `path`. */
export function golden(path: string, text: string): void {
  if (process.env['UPDATE'] === '1') {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
  assert.ok(existsSync(path), `${path} is not there; run the test with UPDATE=1 to make it`);
  assert.equal(text, readFileSync(path, 'utf8'));
}
