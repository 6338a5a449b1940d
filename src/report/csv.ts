// Entries and requirements as CSV (RFC 4180): one line each, numbers as numbers, texts that a spreadsheet can't take for formulas.
import type { EntryResult, RequirementResult, Shown } from '../run/result.ts';
import { harmless, quoted } from '../sheet/csv-field.ts';
import { type Figure, jsonValue, marginOf, slackUncertaintyOf, sourceText, uncertaintyOf, unitOf } from './figures.ts';
import type { ReportInput } from './input.ts';

// biome-ignore format: a list of heads
const HEADS = [
  'kind', 'name', 'value', 'unit', 'uncertainty', 'text', 'description', 'source', 'status', 'left', 'relation', 'right', 'margin', 'because',
  'accepted', 'block', 'error',
] as const;

type Field = string | number | null;
type Line = Readonly<Partial<Record<(typeof HEADS)[number], Field>>>;

/** The sheet's entries, then its requirements. Lines end with CR LF; the first holds the heads. */
export function sheetCsv({ result }: Pick<ReportInput, 'result'>): string {
  const statements = result.cells.flatMap((cell) => cell.statements);
  const entries = statements.flatMap((s) => (s.kind === 'entry' ? [entryLine(s)] : []));
  const requirements = statements.flatMap((s) => (s.kind === 'requirement' ? [requirementLine(s)] : []));
  const lines = [...entries, ...requirements].map((line) => HEADS.map((head) => field(line[head] ?? null)));
  return [HEADS.map(String), ...lines].map((fields) => `${fields.join(',')}\r\n`).join('');
}

function entryLine(entry: EntryResult): Line {
  const { value } = entry;
  return {
    kind: entry.role,
    name: entry.name,
    value: value && plain(value),
    unit: value && unitOf(value),
    uncertainty: value && single(uncertaintyOf(value)),
    text: value?.text ?? null,
    description: entry.statement.clauses.description?.value ?? null,
    source: sourceText(entry.statement),
    because: entry.statement.clauses.because?.value ?? null,
    block: entry.cell + 1,
    error: entry.problems.find((p) => p.severity === 'error')?.message ?? null,
  };
}

function requirementLine(r: RequirementResult): Line {
  const { sides } = r;
  const { because, description } = r.statement.clauses;
  return {
    kind: r.force,
    name: r.condition,
    unit: sides && unitOf(sides.left),
    uncertainty: sides && slackUncertaintyOf(sides),
    description: description?.value ?? null,
    status: r.status,
    left: sides && plain(sides.left),
    relation: sides?.relation ?? null,
    right: sides && plain(sides.right),
    margin: sides && marginOf(sides),
    because: because?.value ?? null,
    accepted: r.statement.concession?.by.value ?? null,
    block: r.cell + 1,
    error: r.problems.find((p) => p.severity === 'error')?.message ?? null,
  };
}

// A number, or the text of what is none.
function plain(shown: Shown): Field {
  return single(jsonValue(shown)) ?? (shown.kind === 'text' ? shown.short : shown.text);
}

function single(figure: Figure): number | null {
  return typeof figure === 'number' ? figure : null;
}

/** One field: a number as it is, a text so that it is no formula. */
export function field(value: Field): string {
  if (value === null) return '';
  return typeof value === 'number' ? String(value) : quoted(harmless(value));
}
