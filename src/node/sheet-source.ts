// Sheets ready to be evaluated: their text and the files that they may read, from the disk or from a revision.
import { readFileSync } from 'node:fs';
import type { SheetFiles } from '../run/files.ts';
import { decodeSheet } from '../sheet/decode.ts';
import { workspaceFiles } from './files.ts';
import { revisionFiles, type Stored } from './git-files.ts';

/** A sheet's text with its files, or why it can't be taken as a sheet: a clause that follows its path. */
export type SheetSource = { readonly text: string; readonly files: SheetFiles } | { readonly refused: string };

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'it may not be read',
};

/** The sheet at a path of the disk. A text that is `open` stands for what the disk holds. */
export function sheetOnDisk(path: string, open?: string): SheetSource {
  try {
    const text = open ?? decodeSheet(readFileSync(path));
    return typeof text === 'string' ? { text, files: workspaceFiles(path) } : text;
  } catch (error) {
    const { code = '', message } = error as NodeJS.ErrnoException;
    return { refused: REASONS[code] ?? `it can't be read (${message})` };
  }
}

/** A sheet as a revision has it; null where it is not there. */
export function storedSheet(root: string, commit: string, path: string, stored: Stored): SheetSource | null {
  if (stored === null) return null;
  if ('refused' in stored) return stored;
  const text = decodeSheet(stored);
  return typeof text === 'string' ? { text, files: revisionFiles(root, commit, path) } : text;
}

/** Whether a sheet reads no other file, so that the same text means the same. */
export function standsAlone(text: string): boolean {
  return !/\buse\b|\.csv\b/i.test(text);
}
