// What verifying sheets found, as plain data with lines and columns: every output format is made of it.
import type { Status } from '../run/result.ts';
import { type SignatureState, signatureStates } from '../sheet/signatures.ts';
import { type LineMap, lineMap, positionAt } from '../text/lines.ts';
import { inFile, type Review, statements } from './check.ts';
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
  /** What stands at the place, up to the end of its first line, at most 200 characters: the same after an edit elsewhere. */
  readonly quote: string;
}

/** A requirement with its decision, at the place where its findings are. */
export interface Criterion {
  /** `shall I_n <= 40 A`. */
  readonly text: string;
  readonly status: Status;
  readonly line: number;
  readonly column: number;
}

/** A signature, and whether it covers the sheet as it is; what is to be settled with it is among the findings. */
export interface Signing {
  readonly role: string;
  readonly name: string;
  /** ISO 8601 day. */
  readonly date: string;
  /** Of Ampwright; null where the signature does not say. */
  readonly version: string | null;
  readonly state: SignatureState;
}

/** One sheet's verification. */
export interface Verification {
  readonly sheet: string;
  /** Null where the file could not be read. */
  readonly digest: string | null;
  readonly requirements: Readonly<Record<Status, number>>;
  /** In the order of the text. */
  readonly criteria: readonly Criterion[];
  readonly signatures: readonly Signing[];
  readonly findings: readonly PlacedFinding[];
}

/** Verifies the sheet at `path`. `textOf` gives the text of a file that the sheet uses, '' where there is none. */
export function verification(path: string, review: Review, textOf: (used: string) => string): Verification {
  const { evaluation } = review;
  const own: Text = { text: evaluation.sheet.text, map: evaluation.sheet.lines };
  const others = new Map<string, Text>();
  const placesIn = (used: string | null) => {
    if (used === null) return own;
    const text = others.get(used)?.text ?? textOf(used);
    const known = others.get(used) ?? { text, map: lineMap(text) };
    others.set(used, known);
    return known;
  };
  const criteria = statements(review).flatMap((result): readonly Criterion[] => {
    if (result.kind !== 'requirement') return [];
    const { line, column } = positionAt(own.map, inFile(review, result).start);
    return [{ text: `${result.force} ${result.condition}`, status: result.status, line: line + 1, column: column + 1 }];
  });
  return {
    sheet: path,
    digest: evaluation.digest,
    requirements: countRequirements(criteria),
    criteria,
    signatures: signatureStates(evaluation.sheet.frontMatter.signatures, evaluation.digest).map(
      ({ signature: { role, name, date, version }, state }) => ({ role, name, date, version, state }),
    ),
    findings: verifySheet(review).map((finding) => placed(finding, placesIn(finding.path))),
  };
}

/** What is said of a file that is no sheet at all. */
export function notASheet(path: string, because: string): Verification {
  const place = { path: null, line: 1, column: 1, endLine: 1, endColumn: 1, quote: '' };
  return {
    sheet: path,
    digest: null,
    requirements: countRequirements([]),
    criteria: [],
    signatures: [],
    findings: [{ code: 'not-a-sheet', level: 'error', message: because, ...place }],
  };
}

/** The most serious level among a sheet's findings; null where there is none but notes. */
export function worstLevel({ findings }: Verification): 'error' | 'finding' | null {
  const has = (level: Level) => findings.some((finding) => finding.level === level);
  return has('error') ? 'error' : has('finding') ? 'finding' : null;
}

function countRequirements(criteria: readonly Criterion[]): Readonly<Record<Status, number>> {
  const counts = { holds: 0, fails: 0, undecided: 0, 'not calculated': 0 };
  for (const { status } of criteria) counts[status]++;
  return counts;
}

interface Text {
  readonly text: string;
  readonly map: LineMap;
}

function placed({ code, level, message, at, path }: Finding, { text, map }: Text): PlacedFinding {
  const start = positionAt(map, at.start);
  const end = positionAt(map, at.end);
  const quote = (/^[^\r\n]{0,200}/.exec(text.slice(at.start, at.end)) ?? [''])[0].trim();
  return {
    ...{ code, level, message, path },
    ...{ line: start.line + 1, column: start.column + 1, endLine: end.line + 1, endColumn: end.column + 1 },
    quote,
  };
}
