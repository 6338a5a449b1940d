// Paths of files as a sheet writes them: relative to its own folder.
import type { OpenSheet } from '../../run/open-sheet.ts';
import type { Spot } from '../location.ts';
import { captionPath } from './prose.ts';
import { siteAt } from './site.ts';

/** Whether the cursor stands where a file of the workspace may be named. */
export function wantsFiles(open: OpenSheet, { text, offset }: Spot): boolean {
  if (text.kind === 'sheet') return captionPath(open.loaded.sheet.text, offset) !== null;
  return text.kind === 'block' && (siteAt(open, text.number, offset)?.places.some(({ kind }) => kind === 'path') ?? false);
}

/** The way from the folder of one file to another: `../standards/panel.ampwright.md`. Both paths are absolute, with `/`. */
export function relativePath(from: string, to: string): string {
  const folder = from.split('/').slice(0, -1);
  const parts = to.split('/');
  let shared = 0;
  while (shared < folder.length && shared < parts.length - 1 && folder[shared] === parts[shared]) shared++;
  return [...folder.slice(shared).map(() => '..'), ...parts.slice(shared)].join('/');
}
