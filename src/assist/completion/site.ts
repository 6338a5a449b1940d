// Where in the notation a cursor stands: what may be written there, and which names are seen from there.
import type * as ast from '../../language/ast.ts';
import { lex } from '../../language/lexer.ts';
import { parse } from '../../language/parser.ts';
import type { Item, TableModel } from '../../language/program.ts';
import type { Token } from '../../language/token.ts';
import { itemOf } from '../../run/module.ts';
import type { OpenSheet } from '../../run/open-sheet.ts';
import { type Span, span, touches } from '../../text/span.ts';
import { callAt, isMark } from '../call-at.ts';
import type { Names, Scope } from '../scope.ts';
import { findWord } from './found-word.ts';
import { wordAt } from './word-at.ts';

/**
 * What may stand at the cursor. `behind`: a value is complete, an operator or a clause may follow. `type`: behind a colon. `fresh`: a new
 * name, of which nothing is known.
 */
export type Place =
  | { readonly kind: 'statement' | 'behind' | 'unit' | 'type' | 'source' | 'instrument' | 'range' | 'table' | 'fresh' }
  | { readonly kind: 'value'; readonly scope: Scope }
  | { readonly kind: 'column'; readonly table: TableModel | null; readonly of: ast.Expression | null; readonly scope: Scope }
  | { readonly kind: 'path' }
  | { readonly kind: 'used'; readonly path: string };

export interface Site {
  readonly n: Names;
  readonly places: readonly Place[];
  /** The word that is being written, up to the cursor, and the whole of it. */
  readonly insertAt: Span;
  readonly replaceAt: Span;
  readonly code: string;
  /** The tokens of the statement before the word. */
  readonly before: readonly Token[];
  /** The statement as it is with a word at the cursor; null where a new one begins. */
  readonly item: Item | null;
}

/** Stands for the word at the cursor while the statement is read: no unit, no word of the notation, and nobody's name. */
export const PLACEHOLDER = 'word_at_the_cursor_';

/** Null where nothing can be offered: in comments, texts and numbers. */
export function siteAt(open: OpenSheet, number: number, offset: number): Site | null {
  const code = open.cells[number]?.code ?? '';
  const { tokens, trivia } = lex(code);
  const n: Names = { open, module: open.loaded.module };
  if (trivia.some(({ kind, at }) => kind === 'comment' && at.start < offset && offset <= at.end)) return null;
  const text = tokens.findIndex(({ kind, at }) => kind === 'text' && at.start < offset && touches(at, offset));
  if (text >= 0) return pathSite(n, code, tokens, text, offset);
  const word = wordAt(code, tokens, offset);
  if (word === null) return null;
  const base = { n, code, ...word };
  if (beginsStatement(code, tokens, word.replaceAt.start)) return { ...base, places: [{ kind: 'statement' }], before: [], item: null };
  const { statement, before } = statementWithWord(code, word.replaceAt);
  const item = statement && itemOf(n.module, number, statement);
  const found = item && findWord(n, item, PLACEHOLDER);
  return { ...base, places: placesOf(code, before, word.replaceAt, found), before, item };
}

/** Inside the text of a `use`. */
function pathSite(n: Names, code: string, tokens: readonly Token[], index: number, offset: number): Site | null {
  const { at } = tokens[index]!;
  const use = tokens[index - 1];
  const closed = code.charAt(at.end - 1) === '"' && at.end - at.start > 1;
  if (use?.kind !== 'word' || use.word !== 'use' || (closed && offset === at.end)) return null;
  const start = at.start + 1;
  const replaceAt = span(start, closed ? at.end - 1 : at.end);
  return { n, code, places: [{ kind: 'path' }], insertAt: span(start, offset), replaceAt, before: [use], item: null };
}

/** The first word of a line at the margin. */
function beginsStatement(code: string, tokens: readonly Token[], start: number): boolean {
  const lineStart = Math.max(code.lastIndexOf('\n', start - 1), code.lastIndexOf('\r', start - 1)) + 1;
  if (/\S/.test(code.slice(lineStart, start))) return false;
  return start === lineStart || !tokens.some(({ at }) => at.end <= lineStart);
}

function statementWithWord(code: string, word: Span): { statement: ast.Statement | null; before: readonly Token[] } {
  const { statements, tokens } = parse(code.slice(0, word.start) + PLACEHOLDER + code.slice(word.end));
  const statement = statements.findLast(({ at }) => at.start <= word.start) ?? null;
  const start = statement?.at.start ?? 0;
  return { statement, before: tokens.filter(({ at }) => start <= at.start && at.end <= word.start) };
}

function placesOf(code: string, before: readonly Token[], word: Span, found: Place | null): readonly Place[] {
  const last = before.at(-1);
  if (last === undefined) return [{ kind: 'statement' }];
  if (isMark(last, ':') || (isMark(last, '[') && isMark(before.at(-2), ':'))) return [{ kind: 'type' }];
  const sameLine = !/[\r\n]/.test(code.slice(last.at.end, word.start));
  if (last.kind === 'number' && last.text !== 'pi' && sameLine) {
    return word.start === last.at.end ? [{ kind: 'unit' }] : [{ kind: 'unit' }, { kind: 'behind' }];
  }
  const unitGoesOn = last.kind === 'operator' && before.at(-2)?.kind === 'quantity' && before.at(-2)?.at.end === last.at.start;
  if (found?.kind === 'value' && unitGoesOn && last.at.end === word.start) return [{ kind: 'unit' }, found];
  if (found) return [isMisplaced(found, last) ? { kind: 'behind' } : found];
  if (last.kind === 'word' && last.word === 'from') return [{ kind: 'source' }];
  // The head of a function or of a computed column that is not finished.
  if (isMark(last, '.') || callAt(before)?.callee === before[0]) return [{ kind: 'fresh' }];
  return completes(last) ? [{ kind: 'behind' }] : [{ kind: 'value', scope: null }];
}

/** Names that stand before another one, since they are words there. */
const LEADING: readonly string[] = ['each', 'instrument', 'mark', 'limit', 'step'];

/** Where a word such as `of`, `over` or `from` is missing, the parser takes the next name for what would follow it. */
function isMisplaced({ kind }: Place, last: Token): boolean {
  if (kind !== 'table' && kind !== 'fresh' && kind !== 'value') return false;
  if (last.kind === 'word' && last.word === 'for') return true;
  return completes(last) && !(last.kind === 'name' && LEADING.includes(last.name));
}

/** Whether a token may be the last of a value, or of a clause. */
function completes(token: Token): boolean {
  switch (token.kind) {
    case 'word':
      return ['yes', 'no', 'row'].includes(token.word);
    case 'punctuation':
      return token.mark === ')' || token.mark === ']';
    case 'operator':
    case 'plusminus':
      return false;
    default:
      return true;
  }
}
