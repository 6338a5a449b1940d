// A folder of its own for each test, removed afterwards.
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

export interface TemporaryFolder {
  /** The folder's path, links resolved. */
  readonly path: string;
  /** The path of a file in it. */
  readonly at: (name: string) => string;
  /** Writes a file in it, folders above it included; gives its path. */
  readonly write: (name: string, content: string | Uint8Array) => string;
}

/** Gives each test of the surrounding `describe` a fresh folder. */
export function temporaryFolder(): TemporaryFolder {
  let path = '';
  beforeEach(() => {
    path = realpathSync(mkdtempSync(join(tmpdir(), 'ampwright-')));
  });
  afterEach(() => rmSync(path, { recursive: true, force: true }));
  const at = (name: string) => join(path, name);
  return {
    get path() {
      return path;
    },
    at,
    write(name, content) {
      mkdirSync(dirname(at(name)), { recursive: true });
      writeFileSync(at(name), content);
      return at(name);
    },
  };
}
