// The other statements that changed: curves, tabulations, instruments, actions, uses, lines that could not be read.
import type { CurveResult, Shown, StatementResult, TabulationResult } from '../../run/result.ts';
import type { StatementChange } from '../comparison.ts';
import { sameMeaning, statementMeaning } from './meaning.ts';
import { type Likeness, pairByLikeness } from './pairing.ts';
import { changeOf, linesOf, type Pair, type Side, textsOf } from './side.ts';
import { largest, near, percentChange, sameValue } from './values.ts';

type Other = Exclude<StatementResult, { kind: 'entry' | 'column' | 'function' | 'requirement' }>;

export function compareStatements(pair: Pair): readonly StatementChange[] {
  return pairByLikeness(others(pair.old), others(pair.new), LIKENESSES, pair.renames).flatMap(([old, now]) => {
    const change = statementChange(pair, old, now);
    return change === null ? [] : [change];
  });
}

function statementChange(pair: Pair, old: Other | null, now: Other | null): StatementChange | null {
  const either = (now ?? old)!;
  const same = old !== null && now !== null && sameMeaning(old.statement, now.statement, pair.renames) && clausesOf(old) === clausesOf(now);
  const results = same ? resultsChange(old, now) : null;
  if (same && results === null) return null;
  const label = (now ? pair.new : pair.old).textOf(either);
  const written = same ? null : textsOf(old && pair.old.textOf(old), now && pair.new.textOf(now));
  return { change: changeOf(old, now), line: linesOf(pair, old, now), kind: either.kind, label, written, results };
}

/** What means the same; then what has the same name, path or text; then what is of the same kind, in its order. */
const LIKENESSES: readonly Likeness<Other>[] = [
  (of, renames) => `${nameOf(of)} ${statementMeaning(of.statement, renames)}`,
  (of) => `${of.kind} ${nameOf(of)}`,
  ({ kind }) => (kind === 'instrument' || kind === 'use' ? null : kind),
];

function nameOf(of: Other): string {
  switch (of.kind) {
    case 'instrument':
      return of.name;
    case 'use':
      return of.statement.path.value;
    case 'action':
      return of.statement.text.value;
    case 'curve':
    case 'tabulation':
    case 'unreadable':
      return '';
    default:
      return of satisfies never;
  }
}

function clausesOf({ statement: { clauses } }: Other): string {
  return JSON.stringify([clauses.source?.kind, clauses.source?.text.value, clauses.because?.value, clauses.description?.value]);
}

/** What came out otherwise; null where nothing did. */
function resultsChange(old: Other, now: Other): string | null {
  if (old.kind === 'tabulation' && now.kind === 'tabulation') {
    const [before, after] = [cellsOf(old), cellsOf(now)];
    const changed = after.filter((cell, i) => !sameValue(before[i] ?? null, cell)).length;
    return counted(changed, before.length, after.length, largest(before, after));
  }
  if (old.kind === 'curve' && now.kind === 'curve') {
    const [before, after] = [pointsOf(old), pointsOf(now)];
    const changes = after
      .map((y, i) => ({ y, was: before[i] ?? null }))
      .filter(({ y, was }) => (y === null || was === null ? y !== was : !near(y, was)));
    const parts = changes.map(({ y, was }) => (y === null || was === null || was === 0 ? 0 : (y - was) / Math.abs(was)));
    return counted(changes.length, before.length, after.length, parts.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0) || null);
  }
  return null;
}

function counted(changed: number, before: number, after: number, most: number | null): string | null {
  if (before !== after) return `${after} values instead of ${before}`;
  if (changed === 0) return null;
  return `${changed} of ${after} values changed${most === null ? '' : `, at most by ${percentChange(most)}`}`;
}

function cellsOf({ rows }: TabulationResult): readonly (Shown | null)[] {
  return rows.flat();
}

function pointsOf({ traces, limits }: CurveResult): readonly (number | null)[] {
  return [...traces, ...limits].flatMap(({ points }) => points.map(({ y }) => y));
}

function others({ statements }: Side): readonly Other[] {
  return statements.filter((of): of is Other => !['entry', 'column', 'function', 'requirement'].includes(of.kind));
}
