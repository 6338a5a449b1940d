// Compares sheets and folders of the disk, and either with a revision of the repository.
import { statSync } from 'node:fs';
import { type ComparedSheet, type Comparisons, comparedSheet, notCompared, sameSheet } from '../review/comparisons.ts';
import { evaluateSheet } from '../run/evaluate.ts';
import { renamesBetween } from './git-files.ts';
import { mergeBase, pathInRepository, type Revision, repositoryOf, revision } from './git-revisions.ts';
import { type CandidatePair, pairCandidates, sheetsIn, sheetsOfRevision, sheetsOfWorkTree } from './sheet-candidates.ts';
import { type SheetSource, sheetOnDisk, standsAlone } from './sheet-source.ts';

/** Two sheets, or two folders whose sheets belong together by their path. */
export async function comparePaths(old: string, now: string): Promise<Comparisons> {
  const one = (sheet: ComparedSheet): Comparisons => ({ old, new: now, sheets: [sheet] });
  const folders = [old, now].filter((path) => statSync(path, { throwIfNoEntry: false })?.isDirectory());
  if (folders.length === 0) return one(compareSources([old, now], false, sheetOnDisk(old), sheetOnDisk(now)));
  if (folders.length === 1) return one(notCompared(folders[0]!, 'is a folder, and the other is none; name two sheets or two folders'));
  const pairs = pairCandidates(await sheetsIn(old), await sheetsIn(now));
  return pairs.length === 0
    ? one(notCompared(now, 'holds no sheets, and the other folder neither'))
    : { old, new: now, sheets: pairs.map(comparePair) };
}

export interface Span {
  /** The older revision by name; null: where the present work left the default branch. */
  readonly since: string | null;
  /** The newer revision; null: the files as they are. */
  readonly until?: string | null;
  /** Texts that stand for files of the disk, by path: what an editor has not saved. */
  readonly open?: ReadonlyMap<string, string>;
}

/** Sheets and folders of a repository between two states of it. Throws `GitError`. */
export async function compareSince(paths: readonly string[], { since, until = null, open = new Map() }: Span): Promise<Comparisons> {
  const root = repositoryOf(paths[0]!);
  const old = since === null ? mergeBase(root) : revision(root, since);
  const now = until === null ? null : revision(root, until);
  const sheets: ComparedSheet[] = [];
  for (const path of paths) {
    const inside = pathInRepository(root, path);
    const news = now === null ? await sheetsOfWorkTree(root, path, open) : sheetsOfRevision(root, now, inside);
    const before = sheetsOfRevision(root, old, inside);
    const renames = news.every((one) => before.some((other) => other.path === one.path))
      ? NONE
      : renamesBetween(root, old.commit, now?.commit ?? 'HEAD');
    const moved = before.length === 0 && news.length === 1 ? renames.get(news[0]!.path) : undefined;
    const olds = moved === undefined ? before : sheetsOfRevision(root, old, moved);
    const missing = `is no sheet, neither in ${old.short} nor in ${now?.short ?? 'the work tree'}`;
    sheets.push(...(olds.length + news.length === 0 ? [notCompared(path, missing)] : pairCandidates(olds, news, renames).map(comparePair)));
  }
  return { old: label(old), new: now === null ? 'work tree' : label(now), sheets };
}

const NONE: ReadonlyMap<string, string> = new Map();

function comparePair([old, now]: CandidatePair): ComparedSheet {
  const either = (now ?? old)!;
  return compareSources([(old ?? either).path, either.path], true, old?.source() ?? null, now?.source() ?? null);
}

/** `moves`: whether another path means that the sheet was moved. */
function compareSources(
  [was, is]: readonly [string, string],
  moves: boolean,
  old: SheetSource | null,
  now: SheetSource | null,
): ComparedSheet {
  if (old && 'refused' in old) return notCompared(was, old.refused);
  if (now && 'refused' in now) return notCompared(is, now.refused);
  const moved = moves && was !== is ? was : null;
  if (old && now && old.text === now.text && standsAlone(old.text)) return sameSheet(is, moved);
  const evaluated = (source: typeof old) => (source ? evaluateSheet(source.text, source.files) : null);
  return comparedSheet(is, moved, evaluated(old), evaluated(now));
}

function label({ name, short, date }: Revision): string {
  return `${name} (${short}, ${date})`;
}
