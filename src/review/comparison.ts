// What changed in meaning between two sheets, as plain data: the schema of the JSON output and, from it, the types.
import * as z from 'zod/mini';

// Nothing in the core makes code from text, zod's fast path included.
z.config({ jitless: true });

/** A text on both sides; null where a side has none. The two differ. */
const texts = z.strictObject({ old: z.nullable(z.string()), new: z.nullable(z.string()) });

/** Lines in the files, from 1; null where a side has none. */
const lines = z.strictObject({ old: z.nullable(z.int()), new: z.nullable(z.int()) });

const base = { change: z.enum(['added', 'removed', 'changed']), line: lines };

/** A name that the old sheet had otherwise; null: it is the same. */
const oldName = z.nullable(z.string());

const value = z.strictObject({
  /** As shown, with uncertainty; null where there is none. */
  old: z.nullable(z.string()),
  new: z.nullable(z.string()),
  /** New less old with its sign, in the new value's unit: `+1.20 A`; null where there is no difference to speak of. */
  absolute: z.nullable(z.string()),
  /** The same as a fraction of the old value's size; null for dates, texts, points on a scale, percentages, and where the old value is 0. */
  relative: z.nullable(z.number()),
});

const entry = z.strictObject({
  ...base,
  name: z.string(),
  oldName,
  role: z.enum(['input', 'computed', 'choice', 'root', 'column']),
  /** The definition in one line of notation, where it means something else. */
  written: z.nullable(texts),
  value: z.nullable(value),
  /** Of a computed column: the rows whose value changed. */
  cells: z.readonly(z.array(z.strictObject({ row: z.string(), value }))),
  /** `plate "M-12"`. */
  source: z.nullable(texts),
  because: z.nullable(texts),
  description: z.nullable(texts),
  /** Whether the value changed although the entry's own line did not. */
  knockOn: z.boolean(),
});

const status = z.enum(['holds', 'fails', 'undecided', 'not calculated']);

const requirement = z.strictObject({
  ...base,
  /** The whole criterion in one line of notation, in its new form if there is one. */
  criterion: z.string(),
  force: z.enum(['shall', 'should']),
  /** The whole criterion, where it means something else. */
  written: z.nullable(texts),
  status: z.strictObject({ old: z.nullable(status), new: z.nullable(status) }),
  /** Whether it stands better or worse than before; null: neither, or only on one side. */
  turned: z.nullable(z.enum(['worse', 'better'])),
  /** Both sides and the margin, `34.40 A ≤ 40 A, 14 % in hand`, where they changed. */
  sides: z.nullable(texts),
  /** Rows of `for each` whose decision turned. */
  rows: z.readonly(
    z.array(z.strictObject({ row: z.string(), status: z.strictObject({ old: z.nullable(status), new: z.nullable(status) }) })),
  ),
  source: z.nullable(texts),
  because: z.nullable(texts),
  description: z.nullable(texts),
  concession: z.nullable(texts),
  /** Whether the decision changed although the requirement's own line did not. */
  knockOn: z.boolean(),
});

const definition = z.strictObject({
  ...base,
  name: z.string(),
  oldName,
  written: z.nullable(texts),
  source: z.nullable(texts),
  description: z.nullable(texts),
});

const table = z.strictObject({
  ...base,
  name: z.string(),
  oldName,
  caption: z.nullable(texts),
  source: z.nullable(texts),
  path: z.nullable(texts),
  /** Columns that came, went, or have another name, unit or type. */
  columns: z.readonly(z.array(z.strictObject({ name: z.string(), oldName, head: texts }))),
  /** Rows that came or went. */
  rows: z.readonly(z.array(z.strictObject({ change: z.enum(['added', 'removed']), row: z.string(), text: z.string() }))),
  /** Cells of rows that are on both sides, at most 5,000. */
  cells: z.readonly(z.array(z.strictObject({ row: z.string(), column: z.string(), value }))),
  /** How many cells changed in all. */
  cellCount: z.int(),
  /** Whether rows that are on both sides stand in another order. */
  reordered: z.boolean(),
});

/** Curves, tabulations, instruments, actions, uses, lines that could not be read. */
const statement = z.strictObject({
  ...base,
  kind: z.enum(['curve', 'tabulation', 'instrument', 'action', 'use', 'unreadable']),
  /** The line itself, in its new form if there is one. */
  label: z.string(),
  written: z.nullable(texts),
  /** What came out otherwise although the line did not change: `4 of 11 values changed, at most +3.4 %`. */
  results: z.nullable(z.string()),
});

const signature = z.strictObject({
  ...base,
  role: z.string(),
  name: z.string(),
  date: z.string(),
  state: z.strictObject({ old: z.nullable(z.enum(['current', 'out of date'])), new: z.nullable(z.enum(['current', 'out of date'])) }),
  /** Whether it covered the old sheet and does not cover the new one. */
  lapsed: z.boolean(),
});

const field = z.strictObject({ ...base, field: z.string(), value: texts });

const prose = z.strictObject({
  ...base,
  /** The heading that it stands under. */
  heading: z.nullable(z.string()),
  words: z.readonly(z.array(z.strictObject({ kind: z.enum(['same', 'removed', 'added']), text: z.string() }))),
});

const problem = z.strictObject({
  ...base,
  severity: z.enum(['error', 'warning']),
  code: z.string(),
  message: z.string(),
  /** A file that the sheet uses; null: the sheet itself. */
  path: z.nullable(z.string()),
});

/** A sheet in a few words. */
export const SHEET_IN_SHORT = z.strictObject({
  title: z.nullable(z.string()),
  number: z.nullable(z.string()),
  revision: z.nullable(z.string()),
  digest: z.string(),
  requirements: z.record(status, z.int()),
});

/** The schema of a comparison. Every list is in the order of the new sheet; what was removed stands behind. */
export const COMPARISON = z.strictObject({
  old: SHEET_IN_SHORT,
  new: SHEET_IN_SHORT,
  problems: z.readonly(z.array(problem)),
  requirements: z.readonly(z.array(requirement)),
  signatures: z.readonly(z.array(signature)),
  entries: z.readonly(z.array(entry)),
  functions: z.readonly(z.array(definition)),
  tables: z.readonly(z.array(table)),
  statements: z.readonly(z.array(statement)),
  frontMatter: z.readonly(z.array(field)),
  prose: z.readonly(z.array(prose)),
});

export type Comparison = Readonly<z.infer<typeof COMPARISON>>;
export type SheetInShort = Readonly<z.infer<typeof SHEET_IN_SHORT>>;
export type Texts = Readonly<z.infer<typeof texts>>;
export type Lines = Readonly<z.infer<typeof lines>>;
export type ValueChange = Readonly<z.infer<typeof value>>;
export type EntryChange = Readonly<z.infer<typeof entry>>;
export type RequirementChange = Readonly<z.infer<typeof requirement>>;
export type DefinitionChange = Readonly<z.infer<typeof definition>>;
export type TableChange = Readonly<z.infer<typeof table>>;
export type StatementChange = Readonly<z.infer<typeof statement>>;
export type SignatureChange = Readonly<z.infer<typeof signature>>;
export type FieldChange = Readonly<z.infer<typeof field>>;
export type ProseChange = Readonly<z.infer<typeof prose>>;
export type ProblemChange = Readonly<z.infer<typeof problem>>;

/** Whether nothing changed in meaning. */
export function isSame(comparison: Comparison): boolean {
  return LISTS.every((list) => comparison[list].length === 0);
}

const LISTS = [
  'problems',
  'requirements',
  'signatures',
  'entries',
  'functions',
  'tables',
  'statements',
  'frontMatter',
  'prose',
] as const satisfies readonly (keyof Comparison)[];
