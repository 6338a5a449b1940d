// What a piece of notation means, as a text to compare by: spelling, spacing, superfluous parentheses and places are no part of it.
import type { Statement } from '../../language/ast.ts';

/** New names by old ones. */
export type Renames = ReadonlyMap<string, string>;

export const NO_RENAMES: Renames = new Map();

/** Places, and spellings that stand beside their value. */
const SPELLING: ReadonlySet<string> = new Set(['at', 'unitAt', 'operator', 'superscript', 'number']);
/** Identifiers that name something of the sheet. Others name columns, parameters, arguments and locals, which have a scope of their own. */
const NAMING: ReadonlySet<string> = new Set(['callee', 'table', 'instrument']);

/** The meaning of a part of the syntax tree, with the sheet's own names replaced. */
export function meaning(node: unknown, renames: Renames = NO_RENAMES): string {
  return JSON.stringify(node, (key, value) => {
    if (SPELLING.has(key)) return undefined;
    if (value === null || typeof value !== 'object') return value;
    if (key === 'unit') return value.text;
    const inner = plainForm(value);
    const named = inner.kind === 'name' || NAMING.has(key);
    return named && renames.has(inner.name) ? { ...inner, name: renames.get(inner.name) } : inner;
  });
}

// biome-ignore lint/suspicious/noExplicitAny: a part of the tree of any kind; what is read of it is asked for by its `kind`.
type Part = any;

/** Without parentheses around it, nor around what a sum or a product begins with: `(a * b) / c` is calculated as `a * b / c`. */
function plainForm(part: Part): Part {
  let inner = part;
  while (inner.kind === 'group') inner = inner.inner;
  const parts = inner.kind === 'sum' ? 'terms' : inner.kind === 'product' ? 'factors' : null;
  if (parts === null) return inner;
  const first = plainForm(inner[parts][0].operand);
  return first.kind === inner.kind ? { ...inner, [parts]: [...first[parts], ...inner[parts].slice(1)] } : inner;
}

/** Parts of a statement that are compared by themselves, or that say nothing about what is calculated. */
const APART: ReadonlySet<string> = new Set(['name', 'force', 'concession', 'clauses', 'broken']);

/** The meaning of a statement: what it calculates or states, whatever its name, its source and its reasons are. */
export function statementMeaning(statement: Statement, renames: Renames = NO_RENAMES): string {
  const own = Object.entries(statement).filter(([key]) => !APART.has(key));
  const { locals, needs } = statement.clauses;
  return meaning([Object.fromEntries(own), locals, needs.map((need) => [need.condition, need.because?.value])], renames);
}

/** Whether two statements mean the same, be it with the names replaced or as they stand. */
export function sameMeaning(old: Statement, now: Statement, renames: Renames): boolean {
  const wanted = statementMeaning(now);
  return statementMeaning(old, renames) === wanted || (renames.size > 0 && statementMeaning(old) === wanted);
}
