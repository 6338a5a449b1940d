// What the program tells the shell.

/** 0: all is well. 1: a finding, such as a failed requirement. 2: an error in a sheet, in the arguments or outside. */
export type ExitCode = 0 | 1 | 2;

/** The more serious of two. */
export function worse(a: ExitCode, b: ExitCode): ExitCode {
  return a > b ? a : b;
}
