// The clauses of a statement as texts to compare and to show.
import type { Clauses, SourceClause, Statement } from '../../language/ast.ts';
import { print, printTyped } from '../../language/print.ts';
import { dateText } from '../../text/date.ts';
import type { Texts } from '../comparison.ts';
import { oneLine, textsOf } from './side.ts';

export interface ClauseChanges {
  readonly source: Texts | null;
  readonly because: Texts | null;
  readonly description: Texts | null;
}

/** What changed in source, reason and description; a statement may be missing on one side. */
export function clauseChanges(old: Statement | undefined, now: Statement | undefined): ClauseChanges {
  const of = (text: (statement: Statement) => string | null) => textsOf(old ? text(old) : null, now ? text(now) : null);
  return {
    source: of(originOf),
    because: of(({ clauses: { because } }) => because && oneLine(because.value)),
    description: of(({ clauses: { description } }) => description && oneLine(description.value)),
  };
}

/** Where a value comes from; of a reading, the instrument and the day, which are a measurement in themselves. */
function originOf(statement: Statement): string | null {
  const { source } = statement.clauses;
  const reading = statement.kind === 'entry' || statement.kind === 'column' ? statement.reading : null;
  if (reading === null) return source && sourceText(source);
  const by = `by ${reading.instrument.name}${reading.on === null ? '' : ` on ${dateText(reading.on.days)}`}`;
  return source === null ? `measurement ${by}` : `${sourceText(source)} ${by}`;
}

/** `plate "M-12"`. */
function sourceText({ kind, text }: Pick<SourceClause, 'kind' | 'text'>): string {
  return `${kind} "${oneLine(text.value)}"`;
}

/** ` with a = 2 * b, c = 3 V`; empty where there are no locals. */
export function localsText({ locals }: Clauses): string {
  return locals.length === 0
    ? ''
    : ` with ${locals.map(({ name, type, value }) => `${printTyped(name.name, type)} = ${print(value)}`).join(', ')}`;
}
