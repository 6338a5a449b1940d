// The answer of a sheet as JSON, for other programs: every entry, requirement and diagnostic.
import * as z from 'zod/mini';
import type { LocatedProblem } from '../run/evaluate.ts';
import type { EntryResult, RequirementResult } from '../run/result.ts';
import { dateText } from '../text/date.ts';
import { type LineMap, positionAt } from '../text/lines.ts';
import { type Figure, jsonValue, marginOf, sourceText, uncertaintyOf, unitOf } from './figures.ts';
import type { ReportInput } from './input.ts';

const figure: z.ZodMiniType<Figure> = z.lazy(() => z.union([z.number(), z.string(), z.boolean(), z.null(), z.array(figure)]));
const text = z.nullable(z.string());

/** The shape of `evaluate --json`. Fields are only ever added. */
export const evaluationSchema = z.object({
  /** The sheet's path as it was given. */
  sheet: z.string(),
  digest: z.string(),
  entries: z.array(
    z.object({
      name: z.string(),
      /** In `unit`, unrounded; a list is an array; null where it was not calculated. */
      value: figure,
      unit: text,
      /** Expanded uncertainty in `unit` (for a temperature point: of the difference); null where exact; an array for a list. */
      uncertainty: figure,
      /** As results show it: `34.40 A ± 0.69 A (k=2)`. */
      text,
      kind: z.enum(['input', 'computed', 'choice', 'root']),
      /** As it is written: `plate "M-12"`. */
      source: text,
      /** Number of the calc block, from 1. */
      block: z.number(),
      /** The first error of the entry, or why it was not calculated. */
      error: text,
    }),
  ),
  requirements: z.array(
    z.object({
      text: z.string(),
      kind: z.enum(['shall', 'should']),
      status: z.enum(['holds', 'fails', 'undecided', 'not calculated']),
      accepted: z.nullable(z.object({ by: z.string(), until: z.string(), because: z.string() })),
      /** Both sides of the comparison that decides, in `unit`. */
      left: figure,
      right: figure,
      unit: text,
      /** Slack in `unit` (for temperature points: of the difference), negative where it fails; null where there is none. */
      margin: z.nullable(z.number()),
      because: text,
    }),
  ),
  diagnostics: z.array(
    z.object({
      severity: z.enum(['error', 'warning', 'note']),
      code: z.string(),
      message: z.string(),
      /** From 1; columns count UTF-16 code units, the end is exclusive. */
      line: z.number(),
      column: z.number(),
      endLine: z.number(),
      endColumn: z.number(),
    }),
  ),
});

export type Evaluation = z.infer<typeof evaluationSchema>;

export type EvaluationInput = Pick<ReportInput, 'sheet' | 'result' | 'digest' | 'problems'>;

/** The evaluation of the sheet at `path` as data. Problems in files that the sheet uses are not in it; the sheet's own say that they are there. */
export function evaluationData(path: string, { sheet, result, digest, problems }: EvaluationInput): Evaluation {
  const statements = result.cells.flatMap((cell) => cell.statements);
  return {
    sheet: path,
    digest,
    entries: statements.flatMap((s) => (s.kind === 'entry' ? [entry(s)] : [])),
    requirements: statements.flatMap((s) => (s.kind === 'requirement' ? [requirement(s)] : [])),
    diagnostics: problems.filter((p) => p.path === null).map((p) => diagnostic(p, sheet.lines)),
  };
}

/** The same as JSON text, indented, with a line end behind it. */
export function evaluationJson(path: string, input: EvaluationInput): string {
  return `${JSON.stringify(evaluationData(path, input), null, 2)}\n`;
}

function entry(of: EntryResult): Evaluation['entries'][number] {
  const { value, missing } = of;
  const error = of.problems.find((p) => p.severity === 'error')?.message ?? null;
  return {
    name: of.name,
    value: value === null ? null : jsonValue(value),
    unit: value && unitOf(value),
    uncertainty: value && uncertaintyOf(value),
    text: value?.text ?? null,
    kind: of.role,
    source: sourceText(of.statement),
    block: of.cell + 1,
    error: error ?? (missing?.kind === 'not calculated' ? `needs ${missing.because.join(', ')}` : missing && 'not calculated'),
  };
}

function requirement(of: RequirementResult): Evaluation['requirements'][number] {
  const { sides } = of;
  const { concession, clauses } = of.statement;
  return {
    text: `${of.force} ${of.condition}`,
    kind: of.force,
    status: of.status,
    accepted: concession && { by: concession.by.value, until: dateText(concession.until.days), because: concession.because.value },
    left: sides && jsonValue(sides.left),
    right: sides && jsonValue(sides.right),
    unit: sides && unitOf(sides.left),
    margin: sides && marginOf(sides),
    because: clauses.because?.value ?? null,
  };
}

function diagnostic({ problem, at }: LocatedProblem, lines: LineMap): Evaluation['diagnostics'][number] {
  const [from, to] = [positionAt(lines, at.start), positionAt(lines, at.end)];
  const { severity, code, message } = problem;
  return { severity, code, message, line: from.line + 1, column: from.column + 1, endLine: to.line + 1, endColumn: to.column + 1 };
}
