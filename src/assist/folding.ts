// What can be folded: statements and comments over several lines; recorded results, tables and front matter of the file.
import { lex } from '../language/lexer.ts';
import type { OpenSheet } from '../run/open-sheet.ts';
import { calcCells } from '../sheet/sheet.ts';
import { lineMap, positionAt } from '../text/lines.ts';
import { cover, type Span } from '../text/span.ts';
import { contentOf, type TextId } from './location.ts';

export interface Fold {
  readonly kind: 'statement' | 'comment' | 'results' | 'table' | 'front matter';
  readonly at: Span;
}

/** The folds of a block or of the file around the blocks; each is longer than a line. */
export function folds(open: OpenSheet, text: TextId): readonly Fold[] {
  const content = contentOf(open, text) ?? '';
  const all = text.kind === 'block' ? foldsOfBlock(open, text.number) : text.kind === 'sheet' ? foldsOfFile(open) : [];
  return all.filter(({ at }) => /[\r\n]/.test(content.slice(at.start, at.end))).sort((a, b) => a.at.start - b.at.start);
}

function foldsOfBlock(open: OpenSheet, number: number): readonly Fold[] {
  const cell = open.cells[number];
  const statements = (cell?.items ?? []).map(({ statement }): Fold => ({ kind: 'statement', at: statement.at }));
  return [...statements, ...commentRuns(cell?.code ?? '')];
}

/** Comments on lines of their own that follow each other. */
function commentRuns(code: string): readonly Fold[] {
  const map = lineMap(code);
  const runs: { at: Span; line: number }[] = [];
  for (const { kind, at } of lex(code).trivia) {
    const { line } = positionAt(map, at.start);
    if (kind !== 'comment' || /\S/.test(code.slice(map.starts[line], at.start))) continue;
    const last = runs.at(-1);
    if (last && last.line === line - 1) runs[runs.length - 1] = { at: cover(last.at, at), line };
    else runs.push({ at, line });
  }
  return runs.map(({ at }) => ({ kind: 'comment', at }));
}

function foldsOfFile(open: OpenSheet): readonly Fold[] {
  const { sheet } = open.loaded;
  const front = sheet.cells.filter((cell) => cell.kind === 'front matter').map(({ at }): Fold => ({ kind: 'front matter', at }));
  const results = calcCells(sheet).flatMap((cell): Fold[] => (cell.results ? [{ kind: 'results', at: cell.results.at }] : []));
  return [...front, ...results, ...sheet.tables.map(({ at }): Fold => ({ kind: 'table', at }))];
}
