// What is reported where something that must stand is missing, and the hole that stands for it.
import type { DateLiteral, Hole, Identifier, TextNode } from '../ast.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import type { ReservedWord } from '../token.ts';
import { type Cursor, gap, hole, peek, previous, report, takeContextual, takeWord, textOf } from './cursor.ts';

/** A hole for a value: reported at the token that can't begin one, or at the one behind which the statement ends. */
export function missingValue(c: Cursor): Hole {
  report(c, () => {
    const here = peek(c);
    const behind = c.at > c.start ? textOf(c, previous(c).at) : null;
    const at = here?.at ?? previous(c).at;
    return syntaxProblem('missing-value', at, { behind, before: here === undefined ? null : textOf(c, here.at) });
  });
  return hole(c);
}

/** A name that is to be defined or referred to: reserved words can't be one, and are taken as if they were. */
export function nameHere(c: Cursor, what: string): Identifier {
  const token = peek(c);
  if (token?.kind === 'name') {
    c.at++;
    return { at: token.at, name: token.name };
  }
  if (token?.kind === 'word') {
    report(c, () => syntaxProblem('reserved-name', token.at, { word: token.word }));
    c.at++;
    return { at: token.at, name: token.word };
  }
  if (token?.kind === 'number' && token.text === 'pi') {
    report(c, () => syntaxProblem('fixed-name', token.at, { name: 'pi' }));
    c.at++;
    return { at: token.at, name: 'pi' };
  }
  report(c, () => syntaxProblem('missing-name', (token ?? previous(c)).at, { what, behind: textOf(c, previous(c).at) }));
  return { at: gap(c), name: '' };
}

/** A column: behind a dot and behind `least`, `greatest`, `the` any word is one (K1). */
export function columnHere(c: Cursor): Identifier {
  const token = peek(c);
  if (token?.kind === 'name' || token?.kind === 'word') {
    c.at++;
    return { at: token.at, name: token.kind === 'name' ? token.name : token.word };
  }
  return nameHere(c, 'A column');
}

export function textHere(c: Cursor, form: string): TextNode {
  const token = peek(c);
  if (token?.kind === 'text') {
    c.at++;
    return { at: token.at, value: token.value };
  }
  report(c, () => syntaxProblem('missing-text', (token ?? previous(c)).at, { behind: textOf(c, previous(c).at), form }));
  return { at: gap(c), value: '' };
}

export function dateHere(c: Cursor): DateLiteral {
  const token = peek(c);
  if (token?.kind === 'date') {
    c.at++;
    return { kind: 'date', at: token.at, days: token.days ?? 0 };
  }
  report(c, () => syntaxProblem('missing-date', (token ?? previous(c)).at, { behind: textOf(c, previous(c).at) }));
  return { kind: 'date', at: gap(c), days: 0 };
}

/** A reserved word that the form asks for. */
export function wordHere(c: Cursor, word: ReservedWord, form: string): boolean {
  if (takeWord(c, word)) return true;
  report(c, () => syntaxProblem('missing-word', (peek(c) ?? previous(c)).at, { word, form }));
  return false;
}

/** A word that the form asks for and that is a name elsewhere (K2). */
export function contextualHere(c: Cursor, word: string, form: string): void {
  if (!takeContextual(c, word)) report(c, () => syntaxProblem('missing-word', (peek(c) ?? previous(c)).at, { word, form }));
}
