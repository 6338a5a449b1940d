// Runs git: plumbing commands only, without network, hooks or locks, and its failures in plain words.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** Why git could not answer. */
export type GitFailure =
  | 'no git'
  | 'no repository'
  | 'unknown revision'
  | 'history cut off'
  | 'no common ancestor'
  | 'no default branch'
  | 'git failed';

/** What git could not do; `message` is one or two plain sentences without a final full stop. */
export class GitError extends Error {
  constructor(
    readonly failure: GitFailure,
    message: string,
  ) {
    super(message);
  }
}

/** What git answered. */
export interface GitAnswer {
  /** 0: done. Other codes mean what the command says. */
  readonly code: number;
  readonly stdout: Buffer;
  readonly stderr: string;
}

/** Larger answers are refused. */
const MOST_BYTES = 512 * 1024 * 1024;

/** A repository may be anyone's: nothing in its configuration is to start a program or to reach for the network. */
const QUIET = [
  'protocol.allow=never',
  'core.fsmonitor=false',
  'core.hooksPath=/dev/null',
  'log.showSignature=false',
  'i18n.logOutputEncoding=UTF-8',
];

const ENVIRONMENT = {
  LC_ALL: 'C',
  GIT_OPTIONAL_LOCKS: '0',
  GIT_TERMINAL_PROMPT: '0',
  GIT_NO_LAZY_FETCH: '1',
  GIT_NO_REPLACE_OBJECTS: '1',
  GIT_LITERAL_PATHSPECS: '1',
};

/** Runs git in a folder. Throws `GitError` where git can't be started or refuses the folder; any other failure is in the answer. */
export function git(folder: string, args: readonly string[], input: string | null = null): GitAnswer {
  const run = spawnSync('git', ['--no-pager', ...QUIET.flatMap((setting) => ['-c', setting]), ...args], {
    cwd: folder,
    env: { ...withoutGit(process.env), ...ENVIRONMENT },
    input: input ?? '',
    maxBuffer: MOST_BYTES,
    windowsHide: true,
  });
  if (run.error) throw notStarted(folder, run.error as NodeJS.ErrnoException);
  const stderr = run.stderr.toString('utf8').trim();
  const answer = { code: run.status ?? -1, stdout: run.stdout, stderr };
  if (/not a git repository/i.test(stderr))
    throw new GitError('no repository', `${folder} is in no git repository, so there are no revisions`);
  if (/dubious ownership/i.test(stderr)) {
    throw new GitError('no repository', `git does not read this repository, since another user owns it: ${firstLine(stderr)}`);
  }
  return answer;
}

/** The answer's text, without the line end; throws where the command failed. */
export function gitText(folder: string, args: readonly string[]): string {
  const { code, stdout, stderr } = git(folder, args);
  if (code !== 0) throw new GitError('git failed', `git ${args[0]} failed: ${firstLine(stderr) || `exit code ${code}`}`);
  return stdout.toString('utf8').replace(/\n$/, '');
}

/** `GIT_DIR` and its like, as hooks set them, would lead to another repository than the sheet's. */
function withoutGit(environment: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  return Object.fromEntries(
    Object.entries(environment).filter(([name]) => !/^GIT_(DIR|WORK_TREE|INDEX_FILE|OBJECT_DIRECTORY|PREFIX)$/.test(name)),
  );
}

function notStarted(folder: string, error: NodeJS.ErrnoException): GitError {
  if (!existsSync(folder)) return new GitError('no repository', `${folder} does not exist`);
  if (error.code === 'ENOENT') return new GitError('no git', 'git was not found; install it, or compare two files instead');
  if (error.code === 'ENOBUFS') return new GitError('git failed', 'git answered with more than 512 MiB');
  return new GitError('git failed', `git could not be started (${error.code ?? error.message})`);
}

function firstLine(text: string): string {
  return (text.split('\n')[0] ?? '').replace(/^(?:fatal|error): /, '');
}
