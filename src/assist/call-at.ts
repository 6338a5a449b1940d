// The call that a cursor stands in, found from the tokens before it: the line may be unfinished.
import type { NameToken, Punctuation, Token } from '../language/token.ts';

/** `argument` counts from 0; `name` is its own where it is a named one; `given` are the names of the named ones before it. */
export interface CallAt {
  readonly callee: NameToken;
  readonly argument: number;
  readonly name: string | null;
  readonly given: readonly string[];
}

/** The innermost call whose bracket is open behind `tokens`, which are those of the statement that end before the cursor. */
export function callAt(tokens: readonly Token[]): CallAt | null {
  let depth = 0;
  let argument = 0;
  const given: string[] = [];
  let name: string | null = null;
  for (let i = tokens.length - 1; i > 0; i--) {
    const token = tokens[i]!;
    if (isMark(token, ')') || isMark(token, ']')) depth++;
    else if (isMark(token, '(') || isMark(token, '[')) {
      if (depth > 0) depth--;
      else {
        const callee = tokens[i - 1]!;
        const called = isMark(token, '(') && callee.kind === 'name' && callee.at.end === token.at.start;
        return called ? { callee, argument, name, given } : null;
      }
    } else if (depth === 0 && isMark(token, ',')) argument++;
    else if (depth === 0 && isMark(token, '=') && tokens[i - 1]!.kind === 'name') {
      const named = (tokens[i - 1] as NameToken).name;
      if (argument === 0) name = named;
      given.push(named);
    }
  }
  return null;
}

export function isMark(token: Token | undefined, mark: Punctuation): boolean {
  return token?.kind === 'punctuation' && token.mark === mark;
}
