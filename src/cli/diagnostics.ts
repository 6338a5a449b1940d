// Prints a problem: where it is, the line with carets under the exact characters, what to write instead, and other places.

import { type LineMap, lineMap, positionAt } from '../text/lines.ts';
import type { Severity } from '../text/problem.ts';
import type { Span } from '../text/span.ts';
import { withoutEnd } from '../text/without-end.ts';
import { columns, padLeft, visible } from './columns.ts';
import type { Paint, Style } from './terminal.ts';

/** A file's text with its line starts, as diagnostics quote it. */
export interface Source {
  readonly path: string;
  readonly text: string;
  readonly lines: LineMap;
}

export interface Diagnostic {
  readonly source: Source;
  readonly at: Span;
  readonly severity: Severity;
  readonly code: string;
  readonly message: string;
  /** What would mend it, in the imperative. */
  readonly mends: readonly string[];
  readonly places: readonly { readonly source: Source; readonly at: Span; readonly label: string }[];
}

const COLOUR: Readonly<Record<Severity, Style>> = { error: 'red', warning: 'yellow', note: 'blue' };
const TAB = 4;

/** A file's text, ready to be quoted. */
export function source(path: string, text: string): Source {
  return { path, text, lines: lineMap(text) };
}

/** The diagnostics in the order of their places, errors first where several stand at one place; the same one only once. */
export function inOrder(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const rank: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 };
  const sorted = [...diagnostics].sort(
    (a, b) =>
      compare(a.source.path, b.source.path) ||
      a.at.start - b.at.start ||
      rank[a.severity] - rank[b.severity] ||
      a.at.end - b.at.end ||
      compare(a.code, b.code) ||
      compare(a.message, b.message),
  );
  const same = (a: Diagnostic, b: Diagnostic) =>
    a.source.path === b.source.path && a.at.start === b.at.start && a.at.end === b.at.end && a.code === b.code && a.message === b.message;
  return sorted.filter((d, i) => i === 0 || !same(d, sorted[i - 1]!));
}

/**
 * One diagnostic over several lines, without a line end behind the last. Lines and columns count from 1, columns in UTF-16 code units as
 * editors count them. `width` is the terminal's; of a longer line only the part around the place is quoted.
 */
export function printDiagnostic(diagnostic: Diagnostic, paint: Paint, width: number): string {
  const { source, at, severity, code, message, mends, places } = diagnostic;
  const colour = COLOUR[severity];
  const lines = [
    `${paint('bold', `${where(source, at)}:`)} ${paint(colour, severity)}: ${visible(message)} ${paint('dim', `(${code})`)}`,
    ...quote(source, at, paint, colour, width),
    ...mends.map((mend) => `  ${paint('green', 'mend:')} ${visible(mend)}`),
  ];
  for (const place of places) {
    lines.push(`  ${where(place.source, place.at)}: ${visible(place.label)}`, ...quote(place.source, place.at, paint, 'blue', width));
  }
  return lines.join('\n');
}

/** `path:line:column`. */
export function where(source: Source, at: Span): string {
  const { line, column } = positionAt(source.lines, at.start);
  return `${visible(source.path)}:${line + 1}:${column + 1}`;
}

function quote(source: Source, at: Span, paint: Paint, colour: Style, width: number): readonly string[] {
  const { line } = positionAt(source.lines, at.start);
  const lineStart = source.lines.starts[line]!;
  const text = lineText(source, line);
  const number = padLeft(String(line + 1), 4);
  const shown = cut(text, at.start - lineStart, Math.min(Math.max(at.end, at.start + 1) - lineStart, text.length), width - 9);
  const nextLine = source.lines.starts[line + 1];
  const goesOn = nextLine !== undefined && at.end > nextLine ? ' …' : '';
  return [
    `${paint('dim', `${number} |`)} ${shown.text}`,
    `${paint('dim', '     |')} ${' '.repeat(shown.before)}${paint(colour, '^'.repeat(Math.max(1, shown.marked)) + goesOn)}`,
  ];
}

/** A line without its line end. */
function lineText(source: Source, line: number): string {
  const { starts } = source.lines;
  return withoutEnd(source.text.slice(starts[line] ?? source.text.length, starts[line + 1] ?? source.text.length), '\r\n');
}

/** The line as shown, with how many columns stand before the marked part and how many it takes. */
function cut(line: string, start: number, end: number, width: number): { text: string; before: number; marked: number } {
  const room = Math.max(20, width);
  // Cut by characters before anything is measured: a line may be a megabyte long.
  let from = line.length <= room || start < room * 0.75 ? 0 : start - Math.floor(room / 2);
  if (isLowSurrogate(line.charCodeAt(from))) from--;
  const to = Math.min(line.length, from + room);
  const lead = from > 0 ? '…' : '';
  const before = lead + detab(line.slice(from, start), lead.length);
  const marked = detab(line.slice(start, Math.min(end, to)), columns(before));
  const rest = detab(line.slice(Math.min(end, to), to), columns(before) + columns(marked));
  return { text: before + marked + rest + (to < line.length ? '…' : ''), before: columns(before), marked: columns(marked) };
}

/** Tabs as the blanks that they stand for at this column; everything else as `visible` has it. */
function detab(text: string, column: number): string {
  let shown = '';
  for (const [i, piece] of text.split('\t').entries()) {
    if (i > 0) shown += ' '.repeat(TAB - ((column + columns(shown)) % TAB));
    shown += visible(piece);
  }
  return shown;
}

function isLowSurrogate(code: number): boolean {
  return code >= 0xdc00 && code < 0xe000;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
