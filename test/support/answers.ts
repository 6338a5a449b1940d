// What a sheet answers, as lines to read: values, decisions, and problems under the characters that they mark.

import { evaluateSheet, type SheetEvaluation } from '../../src/run/evaluate.ts';
import type { SheetFiles } from '../../src/run/files.ts';
import { sidesText } from '../../src/run/record.ts';
import type { CurveResult, EntryResult, RequirementResult, Shown, Sides, StatementResult } from '../../src/run/result.ts';
import type { ProseValue } from '../../src/sheet/prose-values.ts';
import { lineMap, positionAt } from '../../src/text/lines.ts';
import type { Problem } from '../../src/text/problem.ts';
import { annotation } from './parsing.ts';

export interface Given {
  /** Markdown in front of the block: front matter, prose, tables. */
  readonly before?: string;
  /** Markdown behind it. */
  readonly behind?: string;
  /** Files of the workspace by path. */
  readonly files?: Readonly<Record<string, string>>;
}

/** The sheet whose one calc block has this code. */
export function sheetText(code: string, { before = '', behind = '' }: Given = {}): string {
  return `${before === '' ? '' : `${before.trim()}\n\n`}\`\`\`ampwright\n${code}\n\`\`\`\n${behind === '' ? '' : `\n${behind.trim()}\n`}`;
}

export function filesOf(files: Readonly<Record<string, string>>): SheetFiles {
  return { read: (path) => (Object.hasOwn(files, path) ? files[path]! : { refused: 'there is no such file' }) };
}

export function evaluated(code: string, given: Given = {}): SheetEvaluation {
  return evaluateSheet(sheetText(code, given), filesOf(given.files ?? {}));
}

/** `I_n = 34.40 A ± 0.69 A`, `shall I_n <= 38 A: holds, 34.40 A ≤ 38 A, …`, `! wrong-dimension at "1/2 s": Found 1/s, wanted s`; warnings of missing sources left out. */
export function answers(code: string, given: Given = {}): readonly string[] {
  const { result } = evaluated(code, given);
  const [cell] = result.cells;
  return cell!.statements.flatMap((s) => [...answersOf(s), ...s.problems.filter(isWorthSaying).map((p) => problemLine(code, p))]);
}

/** The value of each entry as shown, by name; `null` where it has none. */
export function values(code: string, given: Given = {}): Readonly<Record<string, string | null>> {
  return Object.fromEntries([...evaluated(code, given).result.entries].map(([name, entry]) => [name, entry.value?.text ?? null]));
}

/** The coherent SI value of an entry, unrounded; NaN where it has none. */
export function numberOf(evaluation: SheetEvaluation, name: string): number {
  const value = evaluation.result.entries.get(name)?.value;
  return value?.kind === 'quantity' ? value.si : Number.NaN;
}

const isWorthSaying = (p: Problem) => p.code !== 'no-source';
const MARKS = { error: '!', warning: '?', note: 'i' } as const;

function problemLine(code: string, p: Problem): string {
  return `${MARKS[p.severity]} ${p.code} at "${code.slice(p.at.start, p.at.end)}": ${p.message}`;
}

/** A block with the answers under its statements and what is wrong under its lines. */
export function answered(code: string, given: Given = {}): string {
  const [cell] = evaluated(code, given).result.cells;
  const map = lineMap(code);
  const lineOf = (offset: number) => positionAt(map, offset).line;
  const lines = code.split('\n').map((line) => [`  ${line}`.trimEnd()]);
  for (const problem of cell!.problems.filter(isWorthSaying)) lines[lineOf(problem.at.start)]!.push(...annotation(code, problem));
  for (const s of cell!.statements) lines[lineOf(s.statement.at.end)]!.push(...answersOf(s).map((line) => `| ${line}`));
  return `${lines.flat().join('\n')}\n`;
}

/** The answer of one statement, without its problems. */
export function answersOf(s: StatementResult): readonly string[] {
  switch (s.kind) {
    case 'entry':
      return [`${s.name}${missing(s) ?? ` = ${s.value?.text ?? '?'}${remarks(s)}`}`];
    case 'column':
      return [`${s.table}.${s.column}${missing(s) ?? ` = [${s.values.map((v) => v?.text ?? '–').join(', ')}]`}`];
    case 'requirement':
      return requirementLines(s);
    case 'curve':
      return curveLines(s);
    case 'tabulation':
      if (s.missing !== null) return [`tabulate${missing(s)}`];
      return [
        s.heads.map((h) => `${h.title}${h.unit === null ? '' : ` / ${h.unit.text}`}`).join(' | '),
        ...s.rows.map((row) => row.map((cell) => cell?.text ?? '–').join(' | ')),
      ];
    default:
      return [];
  }
}

function missing(s: StatementResult & { readonly missing: EntryResult['missing'] }): string | null {
  if (s.missing === null) return null;
  return s.missing.kind === 'error' ? ': no value' : `: not calculated, needs ${s.missing.because.join(', ')}`;
}

function remarks({ value, choice }: EntryResult): string {
  const found: string[] = value !== null && isShifted(value) ? ['evaluated by shifting'] : [];
  if (choice !== null) {
    found.push(`row ${choice.row + 1} of ${choice.rows}`, ...choice.ruledOut.map((part) => `${part.count} ruled out by ${part.condition}`));
    if (choice.ties > 1) found.push(`${choice.ties} equal`);
    if (choice.undecided !== null) found.push(`undecided, ${choice.undecided.nextText ?? 'no other'} holds`);
  }
  return found.length === 0 ? '' : `  (${found.join('; ')})`;
}

function isShifted(value: Shown): boolean {
  return value.kind === 'list' ? value.items.some(isShifted) : value.kind === 'quantity' && value.uncertainty?.shifted === true;
}

function requirementLines(r: RequirementResult): readonly string[] {
  const at = r.worstAt.map((w) => `${w.name} = ${w.value.text}`);
  const because = r.missing?.kind === 'not calculated' ? `, needs ${r.missing.because.join(', ')}` : '';
  const head = `${r.force} ${r.condition}: ${r.status}${because}${sidesLine(r.sides)}${at.length === 0 ? '' : `, worst at ${at.join(', ')}`}`;
  return [head, ...r.rows.map((row) => `  ${row.label}: ${row.status}${sidesLine(row.sides)}`)];
}

function sidesLine(sides: Sides | null): string {
  if (sides === null) return '';
  const margin = sides.margin === '' ? '' : `, in hand ${sides.margin}${sides.percent === null ? '' : ` (${sides.percent})`}`;
  return `, ${sidesText(sides)}${margin}${sides.uncertainty === null ? '' : `, U ${sides.uncertainty}`}`;
}

function curveLines(c: CurveResult): readonly string[] {
  if (c.missing !== null) return [`curve${missing(c)}`];
  const number = (x: number | null) => (x === null ? '–' : `${Number(x.toPrecision(6))}`);
  const unit = (u: CurveResult['x']['unit']) => (u === null ? '' : ` ${u.text}`);
  const points = (its: readonly { readonly y: number | null }[]) => `${number(its[0]!.y)} … ${number(its.at(-1)!.y)}${unit(c.y.unit)}`;
  return [
    `curve over ${c.variable} from ${number(c.x.from)} to ${number(c.x.to)}${unit(c.x.unit)}${c.x.log ? ', logarithmic' : ''}`,
    ...c.traces.map((t) => `  ${t.label}: ${t.points.length} points, ${points(t.points)}`),
    ...c.marks.map((m) => `  mark ${m.label} at ${m.text}: ${m.y.map((y) => number(y) + unit(c.y.unit)).join(', ')}`),
    ...c.limits.map((l) => `  limit ${l.label}: ${points(l.points)}`),
  ];
}

/** What a link of prose says, for tests of values in prose. */
export function valueTexts(evaluation: SheetEvaluation): readonly string[] {
  return evaluation.sheet.values.map((value: ProseValue) => value.text);
}
