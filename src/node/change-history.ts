// The changes of a sheet's file as reports show them: where git has none, why.
import type { ChangeHistory, NoHistory } from '../report/input.ts';
import { GitError } from './git.ts';
import { historyOf } from './git-history.ts';

/** The changes of the file at `path`. What it says is the same on every machine that has the same commits: no path, no words of git. */
export function changeHistory(path: string): ChangeHistory | NoHistory {
  try {
    return historyOf(path);
  } catch (error) {
    if (!(error instanceof GitError)) throw error;
    switch (error.failure) {
      case 'no git':
        return { because: 'git was not found' };
      case 'no repository':
        return { because: 'its file is in no git repository' };
      default:
        return { because: 'git could not read its repository' };
    }
  }
}
