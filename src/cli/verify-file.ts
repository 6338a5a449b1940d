// Verifies a sheet of the disk, in whichever thread.
import { dirname, join } from 'node:path';
import { coveredIn } from '../node/git-covered.ts';
import { sheetOnDisk } from '../node/sheet-source.ts';
import type { Review } from '../review/check.ts';
import { notASheet, type Verification, verification } from '../review/verification.ts';
import { evaluateSheet } from '../run/evaluate.ts';
import { explain } from './outside.ts';
import { VERSION } from './version.ts';

/** What is asked of every sheet: plain data, which passes from thread to thread. */
export type Asked = Pick<Review, 'on' | 'require'>;

/** The verification of the file at `path`. A file that can't be read has one too, and stops none of the others; so does a mistake of ours. */
export function verifyFile(path: string, asked: Asked): Verification {
  try {
    const source = sheetOnDisk(path);
    return 'refused' in source ? notASheet(path, source.refused) : verifyText(path, source, asked);
  } catch (error) {
    return notASheet(path, explain(error));
  }
}

function verifyText(
  path: string,
  { text, files }: Exclude<ReturnType<typeof sheetOnDisk>, { refused: string }>,
  asked: Asked,
): Verification {
  const textOf = (used: string) => {
    const answer = files.read(used);
    return typeof answer === 'string' ? answer : '';
  };
  const evaluation = evaluateSheet(text, files);
  const covered = coveredIn(path, evaluation.files);
  const { findings, ...rest } = verification(path, { evaluation, version: VERSION, covered, ...asked }, textOf);
  return { ...rest, findings: findings.map((f) => ({ ...f, path: f.path === null ? null : join(dirname(path), f.path) })) };
}
