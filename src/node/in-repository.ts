// Whether a file lies in a git repository, found without starting git.
import { existsSync } from 'node:fs';
import path from 'node:path';

/** Whether a folder above the file holds `.git`, the folder of a repository or the file of a worktree. */
export function inRepository(file: string): boolean {
  for (let folder = path.dirname(file); ; folder = path.dirname(folder)) {
    if (existsSync(path.join(folder, '.git'))) return true;
    if (path.dirname(folder) === folder) return false;
  }
}
