// What verifying sheets found, as plain data with lines and columns: every output format is made of it.
import type { SheetEvaluation } from '../run/evaluate.ts';
import type { Status } from '../run/result.ts';
import { type LineMap, lineMap, positionAt } from '../text/lines.ts';
import type { Review } from './check.ts';
import type { Finding, Level } from './finding.ts';
import { verifySheet } from './verify.ts';

/** A finding with its place: lines and columns count from 1, columns in UTF-16 code units; the end is exclusive. */
export interface PlacedFinding {
  readonly code: string;
  readonly level: Level;
  readonly message: string;
  /** A file that the sheet uses, relative to the sheet; null: the sheet itself. */
  readonly path: string | null;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** One sheet's verification. */
export interface Verification {
  readonly sheet: string;
  /** Null where the file could not be read. */
  readonly digest: string | null;
  readonly requirements: Readonly<Record<Status, number>>;
  readonly findings: readonly PlacedFinding[];
}

/** Verifies the sheet at `path`. `textOf` gives the text of a file that the sheet uses, '' where there is none. */
export function verification(path: string, review: Review, textOf: (used: string) => string): Verification {
  const { evaluation } = review;
  const maps = new Map<string, LineMap>();
  const mapOf = (used: string | null) => {
    if (used === null) return evaluation.sheet.lines;
    const map = maps.get(used) ?? lineMap(textOf(used));
    maps.set(used, map);
    return map;
  };
  return {
    sheet: path,
    digest: evaluation.digest,
    requirements: countRequirements(evaluation),
    findings: verifySheet(review).map((finding) => placed(finding, mapOf(finding.path))),
  };
}

/** What is said of a file that is no sheet at all. */
export function notASheet(path: string, because: string): Verification {
  const place = { path: null, line: 1, column: 1, endLine: 1, endColumn: 1 };
  return {
    sheet: path,
    digest: null,
    requirements: { holds: 0, fails: 0, undecided: 0, 'not calculated': 0 },
    findings: [{ code: 'not-a-sheet', level: 'error', message: because, ...place }],
  };
}

/** The most serious level among a sheet's findings; null where there is none but notes. */
export function worstLevel({ findings }: Verification): 'error' | 'finding' | null {
  const has = (level: Level) => findings.some((finding) => finding.level === level);
  return has('error') ? 'error' : has('finding') ? 'finding' : null;
}

function countRequirements({ result }: SheetEvaluation): Readonly<Record<Status, number>> {
  const counts = { holds: 0, fails: 0, undecided: 0, 'not calculated': 0 };
  for (const cell of result.cells) for (const one of cell.statements) if (one.kind === 'requirement') counts[one.status]++;
  return counts;
}

function placed({ code, level, message, at, path }: Finding, map: LineMap): PlacedFinding {
  const start = positionAt(map, at.start);
  const end = positionAt(map, at.end);
  return { code, level, message, path, line: start.line + 1, column: start.column + 1, endLine: end.line + 1, endColumn: end.column + 1 };
}
