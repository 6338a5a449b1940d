// Failures of the outside world (disk, rights, memory) in plain words.
import { NotASheet } from './load.ts';

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'a part of the path is no folder',
  EISDIR: 'it is a folder',
  EACCES: 'access is denied',
  EPERM: 'the system does not permit it',
  EROFS: 'the file system is read-only',
  ENOSPC: 'the disk is full',
  EMFILE: 'too many files are open',
  ENAMETOOLONG: 'the path is too long',
  ELOOP: 'the symbolic links run in a circle',
};

/** One line for a person. What is no failure of the system is our mistake, and keeps its trace. */
export function explain(error: unknown): string {
  if (error instanceof NotASheet) return error.message;
  if (!(error instanceof Error)) return String(error);
  const { code, path } = error as NodeJS.ErrnoException;
  const reason = code === undefined ? undefined : (REASONS[code] ?? (path === undefined ? undefined : error.message));
  return reason === undefined ? `this is a mistake in Ampwright, please report it\n${error.stack}` : `${path ? `${path}: ` : ''}${reason}`;
}
