// Folders that are made once and kept under .vscode-test: made beside their place, then moved there, so a half-made one is never used.
import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, rename, rm } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const repository = fileURLToPath(new URL('../../../', import.meta.url));
const cache = path.join(repository, '.vscode-test');

/** The folder `name` of the cache, filled by `make` when it does not exist yet. */
export async function madeOnce(name: string, make: (folder: string) => Promise<void>): Promise<string> {
  const folder = path.join(cache, name);
  if (existsSync(folder)) return folder;
  await mkdir(cache, { recursive: true });
  const draft = await mkdtemp(path.join(cache, 'draft-'));
  try {
    await make(draft);
    await rename(draft, folder);
  } catch (error) {
    await rm(draft, { recursive: true, force: true });
    if (!existsSync(folder)) throw error;
  }
  return folder;
}
