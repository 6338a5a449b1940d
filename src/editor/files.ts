// The files that an open sheet reads. Evaluation does not wait, so they are read ahead of it and watched.
import * as vscode from 'vscode';
import { type FileAnswer, pathRefusal, type SheetFiles } from '../run/files.ts';
import { decodeSheet } from '../sheet/decode.ts';
import { linkRefusal } from './links.ts';

export interface OpenFiles extends SheetFiles, vscode.Disposable {
  /** Reads what evaluation asked for in vain, and what has changed since; whether there was any, so that it is worth evaluating again. */
  settle(): Promise<boolean>;
  /** What was answered so far, by path. */
  readonly answers: ReadonlyMap<string, FileAnswer>;
}

/** Files for the sheet at `sheet`, by paths relative to its folder; `changed` is called when one that was read has another content; null: none is watched. */
export function openFiles(sheet: vscode.Uri, changed: (() => void) | null): OpenFiles {
  const folder = vscode.Uri.joinPath(sheet, '..');
  const known = new Map<string, FileAnswer>();
  const wanted = new Set<string>();
  const watchers = new Map<string, vscode.Disposable>();

  // Until it is read again the file counts as it was: results stay, and are compared with what the file holds then.
  const outdate = (path: string) => {
    wanted.add(path);
    changed?.();
  };
  const watch = (path: string) => {
    if (changed === null || watchers.has(path)) return;
    const watcher = vscode.workspace.createFileSystemWatcher(new vscode.RelativePattern(folder, path));
    for (const event of [watcher.onDidChange, watcher.onDidCreate, watcher.onDidDelete]) event(() => outdate(path));
    watchers.set(path, watcher);
  };
  return {
    answers: known,
    read(path) {
      const refused = refusal(path, sheet, folder);
      if (refused) known.set(path, { refused });
      const answer = known.get(path);
      if (answer === undefined) wanted.add(path);
      return answer ?? { refused: 'it has not been read yet' };
    },
    async settle() {
      const paths = [...wanted];
      wanted.clear();
      for (const path of paths) watch(path);
      await Promise.all(paths.map(async (path) => known.set(path, await readFile(rootOf(sheet), vscode.Uri.joinPath(folder, path)))));
      return paths.length > 0;
    },
    dispose() {
      for (const watcher of watchers.values()) watcher.dispose();
    },
  };
}

/** More rounds of reading files than sheets can use each other deep. */
const rounds = 20;

/** What `make` gives once no file is missing that could be read: a used sheet may use others. */
export async function settled<T>(files: OpenFiles, make: () => T): Promise<T> {
  let made = make();
  for (let round = 0; round < rounds && (await files.settle()); round++) made = make();
  return made;
}

/** Why a path may not be read at all; null where it may. A sheet reads files of its workspace, or of its own folder where it is in none. */
function refusal(path: string, sheet: vscode.Uri, folder: vscode.Uri): string | null {
  const refused = pathRefusal(path);
  if (refused !== null) return refused;
  const root = rootOf(sheet);
  const inside = vscode.Uri.joinPath(folder, path).path.startsWith(root.path.endsWith('/') ? root.path : `${root.path}/`);
  return inside ? null : 'it lies outside the workspace';
}

/** The workspace of a sheet, or its own folder where it is in none. */
function rootOf(sheet: vscode.Uri): vscode.Uri {
  return vscode.workspace.getWorkspaceFolder(sheet)?.uri ?? vscode.Uri.joinPath(sheet, '..');
}

/** Largest file that a sheet may read, in bytes. */
const LARGEST = 64 * 1024 * 1024;

async function readFile(root: vscode.Uri, uri: vscode.Uri): Promise<FileAnswer> {
  try {
    const refused = await linkRefusal(root, uri);
    if (refused) return { refused };
    if ((await vscode.workspace.fs.stat(uri)).size > LARGEST) return { refused: `it has more than ${LARGEST / 1024 / 1024} MiB` };
    const text = decodeSheet(await vscode.workspace.fs.readFile(uri));
    return typeof text === 'string' ? text.replace(/^\uFEFF/, '') : { refused: text.refused };
  } catch (error) {
    return { refused: reason(error) };
  }
}

function reason(error: unknown): string {
  switch (error instanceof vscode.FileSystemError ? error.code : '') {
    case 'FileNotFound':
      return 'it does not exist';
    case 'FileIsADirectory':
      return 'it is a folder';
    case 'NoPermissions':
      return 'access is denied';
    default:
      return `it can't be read (${error instanceof Error ? error.message : String(error)})`;
  }
}
