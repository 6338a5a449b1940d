// Clauses: what may stand behind a complete expression, in any order, on its line or below it (Y4).

import type { Span } from '../../text/span.ts';
import type { Clauses, Local, Need, SourceClause, TextNode } from '../ast.ts';
import { likelyWords, OTHER_SOURCES } from '../other-words.ts';
import { syntaxProblem } from '../problems/syntax.ts';
import { SOURCE_KINDS, type SourceKind, type Token } from '../token.ts';
import { type Cursor, isMark, peek, previous, report, spanFrom, takeMark, takeWord, textOf } from './cursor.ts';
import { expression } from './expressions.ts';
import { or } from './logic.ts';
import { nameHere, textHere } from './missing.ts';
import { typeHere } from './types.ts';
import { valueBehindValue } from './unexpected.ts';

/** A statement's own clauses by their first word; each stands on that word. */
export type OwnClauses = Readonly<Record<string, (c: Cursor) => void>>;

/** What the statement is called in messages, and which clauses it has besides its own. */
export interface ClauseRules {
  readonly statement: string;
  readonly own?: OwnClauses;
  readonly common?: readonly string[];
  /** Whether what stands before is a value, behind which an operator may be missing; true unless said. */
  readonly behindValue?: boolean;
}

const COMMON = ['from', 'because', 'with'];
/** Words that begin a clause of some statement, for saying that it is not one of this one. */
const ANYWHERE: ReadonlySet<string> = new Set([
  ...COMMON, 'needs', 'for', 'throughout', 'accepted', 'by', 'on', 'until', 'due', 'serial', 'calibrated', 'mark', 'limit', 'over', 'step', 'log',
]); // biome-ignore format: a word list

interface Found {
  source: SourceClause | null;
  because: TextNode | null;
  description: TextNode | null;
  locals: Local[];
  needs: Need[];
}

export const NO_CLAUSES: Clauses = { source: null, because: null, description: null, locals: [], needs: [] };

/** Reads clauses to the end of the statement; what is none is reported and passed over up to the next one. */
export function clauses(c: Cursor, rules: ClauseRules): Clauses {
  const found: Found = { source: null, because: null, description: null, locals: [], needs: [] };
  const common = rules.common ?? COMMON;
  while (c.at < c.end) {
    const token = c.tokens[c.at]!;
    c.clauseStarts.push(c.at);
    const word = wordOf(token);
    const own = word !== null && Object.hasOwn(rules.own ?? {}, word) ? rules.own![word]! : null;
    if (token.kind === 'text') description(c, found);
    else if (own !== null) own(c);
    else if (word !== null && common.includes(word)) commonClause(c, word, found);
    else skipToClause(c, rules, word);
  }
  return found;
}

/** The word by which a clause is told. */
export function wordOf(token: Token): string | null {
  if (token.kind === 'word') return token.word;
  return token.kind === 'name' ? token.name : null;
}

function commonClause(c: Cursor, word: string, found: Found): void {
  const first = c.at++;
  const at = c.tokens[first]!.at;
  switch (word) {
    case 'from': {
      const source = sourceBehindFrom(c, first);
      once(c, '`from`', at, found.source?.at ?? null);
      found.source ??= source;
      return;
    }
    case 'because': {
      const because = textHere(c, 'because "…"');
      once(c, '`because`', at, found.because?.at ?? null);
      found.because ??= because;
      return;
    }
    case 'with':
      do found.locals.push(local(c));
      while (takeMark(c, ','));
      return;
    case 'needs':
      do found.needs.push(need(c));
      while (takeMark(c, ','));
  }
}

/** Reports a clause that stands once and was there already. */
export function once(c: Cursor, clause: string, at: Span, before: Span | null): void {
  if (before === null) return;
  report(c, () => syntaxProblem('clause-twice', at, { clause }, [{ at: before, label: 'the first one' }]));
}

function description(c: Cursor, found: Found): void {
  const text = textHere(c, '"…"');
  once(c, 'A description', text.at, found.description?.at ?? null);
  found.description ??= text;
}

function sourceBehindFrom(c: Cursor, first: number): SourceClause | null {
  const token = peek(c);
  if (token?.kind !== 'name') {
    report(c, () => syntaxProblem('missing-source', (token ?? previous(c)).at, { kinds: SOURCE_KINDS }));
    if (token?.kind === 'text') c.at++;
    return null;
  }
  c.at++;
  const kind = SOURCE_KINDS.find((k) => k === token.name);
  if (kind === undefined) {
    const near = likelyWords(token.name, OTHER_SOURCES, SOURCE_KINDS);
    report(c, () => syntaxProblem('unknown-source', token.at, { word: token.name, near, kinds: SOURCE_KINDS }));
  }
  const text = textHere(c, `from ${token.name} "…"`);
  return { at: spanFrom(c, first), kind: kind ?? ('assumption' satisfies SourceKind), text };
}

function local(c: Cursor): Local {
  const first = c.at;
  const name = nameHere(c, 'The name of a local');
  const type = typeHere(c);
  if (!takeMark(c, '=')) report(c, () => syntaxProblem('missing-equals', (peek(c) ?? previous(c)).at, { name: name.name || 'name' }));
  const value = expression(c);
  return { at: spanFrom(c, first), name, type, value };
}

/** Inside `needs` a `because` belongs to the condition before it (N7). */
function need(c: Cursor): Need {
  const first = c.at;
  const condition = or(c);
  const because = takeWord(c, 'because') ? textHere(c, 'needs … because "…"') : null;
  return { at: spanFrom(c, first), condition, because };
}

function skipToClause(c: Cursor, rules: ClauseRules, word: string | null): void {
  const first = c.at;
  const token = c.tokens[first]!;
  const clause = word !== null && ANYWHERE.has(word);
  if (clause) report(c, () => syntaxProblem('clause-not-here', token.at, { clause: textOf(c, token.at), statement: rules.statement }));
  else if (rules.behindValue ?? true) valueBehindValue(c);
  else report(c, () => syntaxProblem('unexpected', token.at, { found: textOf(c, token.at) }));
  if (c.at === first) c.at++;
  for (let open = 0; c.at < c.end; c.at++) {
    const next = c.tokens[c.at]!;
    if (isMark(c, '(') || isMark(c, '[')) open++;
    else if (isMark(c, ')') || isMark(c, ']')) open--;
    else if (open <= 0 && beginsClause(next, rules)) return;
  }
}

function beginsClause(token: Token, rules: ClauseRules): boolean {
  if (token.kind === 'text') return token.first;
  const word = wordOf(token);
  return word !== null && ((rules.common ?? COMMON).includes(word) || Object.hasOwn(rules.own ?? {}, word));
}
