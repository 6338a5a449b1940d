// Results made by hand: a block's code, and the value that each name is to have, written as a literal.
import type { Expression, FunctionDefinition, QuantityLiteral, Relation } from '../../src/language/ast.ts';
import { parse } from '../../src/language/parser.ts';
import { print } from '../../src/language/print.ts';
import { children } from '../../src/language/walk.ts';
import type { BudgetLine, CellResult, EntryResult, SheetResult, Shown, Sides, StatementResult, Status } from '../../src/run/result.ts';
import type { Problem } from '../../src/text/problem.ts';
import { differenceToSI } from '../../src/units/quantity.ts';

/** What the statements of a sheet are to have given. */
export interface Given {
  /** By name: `34.40 A ± 0.69 A (k=2)`, `[1 A, 2 A]`, `"K5"`, or a row: `row K5 of contactors`. */
  readonly values?: Readonly<Record<string, string>>;
  /** In the order of the requirements: status, both sides and what stands between them. */
  readonly decisions?: readonly Decision[];
  readonly budgets?: Readonly<Record<string, readonly BudgetLine[]>>;
  readonly functions?: string;
  /** Added to the statement that defines this name. */
  readonly problems?: Readonly<Record<string, readonly Problem[]>>;
}

/** `['holds', '34.40 A <= 40 A', '5.60 A', '14 %', '0.69 A']`. */
export type Decision = readonly [
  status: Status,
  sides: string | null,
  margin?: string,
  percent?: string | null,
  uncertainty?: string | null,
];

/** The answer of a sheet whose blocks have these texts. */
export function made(blocks: string | readonly string[], given: Given = {}): SheetResult {
  const decisions = [...(given.decisions ?? [])];
  const cells = [blocks].flat().map((code, cell) => cellOf(code, cell, given, decisions));
  const all = cells.flatMap((c) => c.statements);
  const entries = new Map(all.flatMap((s) => (s.kind === 'entry' ? [[s.name, s] as const] : [])).reverse());
  const library = given.functions ? parse(given.functions).statements.filter((s) => s.kind === 'function') : [];
  const own = all.flatMap((s) => (s.kind === 'function' ? [s.statement] : []));
  const functions = new Map<string, FunctionDefinition>([...library, ...own].map((f) => [f.name.name, f]));
  return {
    cells,
    entries,
    functions,
    budget: (name) => given.budgets?.[name] ?? [],
    row: () => [],
    usedBy: (name) => all.flatMap((s) => (s.reads.includes(name) ? [labelOf(s)] : [])),
  };
}

function labelOf(of: StatementResult): string {
  if (of.kind === 'requirement') return `${of.force} ${of.condition}`;
  return 'name' in of ? of.name : of.kind === 'column' ? `${of.table}.${of.column}` : of.kind;
}

function cellOf(code: string, cell: number, given: Given, decisions: Decision[]): CellResult {
  const { statements, problems } = parse(code);
  const made = statements.map((statement): StatementResult => {
    const own = problems.filter((p) => p.at.start >= statement.at.start && p.at.end <= statement.at.end);
    const base = { cell, problems: own, reads: [] as string[] };
    switch (statement.kind) {
      case 'entry': {
        const name = statement.name.name;
        const text = given.values?.[name];
        const value = text === undefined ? literalShown(statement.value) : shownOf(text);
        const entry: EntryResult = {
          ...base,
          kind: 'entry',
          statement,
          name,
          problems: [...own, ...(given.problems?.[name] ?? [])],
          reads: namesIn(statement.value),
          role: roleOf(statement.value),
          value,
          missing: value ? null : { kind: 'error' },
          choice: null,
        };
        return entry;
      }
      case 'function':
        return { ...base, kind: 'function', statement, name: statement.name.name };
      case 'requirement': {
        const [status, sides, margin, percent, uncertainty] = decisions.shift() ?? ['not calculated', null];
        return {
          ...base,
          kind: 'requirement',
          statement,
          force: statement.force,
          reads: namesIn(statement.condition),
          condition: print(statement.condition),
          status,
          sides: sides === null ? null : sidesOf(sides, margin ?? '', percent ?? null, uncertainty ?? null),
          rows: [],
          worstAt: [],
          missing: status === 'not calculated' ? { kind: 'not calculated', because: namesIn(statement.condition).slice(0, 1) } : null,
        };
      }
      case 'instrument':
        return { ...base, kind: 'instrument', statement, name: statement.name.name };
      case 'action':
        return { ...base, kind: 'action', statement };
      case 'use':
        return { ...base, kind: 'use', statement };
      case 'unreadable':
        return { ...base, kind: 'unreadable', statement };
      default:
        throw new Error(`a ${statement.kind} is made with a builder of its own`);
    }
  });
  return { cell, code, statements: made, problems };
}

function roleOf(e: Expression): EntryResult['role'] {
  if (e.kind === 'choice') return 'choice';
  if (e.kind === 'rootOf') return 'root';
  return namesIn(e).length === 0 && e.kind !== 'call' && e.kind !== 'sum' && e.kind !== 'product' ? 'input' : 'computed';
}

function namesIn(e: Expression): string[] {
  const own = e.kind === 'name' ? [e.name] : [];
  return [...new Set([...own, ...children(e).flatMap(namesIn)])];
}

function literalShown(e: Expression): Shown | null {
  return e.kind === 'quantity' || e.kind === 'text' || e.kind === 'date' || e.kind === 'list' ? shownOf(print(e)) : null;
}

/** The shown value of a text. */
export function shownOf(text: string): Shown {
  const row = /^row (\S+) of (\S+)$/.exec(text);
  if (row) return { kind: 'row', table: row[2]!, index: 0, text: row[1]!, short: row[1]! };
  const [statement] = parse(`x = ${text}`).statements;
  if (statement?.kind !== 'entry' || statement.broken) throw new Error(`no value: ${text}`);
  const e = statement.value;
  if (e.kind === 'quantity') return quantityShown(e, text);
  if (e.kind === 'yesno') return { kind: 'yesno', value: e.value, text, short: text };
  if (e.kind === 'date') return { kind: 'date', days: e.days, text, short: text };
  if (e.kind === 'text') return { kind: 'text', text: e.value, short: e.value };
  if (e.kind !== 'list') throw new Error(`no value: ${text}`);
  const items = e.items.map((item) => shownOf(print(item)));
  const unit = items[0]?.kind === 'quantity' ? items[0].unit : null;
  return { kind: 'list', count: items.length, items, unit, text, short: text };
}

function quantityShown(e: QuantityLiteral, text: string): Shown {
  const short = print({ ...e, bounds: null });
  const plus = e.bounds?.kind === 'plusminus' ? e.bounds : null;
  const part = plus?.parts[0];
  const relative = part?.unit?.text === '%' && e.unit?.text !== '%';
  const number = part && (relative ? String(Number(((Number(e.number) * Number(part.number)) / 100).toPrecision(2))) : part.number);
  const expanded = part ? differenceToSI(number!, relative ? e.unit : part.unit) : 0;
  return {
    kind: 'quantity',
    si: e.value,
    value: Number(e.number),
    unit: e.unit,
    number: e.number,
    short,
    text,
    uncertainty: part
      ? {
          standard: expanded / (plus?.coverage?.k ?? Math.sqrt(3)),
          expanded,
          k: plus?.coverage?.k ?? null,
          nu: plus?.coverage?.nu ?? null,
          number: number!,
          unit: relative ? e.unit : part.unit,
          shifted: false,
        }
      : null,
  };
}

function sidesOf(text: string, margin: string, percent: string | null, uncertainty: string | null): Sides {
  const [, left, relation, right] = /^(.*) (<=|>=|==|!=|<|>|is) (.*)$/.exec(text)!;
  const slack = margin === '' ? null : shownOf(margin);
  const wide = uncertainty === null ? null : shownOf(uncertainty);
  return {
    left: shownOf(left!),
    right: shownOf(right!),
    relation: relation as Relation,
    limitIsLeft: false,
    slack: slack?.kind === 'quantity' ? slack.si : 0,
    margin,
    percent,
    uncertainty,
    expanded: wide?.kind === 'quantity' ? wide.si : 0,
  };
}
