// Files as a revision has them: bytes, the sheets under a folder, and what a sheet reads.
import { posix } from 'node:path';
import { pathRefusal } from '../run/files.ts';
import { decodeSheet } from '../sheet/decode.ts';
import type { FileAnswer } from './files.ts';
import { SHEET_ENDING } from './find-sheets.ts';
import { GitError, git, gitText } from './git.ts';

/** A file's bytes in a revision; null: it is not there; or why it is not given. */
export type Stored = Uint8Array | null | { readonly refused: string };

/** A path in a revision. */
export interface StoredPlace {
  readonly commit: string;
  readonly path: string;
}

/** Bytes of files in a revision, by path, in one call of git. Symbolic links are followed inside the revision. */
export function storedFiles(root: string, commit: string, paths: readonly string[]): ReadonlyMap<string, Stored> {
  const wanted = [...new Set(paths)];
  const files = storedAt(
    root,
    wanted.map((path) => ({ commit, path })),
  );
  return new Map(wanted.map((path, i) => [path, files[i]!]));
}

/** The same for files of several revisions, in the order of the places. */
export function storedAt(root: string, places: readonly StoredPlace[]): readonly Stored[] {
  const found: Stored[] = places.map(() => null);
  const asked = [...places.entries()].filter(([, { path }]) => !path.includes('\n'));
  if (asked.length === 0) return found;
  const { code, stdout, stderr } = git(
    root,
    ['cat-file', '--batch', '--follow-symlinks'],
    asked.map(([, { commit, path }]) => `${commit}:${path}\n`).join(''),
  );
  if (code !== 0) throw new GitError('git failed', `git cat-file failed: ${stderr}`);
  let at = 0;
  for (const [index] of asked) {
    const lineEnd = stdout.indexOf(10, at);
    const words = stdout.toString('utf8', at, lineEnd).split(' ');
    const size = words.at(-1) === 'missing' || words.at(-1) === 'ambiguous' ? null : Number(words.at(-1));
    const body = stdout.subarray(lineEnd + 1, lineEnd + 1 + (size ?? 0));
    at = lineEnd + 1 + (size === null ? 0 : size + 1);
    if (size !== null) found[index] = words.length === 3 ? blob(words[1]!, body) : { refused: LINKS[words[0]!] ?? "can't be read" };
  }
  return found;
}

const LINKS: Readonly<Record<string, string>> = {
  symlink: 'is a symbolic link that leads out of the repository',
  dangling: 'is a symbolic link that leads nowhere',
  loop: 'is a circle of symbolic links',
  notdir: 'does not exist',
};

function blob(type: string, body: Uint8Array): Stored {
  if (type !== 'blob') return { refused: type === 'tree' ? 'is a folder' : `is a ${type}` };
  const start = Buffer.from(body.buffer, body.byteOffset, Math.min(body.byteLength, 42)).toString('latin1');
  if (start === 'version https://git-lfs.github.com/spec/v1')
    return { refused: 'is kept in Git LFS, its content is not in the repository' };
  return body;
}

/** The sheets under a folder (a path in the repository) in a revision, ordered by path. */
export function storedSheets(root: string, commit: string, folder: string): readonly string[] {
  const prefix = folder === '.' ? '' : `${folder}/`;
  const listed = gitText(root, ['ls-tree', '-r', '-z', '--name-only', '--full-tree', commit, ...(prefix === '' ? [] : [prefix])]);
  const searched = (path: string) => !/(^|\/)(\.[^/]*|node_modules)\//.test(path.slice(prefix.length));
  return listed.split('\0').filter((path) => path.endsWith(SHEET_ENDING) && searched(path)).sort(); // biome-ignore format: one step
}

/** Files that were renamed between two revisions: old paths by new ones. */
export function renamesBetween(root: string, old: string, now: string): ReadonlyMap<string, string> {
  const fields = gitText(root, ['diff-tree', '-r', '-z', '-M', '--diff-filter=R', '--name-status', old, now]).split('\0');
  const renames = new Map<string, string>();
  for (let i = 0; i + 2 < fields.length; i += 3) renames.set(fields[i + 2]!, fields[i + 1]!);
  return renames;
}

/** Reads files of a revision for the sheet at `sheet`, a path in the repository; paths are relative to its folder, as in `workspaceFiles`. */
export function revisionFiles(root: string, commit: string, sheet: string): { read(path: string): FileAnswer } {
  const known = new Map<string, FileAnswer>();
  const readNow = (path: string): FileAnswer => {
    const refused = pathRefusal(path);
    if (refused !== null) return { refused };
    const wanted = posix.normalize(posix.join(posix.dirname(sheet), path));
    if (wanted === '..' || wanted.startsWith('../')) return { refused: 'lies outside the repository' };
    const stored = storedFiles(root, commit, [wanted]).get(wanted) ?? { refused: `does not exist in ${commit.slice(0, 10)}` };
    return 'refused' in stored ? stored : textOf(stored);
  };
  return {
    read(path) {
      const answer = known.get(path) ?? readNow(path);
      known.set(path, answer);
      return answer;
    },
  };
}

function textOf(bytes: Uint8Array): FileAnswer {
  const text = decodeSheet(bytes);
  return typeof text === 'string' ? text.replace(/^\ufeff/, '') : { refused: `can't be read: ${text.refused}` };
}
