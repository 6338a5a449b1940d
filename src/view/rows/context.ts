// What the rows of one cell are made from, and the parts that every row has.
import type { Clauses } from '../../language/ast.ts';
import type { CellResult, Missing, SheetResult, StatementResult } from '../../run/result.ts';
import { type LineMap, positionAt } from '../../text/lines.ts';
import type { Problem } from '../../text/problem.ts';
import type { FormulaContext } from '../math/formula.ts';
import { shownText } from '../math/quantity.ts';
import { symbol } from '../math/symbol.ts';
import { grouped, words } from '../math/typeset.ts';
import { functionName } from '../math.ts';
import type { LabelView, LinkView, ProblemView, RowView } from '../model.ts';
import { element, type ViewNode } from '../node.ts';
import type { Recorded } from './recorded.ts';

export interface RowContext {
  readonly result: SheetResult;
  readonly cell: CellResult;
  readonly lines: LineMap;
  readonly formula: FormulaContext;
  /** Names that have a row in this sheet; columns as `motors.I_n`. */
  readonly names: ReadonlySet<string>;
  readonly recorded: Recorded;
}

type Base = Pick<RowView, 'key' | 'line' | 'description' | 'source' | 'because' | 'problems' | 'missing' | 'reads' | 'was'>;

/** The parts that every row has; `label` tells the statement from the others of its kind. */
export function baseOf(of: StatementResult, label: string, context: RowContext): Base {
  const { description, source, because }: Clauses = of.statement.clauses;
  return {
    key: `${of.kind} ${label}`,
    line: lineOf(of.statement.at.start, context),
    description: description?.value ?? null,
    source: source && { kind: source.kind, text: source.text.value },
    because: because?.value ?? null,
    problems: of.problems.map((p) => problemOf(p, context)),
    missing: 'missing' in of ? missingText(of.missing) : null,
    reads: of.reads.map((name) => linkOf(name, context)),
    was: context.recorded.was(of),
  };
}

function missingText(missing: Missing | null): string | null {
  if (missing === null) return null;
  if (missing.kind === 'error' || missing.because.length === 0) return 'it has an error';
  const [names, last] = [missing.because.slice(0, -1), missing.because.at(-1)!];
  return `${names.length > 0 ? `${names.join(', ')} and ${last} have` : `${last} has`} no value`;
}

export function problemOf(problem: Problem, context: RowContext): ProblemView {
  const { severity, code, message, mends, at } = problem;
  return { severity, code, message, mends: mends.map((m) => m.title), line: lineOf(at.start, context) };
}

function lineOf(offset: number, context: RowContext): number {
  return positionAt(context.lines, offset).line + 1;
}

/** A name with its value, for lists of what a result depends on. */
export function linkOf(name: string, context: RowContext): LinkView {
  const value = context.result.entries.get(name)?.value ?? null;
  return { ...labelOf(name, context), value: value && shownText(value) };
}

/** What something is called by, and where it leads. */
export function labelOf(text: string, { names }: RowContext): LabelView {
  const [, gain = '', name = text, place = ''] = /^(gain of )?([^\s[\]]+)(\[\d+\])?$/.exec(text) ?? [];
  const target = names.has(name) ? name : null;
  if (!IS_NAME.test(name) || STATEMENTS.has(text)) return { text, before: '', symbol: null, target: null };
  const [first, column] = name.split('.');
  const of = symbol(column ?? first!);
  return { text, before: column === undefined ? gain : `${first}.`, symbol: place === '' ? of : grouped([of, words(place)]), target };
}

// What statements without a name are called by.
const STATEMENTS: ReadonlySet<string> = new Set(['curve', 'tabulation']);

const IS_NAME = /^[\p{L}_][\p{L}\p{N}_]*(\.[\p{L}\p{N}_]+)?$/u;

/** `motors.I_n`: the table upright, the column as a symbol. */
export function columnSymbol(table: string, column: string): ViewNode {
  return element(
    'mrow',
    { 'data-name': `${table}.${column}` },
    functionName(table),
    element('mo', { lspace: '0', rspace: '0' }, '.'),
    symbol(column),
  );
}
