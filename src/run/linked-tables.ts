// The CSV tables of a sheet, read from files of its workspace.
import { readCsvTable } from '../sheet/csv.ts';
import { digest, type UsedFile } from '../sheet/digest.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { Table } from '../sheet/table.ts';
import type { TableCaption } from '../sheet/table-caption.ts';
import type { Problem } from '../text/problem.ts';
import { type FileAnswer, resolvePath, type SheetFiles } from './files.ts';
import { useProblem } from './problems.ts';

/** A caption with the file that it links to. */
export interface LinkedTable {
  readonly caption: TableCaption;
  /** Null where it leads out of the workspace by name. */
  readonly path: string | null;
  readonly answer: FileAnswer;
  readonly table: Table;
  /** `path` null: the place is in the sheet. */
  readonly problems: readonly { readonly problem: Problem; readonly path: string | null }[];
  readonly file: UsedFile | null;
}

/** Reads what the captions of a sheet link to; a file that holds the text of `before` is not taken apart again. */
export function linkedTables(sheet: Sheet, from: string, files: SheetFiles, before: readonly LinkedTable[] = []): readonly LinkedTable[] {
  return sheet.csvTables.map((caption) => {
    const path = resolvePath(from, caption.path ?? '');
    const answer = path === null ? OUTSIDE : files.read(path);
    if (path === null || typeof answer !== 'string') {
      const reason = typeof answer === 'string' ? '' : answer.refused;
      const problem = useProblem('table-refused', caption.at, { path: caption.path ?? '', reason });
      const table = { ...caption, columns: [], rowCount: 0, broken: true };
      return { caption, path, answer, table, problems: [{ problem, path: null }], file: null };
    }
    const known = before.find((one) => one.answer === answer && one.path === path && one.caption.name === caption.name);
    if (known !== undefined) return { ...known, caption, table: { ...known.table, ...caption } };
    const { table, problems } = readCsvTable(answer, caption);
    return {
      caption,
      path,
      answer,
      table,
      problems: problems.map((problem) => ({ problem, path })),
      file: { path, digest: digest(answer) },
    };
  });
}

const OUTSIDE: FileAnswer = { refused: 'a path is relative to the sheet, with "/" between folders' };
