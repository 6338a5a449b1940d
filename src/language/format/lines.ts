// The lines of a block, those of sound statements in their regular spacing and cut into what columns are made of.
import type { Statement } from '../ast.ts';
import type { Parsed } from '../parser.ts';
import type { Token } from '../token.ts';
import { GAP } from './columns.ts';
import { type Roles, rolesOf } from './roles.ts';
import { spaceBetween, tokenText } from './spacing.ts';

/** A line that is kept as it is has all its text in `head`; `clauses` and `comment` are empty where they do not move. */
export interface Line {
  readonly head: string;
  readonly clauses: string;
  readonly comment: string;
  readonly ending: string;
}

/**
 * The lines of `text`; only those of the statements in `sound` are changed, and blanks on empty lines dropped (but for those that keep
 * a CR and an LF apart).
 */
export function formatLines(text: string, parsed: Parsed, sound: readonly Statement[]): Line[] {
  const roles = rolesOf(sound);
  const clauseStarts = new Set(parsed.clauseStarts);
  const comments = parsed.trivia.filter((trivia) => trivia.kind === 'comment');
  const lines: Line[] = [];
  let [token, statement, comment] = [0, 0, 0];
  for (const { start, end, ending } of physicalLines(text)) {
    const first = token;
    while (token < parsed.tokens.length && parsed.tokens[token]!.at.start < end) token++;
    while (statement < sound.length && sound[statement]!.at.end <= start) statement++;
    while (comment < comments.length && comments[comment]!.at.start < start) comment++;
    const kept = text.slice(start, end);
    const tokens = parsed.tokens.slice(first, token);
    if (tokens.length === 0 || !(statement < sound.length && sound[statement]!.at.start < end)) {
      const fuses = lines.at(-1)?.ending === '\r' && ending === '\n';
      lines.push({ head: /\S/.test(kept) || fuses ? kept : '', clauses: '', comment: '', ending });
      continue;
    }
    const indent = text.slice(start, tokens[0]!.at.start);
    const split = tokens.findIndex((_, i) => clauseStarts.has(first + i));
    const cut = split > 0 ? split : tokens.length;
    const written = (from: number, to: number) =>
      writeTokens(text, tokens.slice(from, to), roles, (i) => clauseStarts.has(first + from + i));
    const remark = comments[comment];
    const hasComment = remark !== undefined && remark.at.start < end;
    lines.push({
      head: indent + written(0, cut),
      clauses: written(cut, tokens.length),
      comment: hasComment ? text.slice(remark.at.start, end) : '',
      ending,
    });
  }
  return lines;
}

function writeTokens(text: string, tokens: readonly Token[], roles: Roles, beginsClause: (index: number) => boolean): string {
  let written = '';
  let coverageEnd = 0;
  for (const [i, token] of tokens.entries()) {
    const before = tokens[i - 1];
    if (before !== undefined) {
      const coverage = token.at.start < coverageEnd;
      if (beginsClause(i)) written += ' '.repeat(GAP);
      else if (spaceBetween(before, token, roles, coverage)) written += ' ';
    }
    coverageEnd = roles.coverages.get(token.at.start) ?? coverageEnd;
    written += tokenText(text, token);
  }
  return written;
}

function* physicalLines(text: string): Generator<{ start: number; end: number; ending: string }> {
  const line = /[^\r\n]*(\r\n|\n|\r|$)/g;
  for (const match of text.matchAll(line)) {
    if (match[0] === '') return;
    yield { start: match.index, end: match.index + match[0].length - match[1]!.length, ending: match[1]! };
  }
}
