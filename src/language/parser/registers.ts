// Instruments, actions and uses: what a sheet keeps beside its calculation.
import type { Action, DateLiteral, Identifier, Instrument, TextNode, Use } from '../ast.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import { clauses, once } from './clauses.ts';
import { type Cursor, peek, previous, report, takeMark, takeWord, whole } from './cursor.ts';
import { boundsHere } from './literals.ts';
import { dateHere, nameHere, textHere } from './missing.ts';

export function instrument(c: Cursor): Instrument {
  c.at++;
  const name = nameHere(c, 'The name of an instrument');
  const bounds = boundsHere(c);
  if (bounds === null) report(c, () => syntaxProblem('missing-limits', (peek(c) ?? previous(c)).at, { name: name.name }));
  let serial: TextNode | null = null;
  let calibrated: DateLiteral | null = null;
  let due: DateLiteral | null = null;
  const found = clauses(c, {
    statement: 'an instrument',
    behindValue: false,
    own: {
      serial: () => {
        serial = single(c, serial, () => textHere(c, 'serial "…"'));
      },
      calibrated: () => {
        calibrated = single(c, calibrated, () => dateHere(c));
      },
      due: () => {
        due = single(c, due, () => dateHere(c));
      },
    },
  });
  return { kind: 'instrument', at: whole(c), name, bounds, serial, calibrated, due, clauses: found, broken: c.failed };
}

export function action(c: Cursor): Action {
  c.at++;
  const text = textHere(c, 'action "…"');
  let by: TextNode | null = null;
  let due: DateLiteral | null = null;
  const found = clauses(c, {
    statement: 'an action',
    behindValue: false,
    common: [],
    own: {
      by: () => {
        by = single(c, by, () => textHere(c, 'by "…"'));
      },
      due: () => {
        due = single(c, due, () => dateHere(c));
      },
    },
  });
  return { kind: 'action', at: whole(c), text, by, due, clauses: found, broken: c.failed };
}

/** Reads what stands behind a word that stands once; the first one counts. */
function single<T extends { readonly at: TextNode['at'] }>(c: Cursor, before: T | null, read: () => T): T {
  const word = c.tokens[c.at++]!;
  const made = read();
  once(c, `\`${c.text.slice(word.at.start, word.at.end)}\``, word.at, before?.at ?? null);
  return before ?? made;
}

export function use(c: Cursor): Use {
  c.at++;
  const path = textHere(c, 'use "sheet.ampwright.md" for …');
  let names: Identifier[] | null = null;
  if (takeWord(c, 'for')) {
    names = [];
    do names.push(nameHere(c, 'A name'));
    while (takeMark(c, ','));
  }
  const found = clauses(c, { statement: '`use`', common: [], behindValue: false });
  return { kind: 'use', at: whole(c), path, names, clauses: found, broken: c.failed };
}
