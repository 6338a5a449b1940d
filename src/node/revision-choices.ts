// The revisions that one may want to compare a sheet with: where the work left the default branch, the sheet's changes, branches and tags.
import { GitError, gitText } from './git.ts';
import { type Change, historyOf } from './git-history.ts';
import { mergeBase, type Revision, repositoryOf } from './git-revisions.ts';

export interface RevisionChoices {
  /** Where the present work left the default branch, or why that can't be told. */
  readonly base: Revision | { readonly because: string };
  /** Commits that changed the sheet, newest first, renames followed. */
  readonly changes: readonly Change[];
  /** Branches, tags and branches of the server, those with the newest commits first. */
  readonly names: readonly RevisionName[];
}

export interface RevisionName {
  readonly kind: 'branch' | 'tag' | 'remote branch';
  readonly name: string;
  /** ISO 8601 day of its newest commit. */
  readonly date: string;
  readonly subject: string;
}

/** Most commits, and most names, that are listed. */
const MOST_CHOICES = 200;

/** The revisions for the sheet at `path`. Throws `GitError` where there is no repository. */
export function revisionChoices(path: string): RevisionChoices {
  const root = repositoryOf(path);
  return { base: baseOf(root), changes: historyOf(path).changes.slice(0, MOST_CHOICES), names: namesOf(root) };
}

function baseOf(root: string): RevisionChoices['base'] {
  try {
    return mergeBase(root);
  } catch (error) {
    if (error instanceof GitError) return { because: error.message };
    throw error;
  }
}

const FOLDERS: readonly (readonly [string, RevisionName['kind']])[] = [
  ['refs/heads/', 'branch'],
  ['refs/tags/', 'tag'],
  ['refs/remotes/', 'remote branch'],
];

function namesOf(root: string): readonly RevisionName[] {
  const format = '--format=%(refname)%00%(creatordate:short)%00%(contents:subject)%00%(symref)';
  const folders = FOLDERS.map(([folder]) => folder);
  const listed = gitText(root, ['for-each-ref', `--count=${MOST_CHOICES}`, '--sort=-creatordate', format, ...folders]);
  return listed.split('\n').flatMap((line) => {
    const [ref = '', date = '', subject = '', symref = ''] = line.split('\0');
    const found = FOLDERS.find(([folder]) => ref.startsWith(folder));
    // What only points at another name, such as the server's HEAD, is that name once more.
    return found && symref === '' ? [{ kind: found[1], name: ref.slice(found[0].length), date, subject }] : [];
  });
}
