// Finds the sheets under paths: a Markdown file is taken as it is, a folder is searched for *.ampwright.md.
import { readdir, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';

export const SHEET_ENDING = '.ampwright.md';

export interface FoundSheets {
  /** Paths as given or found below what was given, each file once, ordered by path. */
  readonly sheets: readonly string[];
  /** Given paths where there is no sheet, each with the reason. */
  readonly missing: readonly { readonly path: string; readonly because: string }[];
}

/** Folders that hold no sheets of their own: packages, and what begins with a dot. Links to folders are not followed, so no search runs in a circle. */
const isSearched = (name: string) => name !== 'node_modules' && !name.startsWith('.');

/** Finds the sheets under `paths`. */
export async function findSheets(paths: readonly string[]): Promise<FoundSheets> {
  const found = new Map<string, string>();
  const missing: { path: string; because: string }[] = [];
  for (const path of paths) {
    const what = await stat(path).catch(() => null);
    if (!what) missing.push({ path, because: 'there is no such file or folder' });
    else if (what.isDirectory()) {
      const below = await sheetsBelow(path);
      if (below.length === 0) missing.push({ path, because: `no file in this folder ends in ${SHEET_ENDING}` });
      for (const sheet of below) found.set(resolve(sheet), sheet);
    } else if (path.endsWith('.md')) found.set(resolve(path), path);
    else missing.push({ path, because: `it is no sheet: the name of one ends in ${SHEET_ENDING}` });
  }
  return { sheets: [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, path]) => path), missing };
}

async function sheetsBelow(folder: string): Promise<string[]> {
  const found: string[] = [];
  const waiting = [folder];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    for (const entry of await readdir(at, { withFileTypes: true })) {
      const path = join(at, entry.name);
      if (entry.isDirectory()) {
        if (isSearched(entry.name)) waiting.push(path);
      } else if (entry.name.endsWith(SHEET_ENDING) && (await stat(path).catch(() => null))?.isFile()) found.push(path);
    }
  }
  return found;
}
