// Requirements: `shall` and `should`, for rows of a table, throughout ranges, with a concession.
import type { Concession, Range, Requirement } from '../ast.ts';
import { clauses, once } from './clauses.ts';
import { type Cursor, isWord, spanFrom, takeMark, takeWord, whole } from './cursor.ts';
import { expression } from './expressions.ts';
import { or } from './logic.ts';
import { contextualHere, dateHere, nameHere, textHere, wordHere } from './missing.ts';
import { range } from './ranges.ts';

const CONCESSION = 'accepted by "role, name" until 2027-03-31 because "…"';
const THROUGHOUT = 'throughout … from … to …';

export function requirement(c: Cursor): Requirement {
  const force = isWord(c, 'shall') ? 'shall' : 'should';
  c.at++;
  const condition = expression(c);
  const throughout: Range[] = [];
  let each: Requirement['forEach'] = null;
  let concession: Concession | null = null;
  const found = clauses(c, {
    statement: 'a requirement',
    own: {
      for: () => {
        const first = c.at;
        const read = forEach(c);
        once(c, '`for each`', c.tokens[first]!.at, each?.at ?? null);
        each ??= read;
      },
      throughout: () => {
        c.at++;
        do throughout.push(range(c, THROUGHOUT));
        while (takeMark(c, ','));
      },
      accepted: () => {
        const first = c.at;
        const read = accepted(c);
        once(c, '`accepted by`', c.tokens[first]!.at, concession?.at ?? null);
        concession ??= read;
      },
    },
  });
  return { kind: 'requirement', at: whole(c), force, condition, forEach: each, throughout, concession, clauses: found, broken: c.failed };
}

function forEach(c: Cursor): NonNullable<Requirement['forEach']> {
  const first = c.at++;
  contextualHere(c, 'each', 'for each … where …');
  const table = nameHere(c, 'The name of a table');
  const where = takeWord(c, 'where') ? or(c) : null;
  return { at: spanFrom(c, first), table, where };
}

function accepted(c: Cursor): Concession {
  const first = c.at++;
  contextualHere(c, 'by', CONCESSION);
  const by = textHere(c, CONCESSION);
  contextualHere(c, 'until', CONCESSION);
  const until = dateHere(c);
  wordHere(c, 'because', CONCESSION);
  const because = textHere(c, CONCESSION);
  return { at: spanFrom(c, first), by, until, because };
}
