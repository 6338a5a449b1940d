// What a command is: it adds itself to the program, runs, and says with which code the program ends.
import type { Command } from 'commander';
import type { ExitCode } from './exit.ts';
import type { Terminal } from './terminal.ts';

export interface Context {
  readonly terminal: Terminal;
  /** The program ends with the most serious code that was given. */
  readonly end: (code: ExitCode) => void;
  /** The program itself, for threads that share the work. */
  readonly file: URL;
}

/** Declares one command: its arguments, its options, its help, and what it does. */
export type Declare = (program: Command, context: Context) => void;
