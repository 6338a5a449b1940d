// Sheets on two sides that may belong together: by their path, else by their number, else by their file name.
import { existsSync } from 'node:fs';
import { basename, relative, sep } from 'node:path';
import { readSheet } from '../sheet/read-sheet.ts';
import { findSheets } from './find-sheets.ts';
import { storedFiles, storedSheets } from './git-files.ts';
import { pathInRepository, type Revision } from './git-revisions.ts';
import { type SheetSource, sheetOnDisk, storedSheet } from './sheet-source.ts';

export interface Candidate {
  /** From the folder that is compared, or from the repository's root; written with `/`. */
  readonly path: string;
  readonly source: () => SheetSource;
}

/** The sheets below a folder. */
export async function sheetsIn(folder: string): Promise<readonly Candidate[]> {
  const { sheets } = await findSheets([folder]);
  return sheets.map((path) => ({ path: relative(folder, path).split(sep).join('/'), source: () => sheetOnDisk(path) }));
}

/** A sheet of the work tree, or all below a folder of it. Texts of `open` stand for what the disk holds, by path. */
export async function sheetsOfWorkTree(root: string, path: string, open: ReadonlyMap<string, string>): Promise<readonly Candidate[]> {
  if (!existsSync(path)) return [];
  const { sheets } = await findSheets([path]);
  return sheets.map((sheet) => ({ path: pathInRepository(root, sheet), source: () => sheetOnDisk(sheet, open.get(sheet)) }));
}

/** A sheet of a revision, or all below a folder of it; read in one go. */
export function sheetsOfRevision(root: string, { commit }: Revision, inside: string): readonly Candidate[] {
  const below = storedSheets(root, commit, inside);
  const paths = below.length > 0 ? below : [inside];
  return [...storedFiles(root, commit, paths)].flatMap(([path, file]) => {
    const source = storedSheet(root, commit, path, file);
    return source === null ? [] : [{ path, source: () => source }];
  });
}

export type CandidatePair = readonly [old: Candidate | null, now: Candidate | null];

/** Those with one path first; of the rest those that were moved, as `renames` (old paths by new ones) or their likeness tells; then those on one side alone. */
export function pairCandidates(
  olds: readonly Candidate[],
  news: readonly Candidate[],
  renames: ReadonlyMap<string, string> = new Map(),
): readonly CandidatePair[] {
  const left = new Map(olds.map((one) => [one.path, one]));
  const take = (one: Candidate | undefined) => (one !== undefined && left.delete(one.path) ? one : null);
  const partner = new Map(news.map((one) => [one, take(left.get(one.path))]));
  for (const one of news) if (partner.get(one) === null) partner.set(one, take(left.get(renames.get(one.path) ?? '')));
  for (const likeness of [numberOf, fileNameOf]) {
    const waiting = new Map([...left.values()].reverse().map((one) => [likeness(one), one]));
    for (const one of news) {
      const key = partner.get(one) === null && left.size > 0 ? likeness(one) : null;
      if (key !== null) partner.set(one, take(waiting.get(key)));
    }
  }
  const pairs = news.map((one): CandidatePair => [partner.get(one) ?? null, one]);
  return [...pairs, ...[...left.values()].map((one): CandidatePair => [one, null])];
}

function numberOf({ source }: Candidate): string | null {
  const its = source();
  return 'text' in its ? readSheet(its.text).frontMatter.number : null;
}

function fileNameOf({ path }: Candidate): string {
  return basename(path);
}
