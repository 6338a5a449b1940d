// The commands, in the order of the help.
import type { Declare } from './command.ts';
import { batch } from './commands/batch.ts';
import { compare } from './commands/compare.ts';
import { evaluate } from './commands/evaluate.ts';
import { exportSheet } from './commands/export.ts';
import { functions } from './commands/functions.ts';
import { record } from './commands/record.ts';
import { sign } from './commands/sign.ts';
import { verify } from './commands/verify.ts';

export const COMMANDS: readonly Declare[] = [evaluate, record, verify, compare, sign, exportSheet, batch, functions];
