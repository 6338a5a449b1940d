// The changes that a file went through, as git has them.
import { readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { GitError, git, gitText } from './git.ts';
import { storedFiles } from './git-files.ts';
import { isShallow, pathInRepository, repositoryOf } from './git-revisions.ts';

/** One commit that changed the file. */
export interface Change {
  readonly commit: string;
  /** The first ten digits of `commit`. */
  readonly short: string;
  /** Author's day, ISO 8601. */
  readonly date: string;
  readonly author: string;
  /** First line of the message. */
  readonly subject: string;
}

export interface History {
  /** Newest first, renames followed. */
  readonly changes: readonly Change[];
  /** False in a shallow clone: older changes may be missing. */
  readonly complete: boolean;
  /** Whether the file is not as the newest commit has it. */
  readonly uncommitted: boolean;
}

/** The history of the file at `path`, as seen from HEAD; empty for a file that was never committed. Throws `GitError`. */
export function historyOf(path: string): History {
  const root = repositoryOf(dirname(path));
  const inside = pathInRepository(root, path);
  if (git(root, ['rev-parse', '--verify', '--quiet', 'HEAD']).code !== 0) return { changes: [], complete: true, uncommitted: true };
  const format = '--format=%H%x1f%as%x1f%aN%x1f%s';
  const log = gitText(root, ['log', '--follow', '-z', format, 'HEAD', '--', inside]);
  const changes = log.split('\0').filter((line) => line !== '').map(readChange); // biome-ignore format: one step
  return { changes, complete: !isShallow(root), uncommitted: isChanged(root, inside, path) };
}

function readChange(line: string): Change {
  const [commit, date, author, subject] = line.split('\x1f');
  if (commit === undefined || date === undefined || author === undefined || subject === undefined) {
    throw new GitError('git failed', 'git log answered in an unknown form');
  }
  return { commit, short: commit.slice(0, 10), date, author, subject };
}

/** Line ends are no change: git may keep them otherwise than the work tree has them. */
function isChanged(root: string, inside: string, path: string): boolean {
  const stored = storedFiles(root, 'HEAD', [inside]).get(inside);
  if (!(stored instanceof Uint8Array)) return true;
  const lines = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1').replaceAll('\r\n', '\n');
  return lines(stored) !== lines(readFileSync(path));
}
