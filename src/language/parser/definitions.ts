// Entries, computed columns and functions: `name: unit = expression`.
import type { Clauses, ComputedColumn, DateLiteral, Entry, FunctionDefinition, Identifier, Parameter, TakenBy } from '../ast.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import { clauses, once } from './clauses.ts';
import { type Cursor, isMark, peek, previous, report, skipInBracket, spanFrom, takeContextual, takeMark, textOf, whole } from './cursor.ts';
import { expression } from './expressions.ts';
import { noInputs, onlyInputs } from './inputs.ts';
import { columnHere, dateHere, nameHere } from './missing.ts';
import { missingColon, typeHere } from './types.ts';

export function entry(c: Cursor): Entry {
  const name = nameHere(c, 'A name');
  const type = typeHere(c);
  equals(c, name);
  const value = expression(c);
  onlyInputs(c, value);
  const { found, reading } = clausesAndReading(c, 'an entry');
  return { kind: 'entry', at: whole(c), name, type, value, reading, clauses: found, broken: c.failed };
}

/** Clauses among which `by DMM_7 on 2026-10-02` may stand. */
function clausesAndReading(c: Cursor, statement: string): { readonly found: Clauses; readonly reading: TakenBy | null } {
  let reading: TakenBy | null = null;
  const by = (): void => {
    const first = c.at++;
    const instrument = nameHere(c, 'The name of an instrument');
    const on: DateLiteral | null = takeContextual(c, 'on') ? dateHere(c) : null;
    once(c, '`by`', c.tokens[first]!.at, reading?.at ?? null);
    reading ??= { at: spanFrom(c, first), instrument, on };
  };
  const found = clauses(c, { statement, own: { by } });
  return { found, reading };
}

export function column(c: Cursor): ComputedColumn {
  const table = nameHere(c, 'The name of a table');
  c.at++;
  const name = columnHere(c);
  const type = typeHere(c);
  equals(c, name);
  const value = expression(c);
  noInputs(c);
  const { found, reading } = clausesAndReading(c, 'a computed column');
  return { kind: 'column', at: whole(c), table, column: name, type, value, reading, clauses: found, broken: c.failed };
}

export function functionDefinition(c: Cursor): FunctionDefinition {
  const name = nameHere(c, 'A name');
  c.at++;
  const parameters: Parameter[] = [];
  if (!isMark(c, ')')) {
    do parameters.push(parameter(c));
    while (takeMark(c, ','));
  }
  if (!isMark(c, ')')) {
    if (c.at < c.end) report(c, () => syntaxProblem('unexpected', peek(c)!.at, { found: textOf(c, peek(c)!.at) }));
    while (c.at < c.end && !isMark(c, ')')) {
      c.at++;
      skipInBracket(c);
    }
  }
  takeMark(c, ')');
  const result = typeHere(c);
  equals(c, name);
  const body = expression(c);
  noInputs(c);
  const found = clauses(c, { statement: 'a function', common: ['from', 'because', 'with', 'needs'] });
  return { kind: 'function', at: whole(c), name, parameters, result, body, clauses: found, broken: c.failed };
}

function parameter(c: Cursor): Parameter {
  const first = c.at;
  const name = nameHere(c, 'A parameter');
  const type = typeHere(c, true);
  if (type === null) missingColon(c, name.at, peek(c));
  return { at: spanFrom(c, first), name, type };
}

function equals(c: Cursor, name: Identifier): void {
  if (takeMark(c, '=')) return;
  report(c, () => syntaxProblem('missing-equals', (peek(c) ?? previous(c)).at, { name: name.name }));
  while (c.at < c.end && !isMark(c, '=')) c.at++;
  takeMark(c, '=');
}
