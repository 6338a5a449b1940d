// What spacing must know of tokens and only the tree can tell: calls, signs, and the `=` in `(k=2)`.
import type { Bounds, Expression, Statement } from '../ast.ts';
import { expressionsOf, walk } from '../walk.ts';

/** Offsets of tokens that stand close to what follows or surrounds them. */
export interface Roles {
  /** Names directly before the bracket of their arguments or parameters. */
  readonly calls: ReadonlySet<number>;
  /** Minus signs that belong to one value. */
  readonly signs: ReadonlySet<number>;
  /** Opening brackets of `(k=2)`, with the offset behind the closing one. */
  readonly coverages: ReadonlyMap<number, number>;
}

export function rolesOf(statements: readonly Statement[]): Roles {
  const calls = new Set<number>();
  const signs = new Set<number>();
  const coverages = new Map<number, number>();
  const bounds = (found: Bounds | null): void => {
    if (found === null) return;
    if (found.kind === 'within') {
      for (const literal of [found.from, found.to]) if (literal.number.startsWith('-')) signs.add(literal.at.start);
    } else if (found.coverage !== null) {
      coverages.set(found.coverage.at.start, found.coverage.at.end);
    }
  };
  const note = (node: Expression): void => {
    if (node.kind === 'call') calls.add(node.callee.at.start);
    if (node.kind === 'negate' || (node.kind === 'quantity' && node.number.startsWith('-'))) signs.add(node.at.start);
    if (node.kind === 'quantity' || node.kind === 'readings') bounds(node.bounds);
  };
  for (const statement of statements) {
    if (statement.kind === 'function') calls.add(statement.name.at.start);
    if (statement.kind === 'instrument') bounds(statement.bounds);
    for (const expression of expressionsOf(statement)) walk(expression, note);
  }
  return { calls, signs, coverages };
}
