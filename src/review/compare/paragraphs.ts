// The prose of a sheet as paragraphs to compare: Markdown without tables, and the comments of calc blocks.
import { lex } from '../../language/lexer.ts';
import { applyEdits } from '../../sheet/edits.ts';
import { firstHeading } from '../../sheet/heading.ts';
import type { ProseValue } from '../../sheet/prose-values.ts';
import type { CalcCell, ProseCell } from '../../sheet/sheet.ts';
import type { Edit } from '../../text/problem.ts';
import type { Span } from '../../text/span.ts';
import { oneLine, type Pair, type Side } from './side.ts';

export interface Paragraph {
  /** On one line. */
  readonly text: string;
  /** In the file, from 1. */
  readonly line: number;
  /** The heading that it stands under. */
  readonly heading: string | null;
}

// It begins where a line does: looked for behind each blank of a long line, it would take the square of the blanks.
const PARAGRAPH = /(?<![^\S\r\n])(?:[^\S\r\n]*[^\s][^\r\n]*(?:\r\n?|\n|$))+/g;

/** The paragraphs of one side, in the order of the text. A value in prose reads as the new sheet has it: results are compared by themselves. */
export function paragraphs(pair: Pair, which: 'old' | 'new'): readonly Paragraph[] {
  const side = pair[which];
  const { sheet } = side.evaluation;
  const cuts = takenInTurn([...sheet.tables, ...sheet.csvTables]);
  const textOf = valueTexts(pair, which);
  const edits = takenInTurn(
    sheet.values.flatMap((value): readonly Edit[] => {
      const text = textOf(value);
      return text === null ? [] : [{ at: value.at, text }];
    }),
  );
  const found: Paragraph[] = [];
  let heading: string | null = null;
  for (const cell of sheet.cells) {
    const pieces = cell.kind === 'prose' ? proseOf(cell) : cell.kind === 'calc' ? commentsOf(cell) : [];
    for (const at of pieces) {
      const text = oneLine(edited(side, at, cuts(at), edits(at)));
      if (text === '') continue;
      heading = cell.kind === 'prose' ? (firstHeading(sheet.text.slice(at.start, at.end)) ?? heading) : heading;
      found.push({ text, line: side.lineAt(at.start), heading });
    }
  }
  return found;
}

function proseOf({ raw, at }: ProseCell): readonly Span[] {
  return [...raw.matchAll(PARAGRAPH)].map(({ index, 0: text }) => ({ start: at.start + index, end: at.start + index + text.length }));
}

function commentsOf({ text, code }: CalcCell): readonly Span[] {
  const comments = lex(text).trivia.filter(({ kind }) => kind === 'comment');
  return comments.map(({ at }) => ({ start: code.start + at.start, end: code.start + at.end }));
}

/** Those of `all` that reach into a place; asked for one place behind the other, none of which overlap, as none of `all` do. */
function takenInTurn<T extends { readonly at: Span }>(all: readonly T[]): (at: Span) => readonly T[] {
  const sorted = [...all].sort((a, b) => a.at.start - b.at.start);
  let first = 0;
  return ({ start, end }) => {
    while (first < sorted.length && sorted[first]!.at.end <= start) first++;
    let last = first;
    while (last < sorted.length && sorted[last]!.at.start < end) last++;
    return sorted.slice(first, last);
  };
}

/** The text at a place, tables left out and values replaced. */
function edited({ evaluation }: Side, at: Span, cuts: readonly { readonly at: Span }[], edits: readonly Edit[]): string {
  const inside = (place: Span) => ({ start: Math.max(0, place.start - at.start), end: Math.min(at.end, place.end) - at.start });
  const values = edits.filter(
    (edit) =>
      at.start <= edit.at.start && edit.at.end <= at.end && !cuts.some((cut) => cut.at.start <= edit.at.start && edit.at.end <= cut.at.end),
  );
  const changes = [
    ...cuts.map((cut) => ({ at: inside(cut.at), text: '' })),
    ...values.map((edit) => ({ at: inside(edit.at), text: edit.text })),
  ];
  return applyEdits(evaluation.sheet.text.slice(at.start, at.end), changes);
}

/** `[34.40 A](#I_n)` with the text and the name that the new sheet has; null where it has no such value. */
function valueTexts({ new: now, renames }: Pair, which: 'old' | 'new'): (value: ProseValue) => string | null {
  const { result, sheet } = now.evaluation;
  const key = (name: string, column: string | null) => (column === null ? name : `${name}.${column}`);
  // The first of several counts.
  const written = new Map(sheet.values.map(({ name, column, text }) => [key(name, column), text] as const).reverse());
  return ({ name, column, withUncertainty }) => {
    const its = which === 'old' ? (renames.get(name) ?? name) : name;
    const shown = column === null ? result.entries.get(its)?.value : null;
    const text = shown ? (withUncertainty ? shown.text : shown.short) : written.get(key(its, column));
    return text === undefined ? null : `[${text}](#${key(its, column)})`;
  };
}
