// Writes a file whole or not at all: a temporary file in the same folder, flushed to disk, takes the old one's place.
import { randomBytes } from 'node:crypto';
import { constants, type Stats } from 'node:fs';
import { access, type FileHandle, lstat, open, readdir, readFile, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { writeFailure } from './write-failure.ts';

export type WriteOutcome =
  | { readonly kind: 'written'; readonly path: string }
  /** The file already holds these bytes; it was not touched. */
  | { readonly kind: 'unchanged'; readonly path: string }
  /** Nothing was written; `because` is a plain sentence without a final full stop. */
  | { readonly kind: 'refused'; readonly path: string; readonly because: string };

const REMOVED = 'it has been removed since it was read';

/**
 * Writes `content` (in pieces where it is long) to `path`, through a symbolic link to its target, and keeps the file's mode and owner.
 * With `expected`, the bytes that the new content was made from, it refuses where the file holds anything else by now.
 * Refuses a read-only file, a link that leads nowhere, whatever is no regular file, and where the folder or the disk takes nothing.
 * What else goes wrong throws. In every case the old file is then as it was, and no temporary file stays behind.
 */
export async function writeAtomically(
  path: string,
  content: string | Uint8Array | AsyncIterable<string>,
  expected: Uint8Array | null = null,
): Promise<WriteOutcome> {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  const target = await targetOf(path);
  if (target === null) return { kind: 'refused', path, because: 'it is a symbolic link that leads nowhere' };
  const before = await stat(target).catch(orNull);
  const obstacle = before ? await obstacleTo(target, before) : expected ? REMOVED : null;
  if (obstacle !== null) return { kind: 'refused', path, because: obstacle };
  if (before && bytes instanceof Uint8Array && same(await readFile(target), bytes)) return { kind: 'unchanged', path };

  const temporary = join(dirname(target), `${temporaryStart(target)}${randomBytes(6).toString('hex')}.tmp`);
  let inPlace = false;
  try {
    await writeFlushed(temporary, bytes, before);
    if (expected) {
      const now = await readFile(target).catch(orNull);
      if (!now) return { kind: 'refused', path, because: REMOVED };
      if (!same(now, expected)) return { kind: 'refused', path, because: 'it was changed by something else since it was read' };
    }
    await rename(temporary, target);
    inPlace = true;
  } catch (error) {
    const because = writeFailure(error);
    if (because === null) throw error;
    return { kind: 'refused', path, because };
  } finally {
    if (!inPlace) await rm(temporary, { force: true });
  }
  await flushFolder(dirname(target));
  await sweep(target);
  return { kind: 'written', path };
}

/** The file that a path stands for, links followed; null for a link that leads nowhere. */
async function targetOf(path: string): Promise<string | null> {
  const real = await realpath(path).catch(orNull);
  if (real !== null) return real;
  return (await lstat(path).catch(orNull)) ? null : resolve(path);
}

/** Renaming needs no right to the old file, so a read-only file is looked for on purpose (its mode, too: root may write anything). */
async function obstacleTo(target: string, now: Stats): Promise<string | null> {
  if (!now.isFile()) return now.isDirectory() ? 'it is a folder' : 'it is no regular file';
  const writable = await access(target, constants.W_OK).then(
    () => true,
    () => false,
  );
  return writable && (now.mode & 0o222) !== 0 ? null : 'it is read-only';
}

async function writeFlushed(path: string, content: Uint8Array | AsyncIterable<string>, like: Stats | null): Promise<void> {
  const file = await open(path, 'wx', like ? 0o600 : 0o666);
  try {
    await writeFile(file, content);
    if (like) await keepOwnerAndMode(file, like);
    await file.sync();
  } finally {
    await file.close();
  }
}

async function keepOwnerAndMode(file: FileHandle, like: Stats): Promise<void> {
  const mine = await file.stat();
  if (mine.uid !== like.uid || mine.gid !== like.gid) await file.chown(like.uid, like.gid).catch(() => undefined); // only root may give a file away
  await file.chmod(like.mode & 0o7777);
}

/** How the temporary files of a file begin. A name has at most 255 bytes, of which a letter of other scripts takes up to four. */
function temporaryStart(target: string): string {
  return `.${[...basename(target)].slice(0, 50).join('')}.`;
}

/** No write takes so long: a temporary file of this age belongs to a process that was killed. */
const LEFT_BEHIND_AFTER_MS = 10 * 60_000;

/** Removes what earlier writes of the same file left behind when they were killed. */
async function sweep(target: string): Promise<void> {
  const [folder, start] = [dirname(target), temporaryStart(target)];
  for (const name of await readdir(folder).catch(() => [])) {
    if (!name.startsWith(start) || !/^[0-9a-f]{12}\.tmp$/.test(name.slice(start.length))) continue;
    const path = join(folder, name);
    const its = await stat(path).catch(() => null);
    if (its && Date.now() - its.mtimeMs > LEFT_BEHIND_AFTER_MS) await rm(path, { force: true }).catch(() => undefined);
  }
}

/** Makes the rename itself last through a power failure, where the system can do that for a folder. */
async function flushFolder(path: string): Promise<void> {
  const folder = await open(path, 'r').catch(() => null);
  await folder?.sync().catch(() => undefined);
  await folder?.close();
}

function same(a: Uint8Array, b: Uint8Array): boolean {
  return Buffer.compare(a, b) === 0;
}

function orNull(error: NodeJS.ErrnoException): null {
  if (error.code === 'ENOENT') return null;
  throw error;
}
