// Reads a sheet from the disk, evaluates it, and makes its problems ready for printing.
import { readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { workspaceFiles } from '../node/files.ts';
import { evaluationOf, type LocatedProblem, type SheetEvaluation } from '../run/evaluate.ts';
import type { SheetFiles } from '../run/files.ts';
import { type OpenSheet, openSheet } from '../run/open-sheet.ts';
import { decodeSheet } from '../sheet/decode.ts';
import { calcCells } from '../sheet/sheet.ts';
import type { Place } from '../text/problem.ts';
import type { Span } from '../text/span.ts';
import { type Diagnostic, inOrder, printDiagnostic, type Source, source } from './diagnostics.ts';
import type { Stream } from './terminal.ts';

/** A sheet of the disk with its answer. */
export interface LoadedSheet {
  /** As given on the command line. */
  readonly path: string;
  /** The file as it was read, for finding out whether it has been changed since. */
  readonly bytes: Uint8Array;
  /** The sheet as it was run, for running it again with other values. */
  readonly open: OpenSheet;
  readonly evaluation: SheetEvaluation;
  readonly diagnostics: readonly Diagnostic[];
  /** Makes a problem of it ready for printing. */
  readonly diagnosticOf: (found: LocatedProblem) => Diagnostic;
  /** Whether the sheet has errors. */
  readonly failed: boolean;
}

/** A file that can't be taken as a sheet; `message` says why and names it. */
export class NotASheet extends Error {}

/** Reads and evaluates the sheet at `path`. Throws what the disk throws, and `NotASheet` where the file is no text. */
export function loadSheet(path: string): LoadedSheet {
  if (statSync(path).isDirectory()) throw new NotASheet(`${path}: it is a folder; name a file in it`);
  const bytes = readFileSync(path);
  const text = decodeSheet(bytes);
  if (typeof text !== 'string') throw new NotASheet(`${path}: ${text.refused}`);
  const files = workspaceFiles(path);
  const open = openSheet(text, files);
  const evaluation = evaluationOf(open);
  const sources = sourcesOf(path, text, files);
  const diagnosticOf = (found: LocatedProblem) => diagnostic(found, evaluation, sources);
  const diagnostics = inOrder(evaluation.problems.map(diagnosticOf));
  return { path, bytes, open, evaluation, diagnostics, diagnosticOf, failed: diagnostics.some((d) => d.severity === 'error') };
}

/** Prints diagnostics, each with a blank line behind it. */
export function report(diagnostics: readonly Diagnostic[], stream: Stream): void {
  for (const one of diagnostics) stream.line(`${printDiagnostic(one, stream.paint, stream.width)}\n`);
}

type Sources = (path: string | null) => Source;

/** The texts that problems point into: the sheet's own, and those of the files that it uses. */
function sourcesOf(path: string, text: string, files: SheetFiles): Sources {
  const own = source(path, text);
  const others = new Map<string, Source>();
  return (used) => {
    if (used === null) return own;
    const known = others.get(used);
    if (known) return known;
    const answer = files.read(used);
    const made = source(join(dirname(path), used), typeof answer === 'string' ? answer : '');
    others.set(used, made);
    return made;
  };
}

function diagnostic({ problem, at, path }: LocatedProblem, evaluation: SheetEvaluation, sources: Sources): Diagnostic {
  const cells = path === null ? calcCells(evaluation.sheet) : [];
  const own = cells.find(({ code }) => code.start <= at.start && at.start <= code.end);
  /** Places of a problem in a calc block are in a block's code. */
  const inFile = (place: Place): Span => {
    const start = (place.cell === undefined ? own : cells[place.cell])?.code.start ?? 0;
    return { start: start + place.at.start, end: start + place.at.end };
  };
  return {
    source: sources(path),
    at,
    severity: problem.severity,
    code: problem.code,
    message: problem.message,
    mends: problem.mends.map((mend) => mend.title),
    places: problem.places.map((place) => ({ source: sources(path), at: inFile(place), label: place.label })),
  };
}
