// Which statement begins here, told by its first words (Y2, K2).
import type { Statement } from '../ast.ts';
import { type Cursor, definesAt, isMark, peek } from './cursor.ts';
import { curve, tabulation } from './curves.ts';
import { column, entry, functionDefinition } from './definitions.ts';
import { noInputs } from './inputs.ts';
import { behindBracket } from './layout.ts';
import { action, instrument, use } from './registers.ts';
import { requirement } from './requirements.ts';
import { unreadable } from './unreadable.ts';

export function statement(c: Cursor): Statement {
  const made = read(c);
  if (c.uncertain.length === 0) return made;
  noInputs(c);
  return { ...made, broken: c.failed };
}

function read(c: Cursor): Statement {
  const token = c.tokens[c.start]!;
  if (defines(c, 1)) return entry(c);
  if (token.kind === 'word') return worded(c, token.word) ?? unreadable(c);
  if (token.kind !== 'name') return unreadable(c);
  if (token.name === 'instrument' && peek(c, 1)?.kind === 'name') return instrument(c);
  if (token.name === 'action' && peek(c, 1)?.kind === 'text') return action(c);
  if (isMark(c, '.', 1) && peek(c, 2)?.kind === 'name' && defines(c, 3)) return column(c);
  if (isMark(c, '(', 1) && definesFunction(c)) return functionDefinition(c);
  return unreadable(c);
}

function worded(c: Cursor, word: string): Statement | null {
  switch (word) {
    case 'shall':
    case 'should':
      return requirement(c);
    case 'curve':
      return curve(c);
    case 'tabulate':
      return tabulation(c);
    case 'use':
      return use(c);
    default:
      return null;
  }
}

function defines(c: Cursor, ahead: number): boolean {
  const first = peek(c);
  const named = first?.kind === 'name' || first?.kind === 'word' || (first?.kind === 'number' && first.text === 'pi');
  return named && definesAt(c, ahead);
}

/** `NAME (…) =`, or a head whose bracket is not closed and whose first parameter has a unit. */
function definesFunction(c: Cursor): boolean {
  const behind = behindBracket(c.tokens, c.start + 1, false, c.end) - c.start;
  if (defines(c, behind)) return true;
  return c.start + behind >= c.end && peek(c, 2)?.kind === 'name' && isMark(c, ':', 3);
}
