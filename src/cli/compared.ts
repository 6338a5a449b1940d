// Comparisons as lines for a person at a terminal.

import { type Cell, type Row, type Section, sectionsOf } from '../report/comparison/sections.ts';
import type { ComparedSheet, Comparisons } from '../review/comparisons.ts';
import { headline, sheetLine } from '../review/headline.ts';
import { columns, padRight, visible, wrap } from './columns.ts';
import type { Paint, Stream } from './terminal.ts';

/** The first column is no wider; a longer name pushes its own line. */
const WIDEST_NAME = 32;
const INDENT = '  ';

/** Prints what changed in each sheet, worst first; words that went stand in `[-…-]`, words that came in `{+…+}`. */
export function printComparisons({ old, new: now, sheets }: Comparisons, stream: Stream): void {
  stream.line(`${visible(old)} → ${visible(now)}`);
  const changed = sheets.filter(({ change }) => change !== 'same');
  for (const sheet of changed) printSheet(sheet, stream, sheets.length > 1);
  const same = sheets.length - changed.length;
  if (changed.length === 0) stream.line('no change in meaning');
  else if (same > 0) stream.line(`\n${same} more ${same === 1 ? 'sheet' : 'sheets'} without a change in meaning`);
}

function printSheet(sheet: ComparedSheet, stream: Stream, named: boolean): void {
  const { paint, line } = stream;
  if (named) line(`\n${paint('bold', visible(sheet.path))}`);
  if (sheet.oldPath !== null && sheet.comparison !== null) line(`the file was ${visible(sheet.oldPath)}`);
  line(visible(sheet.comparison === null ? sheetLine(sheet) : headline(sheet.comparison).join(' · ') || 'small changes'));
  if (sheet.comparison !== null) for (const section of sectionsOf(sheet.comparison)) printSection(section, stream);
}

function printSection({ title, heads, rows }: Section, stream: Stream): void {
  const { paint, line } = stream;
  line(`\n${paint('bold', title)}`);
  const names = rows.map(({ cells }) => columns(cellText(cells[0] ?? [], (_, text) => text)));
  const width = Math.max(0, ...names.filter((name) => name <= WIDEST_NAME));
  for (const row of rows) for (const one of rowLines(row, heads, width, stream)) line(INDENT + one);
}

/** The first cell, then the others with an arrow between before and after, as far as they fit on lines. */
function rowLines({ cells, line }: Row, heads: readonly string[], width: number, { paint, width: room }: Stream): readonly string[] {
  const written = heads.map((_, i) => cellText(cells[i] ?? [], paint));
  const before = heads.indexOf('before');
  const parts = written.flatMap((text, i): readonly string[] => {
    if (i === 0 || (before !== -1 && i === before + 1)) return [];
    return [i === before ? change(text, written[i + 1] ?? '') : text];
  });
  const place = paint('dim', line.new === null ? `was line ${line.old}` : `line ${line.new}`);
  const rest = [...parts, place].filter((text) => text !== '').join('   ');
  const name = padRight(written[0]!, width + written[0]!.length - columns(cellText(cells[0] ?? [], (_, text) => text)));
  const indent = ' '.repeat(width + 2);
  const [first = '', ...others] = wrap(rest, Math.max(40, room - width - INDENT.length - 2));
  return [`${name}  ${first}`.trimEnd(), ...others.map((text) => (indent + text).trimEnd())];
}

function change(before: string, after: string): string {
  if (before === '' || after === '') return before || after;
  return `${before} → ${after}`;
}

function cellText(cell: Cell, paint: Paint): string {
  return cell.map(({ kind, text }) => pieceText(kind, visible(text), paint)).join('').trim(); // biome-ignore format: one step
}

function pieceText(kind: Cell[number]['kind'], text: string, paint: Paint): string {
  switch (kind) {
    case 'plain':
    case 'code':
      return text;
    case 'old':
    case 'old code':
      return paint('red', `[-${text}-]`);
    case 'new':
    case 'new code':
      return paint('green', `{+${text}+}`);
    case 'strong':
      return paint('red', text);
    default:
      return kind satisfies never;
  }
}
