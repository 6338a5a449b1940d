// What stands behind a colon: a unit, `1`, a word, or one of them in brackets.
import { cover, type Span } from '../../text/span.ts';
import type { TypeMark } from '../ast.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import type { Token } from '../token.ts';
import { type Cursor, isMark, peek, previous, report, spanFrom, takeMark, textOf } from './cursor.ts';
import { isUnit, nearUnits, withoutSpace } from './unexpected.ts';

const WORDS: ReadonlySet<string> = new Set(['text', 'date', 'any']);

/** The type behind a colon, if a colon stands here. `any` is for parameters. */
export function typeHere(c: Cursor, any = false): TypeMark | null {
  if (!takeMark(c, ':')) return null;
  const first = c.at;
  const made = takeMark(c, '[') ? listOf(c, first, any) : single(c, any);
  return made;
}

function listOf(c: Cursor, first: number, any: boolean): TypeMark | null {
  const of = single(c, any);
  takeMark(c, ']');
  return of === null ? null : { kind: 'list', at: spanFrom(c, first), of };
}

function single(c: Cursor, any: boolean): TypeMark | null {
  const token = peek(c);
  if (token?.kind === 'unit') {
    c.at++;
    spaceInUnit(c);
    return { kind: 'unit', at: token.at, unit: token.unit };
  }
  if (token?.kind === 'name' && WORDS.has(token.name)) {
    c.at++;
    if (token.name === 'any' && !any) report(c, () => syntaxProblem('any-not-here', token.at, {}));
    return { kind: token.name as 'text' | 'date' | 'any', at: token.at };
  }
  if (token?.kind === 'name') {
    const unit = textOf(c, token.at);
    report(c, () => syntaxProblem('unknown-unit', token.at, { unit, near: nearUnits(unit), product: null, unitAt: token.at }));
    while (c.at < c.end && !isMark(c, '=') && !isMark(c, ',') && !isMark(c, ')') && !isMark(c, ']')) c.at++;
    return null;
  }
  report(c, () => syntaxProblem('missing-unit', (token ?? previous(c)).at, { any }));
  return null;
}

/** Whether a unit stands directly behind a name, `I_n A`; that the colon between them is missing is reported. */
export function missingColon(c: Cursor, name: Span, behind: Token | undefined): boolean {
  const unit = behind?.kind === 'name' ? textOf(c, behind.at) : '';
  if (!isUnit(unit)) return false;
  report(c, () => syntaxProblem('missing-colon', cover(name, behind!.at), { name: textOf(c, name), unit }));
  return true;
}

/** `: N m`. */
function spaceInUnit(c: Cursor): void {
  const token = peek(c);
  if (token?.kind !== 'name') return;
  const [unit, word] = [textOf(c, previous(c).at), textOf(c, token.at)];
  const at = cover(previous(c).at, token.at);
  if (isUnit(word)) report(c, () => syntaxProblem('space-in-unit', at, { joined: withoutSpace(unit, unit, word) }));
  else report(c, () => syntaxProblem('unexpected', token.at, { found: word }));
  c.at++;
}
