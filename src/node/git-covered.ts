// Finds the revision of a sheet that a digest covers.
import { dirname, posix } from 'node:path';
import type { FindCovered } from '../review/signature-standing.ts';
import { evaluateSheet } from '../run/evaluate.ts';
import { digest, type UsedFile } from '../sheet/digest.ts';
import { GitError, gitText } from './git.ts';
import { type StoredPlace, storedAt } from './git-files.ts';
import { isShallow, pathInRepository, repositoryOf } from './git-revisions.ts';
import { type SheetSource, standsAlone, storedSheet } from './sheet-source.ts';

/** The sheet at a commit that changed it, or a file that it uses. */
interface State extends StoredPlace {
  /** Author's day, ISO 8601. */
  readonly date: string;
  /** Committer's time in seconds since 1970. */
  readonly time: number;
}

interface Known {
  readonly state: State;
  readonly source: SheetSource | null;
}

/** Older states are not looked at. */
const MOST = 500;

/** Looks for what a digest covers among the newest states of the sheet at `path`, as seen from HEAD. `used` are the files that it uses. */
export function coveredIn(path: string, used: readonly UsedFile[]): FindCovered {
  let root: string | null = null;
  let states: readonly Known[] | null = null;
  const digests = new Map<State, string | null>();
  const digestOf = ({ state, source }: Known) => {
    if (!digests.has(state)) digests.set(state, digestOfSource(source));
    return digests.get(state);
  };
  return (covers) => {
    try {
      root ??= repositoryOf(dirname(path));
      states ??= knownStates(root, path, used);
      const found = states.find((one) => digestOf(one) === covers);
      if (!found?.source || 'refused' in found.source) return { because: missing(root, states.length) };
      const { commit, date } = found.state;
      return { evaluation: evaluateSheet(found.source.text, found.source.files), revision: `${commit.slice(0, 10)} of ${date}` };
    } catch (error) {
      // Where a repository lies is no business of whoever reads the sheet.
      if (error instanceof GitError) return { because: error.failure === 'no repository' ? 'it is in no git repository' : error.message };
      throw error;
    }
  };
}

function missing(root: string, count: number): string {
  if (count === 0) return 'the sheet has never been committed';
  if (count === MOST) return `none of the newest ${MOST} revisions of this file is what the signature covers`;
  return isShallow(root)
    ? 'what the signature covers is not in this clone, whose history was cut off (`git fetch --unshallow` brings the rest)'
    : 'no revision of this file is what the signature covers';
}

function digestOfSource(source: SheetSource | null): string | null {
  if (source === null || 'refused' in source) return null;
  return standsAlone(source.text) ? digest(source.text) : evaluateSheet(source.text, source.files).digest;
}

function knownStates(root: string, path: string, used: readonly UsedFile[]): readonly Known[] {
  const states = statesOf(root, pathInRepository(root, path), used).slice(0, MOST);
  const stored = storedAt(root, states);
  return states.map((state, i) => ({ state, source: storedSheet(root, state.commit, state.path, stored[i] ?? null) }));
}

/** Newest first. A commit that changed a used file alone has the sheet under the path that it had then. */
function statesOf(root: string, inside: string, used: readonly UsedFile[]): readonly State[] {
  if (gitText(root, ['rev-list', '--max-count=1', '--all']) === '') return [];
  const own = changes(root, ['--follow', '--name-only', 'HEAD', '--', inside]);
  const folder = posix.dirname(inside);
  const others = used.length === 0 ? [] : changes(root, ['HEAD', '--', ...used.map((file) => posix.join(folder, file.path))]);
  let at = inside;
  return [...own, ...others]
    .sort((a, b) => b.time - a.time)
    .map((state) => {
      at = state.path || at;
      return { ...state, path: at };
    });
}

/** What `git log` lists; `path` is empty where it lists none. */
function changes(root: string, args: readonly string[]): readonly State[] {
  const log = gitText(root, ['log', '-z', `--max-count=${MOST}`, '--format=%x1e%H%x1f%as%x1f%ct', ...args]);
  return log
    .split('\x1e')
    .slice(1)
    .map((entry) => {
      const [head = '', path = ''] = entry.split('\0');
      const [commit = '', date = '', time = ''] = head.split('\x1f');
      return { commit, date, time: Number(time), path: path.replace(/^\n/, '') };
    });
}
