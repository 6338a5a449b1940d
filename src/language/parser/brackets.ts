// Which brackets are open while the tokens of a statement go by (Y1), and the first that is wrong.
import type { Problem } from '../../text/problem.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import type { Token } from '../token.ts';

export interface Brackets {
  readonly open: Token[];
  round: number;
  square: number;
  fault: Problem | null;
}

export function noBrackets(): Brackets {
  return { open: [], round: 0, square: 0, fault: null };
}

/** Notes one token. A closing bracket closes the youngest one of its form; those opened behind that one are never closed. */
export function noteBracket(brackets: Brackets, token: Token): void {
  if (token.kind !== 'punctuation') return;
  if (token.mark === '(' || token.mark === '[') {
    brackets.open.push(token);
    count(brackets, token, 1);
  } else if (token.mark === ')' || token.mark === ']') {
    const form = token.mark === ')' ? '(' : '[';
    if ((form === '(' ? brackets.round : brackets.square) === 0) {
      brackets.fault ??= syntaxProblem('stray-bracket', token.at, { bracket: token.mark });
      return;
    }
    for (;;) {
      const top = brackets.open.pop()!;
      count(brackets, top, -1);
      if (markOf(top) === form) break;
      brackets.fault ??= unclosed(top);
    }
  }
}

/** The problem to report once the statement has ended: a bracket that is still open (the oldest), or an earlier fault. */
export function bracketFault(brackets: Brackets): Problem | null {
  const oldest = brackets.open[0];
  const open = oldest === undefined ? null : unclosed(oldest);
  if (open === null || brackets.fault === null) return open ?? brackets.fault;
  return open.at.start < brackets.fault.at.start ? open : brackets.fault;
}

function unclosed(token: Token): Problem {
  return syntaxProblem('unclosed-bracket', token.at, { bracket: markOf(token) });
}

function markOf(token: Token): string {
  return token.kind === 'punctuation' ? token.mark : '';
}

function count(brackets: Brackets, token: Token, by: 1 | -1): void {
  if (markOf(token) === '(') brackets.round += by;
  else brackets.square += by;
}
