// The clauses of a statement as texts to compare and to show.
import type { Clauses, SourceClause, Statement } from '../../language/ast.ts';
import { print, printTyped } from '../../language/print.ts';
import type { Texts } from '../comparison.ts';
import { oneLine, textsOf } from './side.ts';

export interface ClauseChanges {
  readonly source: Texts | null;
  readonly because: Texts | null;
  readonly description: Texts | null;
}

/** What changed in source, reason and description; a statement may be missing on one side. */
export function clauseChanges(old: Statement | undefined, now: Statement | undefined): ClauseChanges {
  const of = (text: (clauses: Clauses) => string | null) => textsOf(old ? text(old.clauses) : null, now ? text(now.clauses) : null);
  return {
    source: of(({ source }) => source && sourceText(source)),
    because: of(({ because }) => because && oneLine(because.value)),
    description: of(({ description }) => description && oneLine(description.value)),
  };
}

/** `plate "M-12"`. */
export function sourceText({ kind, text }: Pick<SourceClause, 'kind' | 'text'>): string {
  return `${kind} "${oneLine(text.value)}"`;
}

/** ` with a = 2 * b, c = 3 V`; empty where there are no locals. */
export function localsText({ locals }: Clauses): string {
  return locals.length === 0
    ? ''
    : ` with ${locals.map(({ name, type, value }) => `${printTyped(name.name, type)} = ${print(value)}`).join(', ')}`;
}
