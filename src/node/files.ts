// The files that a sheet may read: what it uses and its CSV tables, inside the workspace and nowhere else.
import { existsSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { realpath } from 'node:fs/promises';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { pathRefusal, type SheetFiles } from '../run/files.ts';
import { decodeSheet } from '../sheet/decode.ts';

/** Largest file that a sheet may read, in bytes. */
const LARGEST_FILE = 64 * 1024 * 1024;

/** The text of a file, or why it is not given. The reason may be recorded in the sheet, so it names no place of this machine. */
export type FileAnswer = ReturnType<SheetFiles['read']>;

/** Reads files for the sheet at `sheetPath`; paths are relative to its folder. Links and `..` that lead out of the workspace are refused. */
export function workspaceFiles(sheetPath: string, workspace: string = workspaceOf(sheetPath)): SheetFiles {
  const folder = dirname(realpathSync(sheetPath));
  const root = realpathSync(workspace);
  return {
    read(path) {
      const refused = pathRefusal(path);
      if (refused !== null) return { refused };
      const wanted = resolve(folder, path);
      // Looked at before the disk is: whether a file exists outside the workspace is nobody's business.
      if (!isInside(root, wanted)) return { refused: 'it lies outside the workspace' };
      try {
        const real = realpathSync(wanted);
        if (!isInside(root, real)) return { refused: 'it is a link that leads out of the workspace' };
        const what = statSync(real);
        if (!what.isFile()) return { refused: what.isDirectory() ? 'it is a folder' : 'it is no regular file' };
        if (what.size > LARGEST_FILE) return { refused: `it has more than ${LARGEST_FILE / 1024 / 1024} MiB` };
        return decode(readFileSync(real));
      } catch (error) {
        return { refused: reason(error as NodeJS.ErrnoException) };
      }
    },
  };
}

/** The workspace of a sheet: the nearest folder above it that holds `.git`; else the current folder if the sheet is in it; else its own folder. */
export function workspaceOf(sheetPath: string): string {
  const folder = dirname(realpathSync(sheetPath));
  for (let at = folder; ; at = dirname(at)) {
    if (existsSync(join(at, '.git'))) return at;
    if (at === dirname(at)) break;
  }
  const current = realpathSync(process.cwd());
  return isInside(current, folder) ? current : folder;
}

function isInside(root: string, path: string): boolean {
  const way = relative(root, path);
  return way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

/** Whether symbolic links on the way to a file lead out of a folder. What does not exist leads nowhere. */
export async function leadsOut(root: string, path: string): Promise<boolean> {
  try {
    return !isInside(await realpath(root), await realpath(path));
  } catch {
    return false;
  }
}

function decode(bytes: Uint8Array): FileAnswer {
  const text = decodeSheet(bytes);
  return typeof text === 'string' ? text.replace(/^\ufeff/, '') : { refused: text.refused };
}

function reason(error: NodeJS.ErrnoException): string {
  switch (error.code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return 'it does not exist';
    case 'EACCES':
    case 'EPERM':
      return 'access is denied';
    case 'ELOOP':
      return 'its symbolic links run in a circle';
    default:
      return `it can't be read (${error.code ?? error.message})`;
  }
}
