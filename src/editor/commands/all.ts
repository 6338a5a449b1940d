// The commands, as a list. All of this is loaded when one of them is called first.
import { compareWithRevision } from './compare.ts';
import type { Register } from './context.ts';
import { exportSheet } from './export.ts';
import { goToWorst } from './go-to-worst.ts';
import { newSheet } from './new-sheet.ts';
import { openReference } from './open-reference.ts';
import { recordAll } from './record-all.ts';
import { sign } from './sign.ts';

export const COMMANDS: readonly Register[] = [newSheet, goToWorst, compareWithRevision, sign, exportSheet, recordAll, openReference];
