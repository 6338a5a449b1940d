// Why the system did not let a file be written, as the end of a plain sentence.

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'the system does not permit it',
  EPERM: 'the system does not permit it',
  EBUSY: 'another program holds it',
  EROFS: 'the file system is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk has no more room for this user',
  EFBIG: 'it would be larger than a file may be here',
};

/** A file is made beside the one that it replaces: what does not let it be made is the folder. */
const NOT_MADE: Readonly<Record<string, string>> = {
  ENOENT: 'its folder is not there',
  EACCES: 'nothing may be written in its folder',
  EPERM: 'nothing may be written in its folder',
};

/** Null for what is no failure to write, such as an error of whatever makes the content. */
export function writeFailure(error: unknown): string | null {
  const { code = '', syscall } = error as NodeJS.ErrnoException;
  return (syscall === 'open' ? NOT_MADE[code] : undefined) ?? REASONS[code] ?? null;
}
