// A real git repository in a folder of its own for each test.
import { execFileSync } from 'node:child_process';
import { type TemporaryFolder, temporaryFolder } from './temporary-folder.ts';

export interface TestRepository extends TemporaryFolder {
  /** Runs git in the folder; gives what it printed, without the line end. */
  readonly git: (...args: string[]) => string;
  /** Writes the files (null: removes one) and commits everything; gives the commit. */
  readonly commit: (message: string, files: Readonly<Record<string, string | null>>) => string;
}

const NOBODY = {
  GIT_CONFIG_GLOBAL: '/dev/null',
  GIT_CONFIG_SYSTEM: '/dev/null',
  GIT_AUTHOR_NAME: 'R. Osei',
  GIT_AUTHOR_EMAIL: 'osei@lindrow.invalid',
  GIT_COMMITTER_NAME: 'R. Osei',
  GIT_COMMITTER_EMAIL: 'osei@lindrow.invalid',
};

/** Runs git in a folder, with no configuration but the repository's own. */
export function gitIn(folder: string, ...args: string[]): string {
  const dates = { GIT_AUTHOR_DATE: '2026-11-20T09:00:00+01:00', GIT_COMMITTER_DATE: '2026-11-20T09:00:00+01:00' };
  return execFileSync('git', args, { cwd: folder, env: { ...process.env, ...NOBODY, ...dates }, encoding: 'utf8', stdio: 'pipe' }).replace(
    /\n$/,
    '',
  );
}

/** Gives each test of the surrounding `describe` a repository with the branch `main` and no commit. */
export function testRepository(): TestRepository {
  const folder = temporaryFolder();
  const git = (...args: string[]) => gitIn(folder.path, ...args);
  beforeEach(() => void git('init', '--quiet', '--initial-branch=main'));
  return {
    get path() {
      return folder.path;
    },
    at: folder.at,
    write: folder.write,
    git,
    commit(message, files) {
      for (const [name, content] of Object.entries(files)) {
        if (content === null) git('rm', '--quiet', '--', name);
        else folder.write(name, content);
      }
      git('add', '--all');
      git('commit', '--quiet', '--allow-empty', `--message=${message}`);
      return git('rev-parse', 'HEAD');
    },
  };
}
