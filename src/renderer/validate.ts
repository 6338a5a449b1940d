// Whether the JSON of an output is a view model: nothing else is drawn.
import * as z from 'zod/mini';
import type { CellView } from '../view/model.ts';
import type { ViewNode } from '../view/node.ts';

const text = z.string();
const words = z.nullable(text);
const number = z.number();
const list = <T extends z.ZodMiniType>(of: T) => z.readonly(z.array(of));

/** A tree of elements; which of them may be drawn is decided when it is built. */
const node = z.custom<ViewNode>(isNode);
const parts = list(node);

function isNode(value: unknown): boolean {
  if (typeof value === 'string') return true;
  if (typeof value !== 'object' || value === null) return false;
  const { tag, attributes, children } = value as Record<string, unknown>;
  return (
    typeof tag === 'string' &&
    typeof attributes === 'object' &&
    attributes !== null &&
    Object.values(attributes).every((v) => typeof v === 'string') &&
    Array.isArray(children) &&
    children.every(isNode)
  );
}

const problem = z.object({
  severity: z.enum(['error', 'warning', 'note']),
  code: text,
  message: text,
  mends: list(text),
  line: number,
});
const shown = z.object({ text, plusMinus: words, coverage: words, remark: words });
const source = z.object({ kind: text, text });
const label = { text, before: text, symbol: z.nullable(node), target: words };
const link = z.object({ ...label, value: words });
const local = z.object({ symbol: node, parts, putIn: z.nullable(parts) });
const formula = z.object({ written: text, parts, call: z.nullable(parts), putIn: z.nullable(parts), where: list(local) });

const base = {
  key: text,
  line: number,
  description: words,
  source: z.nullable(source),
  because: words,
  problems: list(problem),
  missing: words,
  reads: list(link),
  was: words,
};

const choice = z.object({
  cells: list(z.object({ symbol: node, value: text })),
  table: text,
  rows: number,
  ruledOut: list(z.object({ condition: text, count: number })),
  ties: number,
  undecided: words,
});
const budget = z.object({ input: z.object(label), contribution: text, share: text, part: number });
const entry = z.object({
  ...base,
  kind: z.literal('entry'),
  role: z.enum(['input', 'computed', 'choice', 'root']),
  name: text,
  symbol: node,
  value: z.nullable(shown),
  formula: z.nullable(formula),
  reading: words,
  usedBy: list(link),
  budget: list(budget),
  choice: z.nullable(choice),
});
const extended = z.object({
  table: text,
  rows: number,
  label: text,
  heads: list(z.object({ symbol: node, unit: text, computed: z.boolean() })),
  lines: list(z.object({ label: text, cells: list(z.object({ text: words, was: words })) })),
});
const column = z.object({
  ...base,
  kind: z.literal('column'),
  table: text,
  column: text,
  symbol: node,
  formula,
  reading: words,
  labels: list(text),
  values: list(z.nullable(shown)),
  were: list(words),
  extended: z.nullable(extended),
});
const definition = z.object({
  ...base,
  kind: z.literal('function'),
  name: text,
  head: parts,
  parameters: list(z.object({ symbol: node, unit: text })),
  result: words,
  formula,
  needs: list(z.object({ parts, because: words })),
});

const status = z.enum(['holds', 'fails', 'undecided', 'not calculated']);
const gauge = z.object({
  value: number,
  limit: number,
  width: number,
  allowed: z.enum(['below', 'above']),
  fromZero: z.boolean(),
  valueText: text,
  limitText: text,
});
const sides = z.nullable(
  z.object({ left: shown, right: shown, relation: text, margin: text, uncertainty: words, gauge: z.nullable(gauge) }),
);
const requirement = z.object({
  ...base,
  kind: z.literal('requirement'),
  force: z.enum(['shall', 'should']),
  status,
  condition: formula,
  sides,
  rows: list(z.object({ label: text, status, sides })),
  forEach: words,
  throughout: words,
  concession: z.nullable(z.object({ by: text, until: text, because: text })),
});

const points = list(z.object({ x: number, y: z.nullable(number) }));
const curve = z.object({
  ...base,
  kind: z.literal('curve'),
  x: z.object({ name: text, unit: text, from: number, to: number, log: z.boolean() }),
  y: z.object({ title: text, unit: text }),
  traces: list(z.object({ label: text, points })),
  marks: list(z.object({ label: text, x: number, y: list(z.nullable(number)), text })),
  limits: list(z.object({ label: text, points })),
});
const tabulation = z.object({
  ...base,
  kind: z.literal('tabulation'),
  heads: list(z.object({ title: text, unit: text })),
  cells: list(list(words)),
  were: list(words),
});

const instrument = z.object({
  ...base,
  kind: z.literal('instrument'),
  name: text,
  symbol: node,
  bounds: z.nullable(parts),
  limits: words,
  serial: words,
  calibrated: words,
  due: words,
});
const action = z.object({ ...base, kind: z.literal('action'), text, by: words, due: words });
const use = z.object({ ...base, kind: z.literal('use'), path: text, names: z.nullable(list(text)) });
const unreadable = z.object({ ...base, kind: z.literal('unreadable'), name: words, written: text });

const row = z.discriminatedUnion('kind', [
  entry, column, definition, requirement, curve, tabulation, instrument, action, use, unreadable,
]); // biome-ignore format: a list
const cell: z.ZodMiniType<CellView> = z.object({
  cell: number,
  rows: list(row),
  problems: list(problem),
  current: z.boolean(),
  gone: list(z.object({ result: text, text })),
});

/** The view model in a value, or what is wrong with it. */
export function readCellView(value: unknown): { readonly view: CellView } | { readonly fault: string } {
  const read = cell.safeParse(value);
  if (read.success) return { view: read.data };
  const [issue] = read.error.issues;
  return { fault: `at ${issue?.path.join('.') || 'the top'}: ${issue?.message ?? 'not readable'}` };
}
