// Ways in which a file or a folder can be read-only: by its rights, by an attribute, by how its disk is mounted.
import { spawnSync } from 'node:child_process';
import { chmodSync } from 'node:fs';

const NOBODY = ['setpriv', '--reuid=65534', '--regid=65534', '--clear-groups', '--'];
const isRoot = process.getuid?.() === 0;

/** What makes a path read-only: before, after, and in front of the command that is to find it so. */
export interface Way {
  readonly name: string;
  readonly before: (path: string) => void;
  readonly after: (path: string) => void;
  /** The command, in a shell where the path is read-only. */
  readonly inside: (path: string, command: readonly string[]) => readonly string[];
}

/** The rights of a file don't bind the superuser. */
const rights: Way = {
  name: 'by its rights',
  before: (path) => chmodSync(path, 0o555),
  after: (path) => chmodSync(path, 0o755),
  inside: (_, command) => (isRoot ? [...NOBODY, ...command] : command),
};

const attribute: Way = {
  name: 'by an attribute',
  before: (path) => void spawnSync('chattr', ['+i', path]),
  after: (path) => void spawnSync('chattr', ['-i', path]),
  inside: (_, command) => command,
};

const mount: Way = {
  name: 'by how it is mounted',
  before: () => undefined,
  after: () => undefined,
  inside: (path, command) => [
    ...['unshare', isRoot ? '--mount' : '--map-root-user', ...(isRoot ? [] : ['--mount']), '--', 'sh', '-c'],
    ...['mount --bind "$0" "$0" && mount -o remount,ro,bind "$0" && cd "$PWD" && exec "$@"', path, ...command],
  ],
};

export const WAYS: readonly Way[] = [rights, attribute, mount];

/** Why a way does not work on this machine; null where it does. `path` must be read-only in this way. */
export function whyNot(way: Way, path: string, isFolder: boolean): string | null {
  const run = (script: string) => {
    const [command, ...args] = way.inside(path, ['sh', '-c', script, path]);
    return spawnSync(command!, args, { encoding: 'utf8' });
  };
  const there = run('test -r "$0"');
  if (there.status !== 0) return there.error?.message ?? `${there.stderr.trim()} (code ${there.status})`;
  const target = isFolder ? '"$0"/probe' : '"$0"';
  return run(`: >> ${target}`).status === 0 ? 'it can be written all the same' : null;
}
