// What a run may ask of the world outside its text: files of the workspace, by path relative to the sheet.

export interface SheetFiles {
  /** The file's text, or why it is not to be had. The path is relative to the sheet, written with `/`. */
  read(path: string): FileAnswer;
}

export type FileAnswer = string | { readonly refused: string };

export function sameAnswer(a: FileAnswer, b: FileAnswer): boolean {
  return a === b || (typeof a === 'object' && typeof b === 'object' && a.refused === b.refused);
}

/** Why a sheet may not read what is written so, whatever is there and on whatever system; null where it may. */
export function pathRefusal(path: string): string | null {
  if (path === '' || path.includes('\0')) return 'that is no path';
  if (/^[a-z][a-z0-9+.-]+:/i.test(path)) return 'it is an address; a sheet reads files of its workspace only';
  if (/^(?:\/|[a-z]:)/i.test(path) || path.includes('\\')) return 'write the path relative to the sheet, with /';
  return null;
}

/** No files at all: `use` and CSV tables are refused. */
export const NO_FILES: SheetFiles = { read: () => ({ refused: 'files are out of reach here' }) };

/** A path as a used sheet writes it, from the sheet that uses that one. `null` where it leads out of the workspace by name. */
export function resolvePath(from: string, path: string): string | null {
  if (path !== '' && pathRefusal(path) !== null) return null;
  const parts = from.split('/').slice(0, -1);
  for (const part of path.split('/')) {
    if (part === '' || part === '.') continue;
    if (part === '..' && parts.length > 0 && parts.at(-1) !== '..') parts.pop();
    else parts.push(part);
  }
  return parts.join('/');
}
