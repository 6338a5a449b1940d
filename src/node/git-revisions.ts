// Revisions of a repository: by name, and the one at which the present work left the default branch.
import { existsSync, realpathSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { nearSpellings } from '../text/near.ts';
import { visible } from '../text/visible.ts';
import { GitError, git, gitText } from './git.ts';

/** A commit under the name by which it was asked for. */
export interface Revision {
  /** As written (`HEAD~2`, `origin/main`), or what stands for it (`merge base with origin/main`). */
  readonly name: string;
  /** The object name, 40 or 64 hexadecimal digits. */
  readonly commit: string;
  /** Its first ten digits, whatever the repository's size. */
  readonly short: string;
  /** Author's day, ISO 8601. */
  readonly date: string;
  readonly subject: string;
}

/** Where the default branch may be, in the order of looking; `origin/HEAD` is what the server says. */
const USUAL_BRANCHES = ['origin/main', 'origin/master', 'main', 'master'];

/** The folder, links resolved, of the repository that a path (which need not exist) lies in. */
export function repositoryOf(path: string): string {
  const real = realPath(path);
  const folder = statSync(real, { throwIfNoEntry: false })?.isDirectory() ? real : dirname(real);
  const { code, stdout } = git(existing(folder), ['rev-parse', '--show-toplevel']);
  if (code !== 0) throw new GitError('no repository', `${path} is not in the work tree of a git repository`);
  return realpathSync(stdout.toString('utf8').replace(/\n$/, ''));
}

/** A path as the repository has it: from its root, written with `/`; `.` for the root itself. */
export function pathInRepository(root: string, path: string): string {
  return relative(root, realPath(path)).split(sep).join('/') || '.';
}

/** The path with its links resolved as far as it exists. */
function realPath(path: string): string {
  const folder = existing(resolve(path));
  return join(realpathSync(folder), relative(folder, resolve(path)));
}

/** The path itself if there is such a file or folder, else the nearest one above it. */
function existing(path: string): string {
  return existsSync(path) || dirname(path) === path ? path : existing(dirname(path));
}

/** The commit of a name: a branch, a tag, an object name, `HEAD~2` and whatever else git understands. */
export function revision(root: string, name: string): Revision {
  // No name has a character that could end it where git, or who reads of it, thinks otherwise.
  if (name === '' || /[\u0000-\u001f\u007f]/.test(name)) throw unknown(root, visible(name));
  const { code, stdout } = git(root, ['rev-parse', '--verify', '--quiet', '--end-of-options', `${name}^{commit}`]);
  const commit = stdout.toString('utf8').trim();
  // `^HEAD` is understood as well, but names what is left out.
  if (code !== 0 || !/^[0-9a-f]+$/.test(commit)) throw unknown(root, visible(name));
  return described(root, name, commit);
}

/** The commit at which the present work left the default branch: the merge base of both. On the default branch itself, its newest commit. */
export function mergeBase(root: string): Revision {
  const branch = defaultBranch(root);
  const head = revision(root, 'HEAD');
  const { code, stdout } = git(root, ['merge-base', '--end-of-options', head.commit, branch]);
  if (code === 0) return described(root, `merge base with ${branch}`, stdout.toString('utf8').trim());
  if (isShallow(root)) throw new GitError('history cut off', `the history of this clone does not reach back to ${branch}; ${DEEPEN}`);
  throw new GitError('no common ancestor', `HEAD and ${branch} have no commit in common; name a revision to compare with`);
}

/** The branch that others are merged into: what `origin` says, else the first of the usual names that exists. */
export function defaultBranch(root: string): string {
  const { code, stdout } = git(root, ['symbolic-ref', '--quiet', '--short', 'refs/remotes/origin/HEAD']);
  const said = code === 0 ? [stdout.toString('utf8').trim()] : [];
  const found = [...said, ...USUAL_BRANCHES].find((name) => exists(root, name));
  if (found !== undefined) return found;
  const names = `${USUAL_BRANCHES.slice(0, -1).join(', ')} or ${USUAL_BRANCHES.at(-1)}`;
  throw new GitError('no default branch', `this repository has no branch ${names}; name a revision to compare with`);
}

/** Whether the history was cut off when the repository was cloned. */
export function isShallow(root: string): boolean {
  return gitText(root, ['rev-parse', '--is-shallow-repository']) === 'true';
}

const DEEPEN = 'this is a shallow clone, fetch the rest with `git fetch --unshallow` (in CI: check out with the whole history)';

function exists(root: string, name: string): boolean {
  return git(root, ['rev-parse', '--verify', '--quiet', '--end-of-options', `${name}^{commit}`]).code === 0;
}

function described(root: string, name: string, commit: string): Revision {
  const [date = '', subject = ''] = gitText(root, ['show', '--no-patch', '--format=%as%x1f%s', '--end-of-options', commit]).split('\x1f');
  return { name, commit, short: commit.slice(0, 10), date, subject };
}

function unknown(root: string, name: string): GitError {
  if (!exists(root, 'HEAD')) return new GitError('unknown revision', 'this repository has no commit yet');
  if (isShallow(root)) return new GitError('history cut off', `revision ${name} is not in this clone; ${DEEPEN}`);
  const refs = gitText(root, ['for-each-ref', '--format=%(refname:short)', 'refs/heads', 'refs/tags', 'refs/remotes']).split('\n');
  const near = nearSpellings(name, refs);
  const mend = near.length > 0 ? `; did you mean ${near.join(' or ')}` : '; write a branch, a tag or a commit';
  return new GitError('unknown revision', `this repository has no revision ${name}${mend}`);
}
