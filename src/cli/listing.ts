// The results of a sheet as aligned lines for a terminal, made of the same view model as the page and the editor's ledger.

import { summaryLine } from '../report/summary.ts';
import { firstHeading } from '../sheet/heading.ts';
import type { Sheet } from '../sheet/sheet.ts';
import type { CellView, EntryRow, RequirementRow, RowView, SheetView, SidesView, StatusView, ValueView } from '../view/model.ts';
import { columns, padRight, visible, wrap } from './columns.ts';
import type { Stream, Style } from './terminal.ts';

const STATUS_STYLE: Readonly<Record<StatusView, Style>> = { holds: 'green', fails: 'red', undecided: 'yellow', 'not calculated': 'dim' };
/** Columns of values and notes start here at the latest; a longer name or value pushes its own line. */
const WIDEST_NAME = 24;
const WIDEST_VALUE = 36;
const INDENT = '  ';

/** Prints the title, then every block under its heading: entries in columns, requirements with both sides, the rest in a line each. */
export function printListing(sheet: Sheet, view: SheetView, stream: Stream): void {
  const { title, number, revision, status } = sheet.frontMatter;
  const head = [number, revision === null ? null : `revision ${revision}`, status].filter((part) => part !== null);
  if (title !== null) stream.line(stream.paint('bold', visible(title)));
  if (head.length > 0) stream.line(visible(head.join(', ')));
  const headings = headingsOf(sheet);
  let above: string | null = title;
  let first = title === null && head.length === 0;
  for (const cell of view.cells) {
    const lines = cell.rows.flatMap((row) => rowLines(row, widths(cell), stream));
    if (lines.length === 0) continue;
    if (!first) stream.line();
    first = false;
    const heading = headings.get(cell.cell) ?? null;
    if (heading !== null && heading !== above) stream.line(stream.paint('bold', visible(heading)));
    above = heading;
    for (const line of lines) stream.line(INDENT + line);
  }
  stream.line();
  stream.line(summaryLine(view));
}

interface Widths {
  readonly name: number;
  readonly value: number;
}

/** The columns of a block are as wide as its entries need. */
function widths(cell: CellView): Widths {
  const widest = (texts: readonly string[], most: number) => Math.max(0, ...texts.map(columns).filter((width) => width <= most));
  const entries = cell.rows.filter((row) => row.kind === 'entry');
  return {
    name: widest(
      entries.map((e) => visible(e.name)),
      WIDEST_NAME,
    ),
    value: widest(
      entries.map((e) => result(e)),
      WIDEST_VALUE,
    ),
  };
}

function rowLines(row: RowView, widths: Widths, stream: Stream): readonly string[] {
  switch (row.kind) {
    case 'entry':
      return entryLines(row, widths, stream);
    case 'requirement':
      return requirementLines(row, stream);
    case 'column':
      return [`${row.table}.${row.column}: ${row.missing ?? visible(row.values.map((v) => (v ? whole(v) : '–')).join(', '))}`];
    case 'tabulation':
      return [
        row.missing ?? row.heads.map((h) => h.title).join(', '),
        ...row.cells.map((cells) => cells.map((c) => c ?? '–').join('  ')),
      ].map(visible);
    case 'action':
      return [visible(['action:', row.text, row.by && `by ${row.by}`, row.due && `due ${row.due}`].filter(Boolean).join(' '))];
    case 'unreadable':
      return row.name === null ? [] : [`${visible(row.name)}  ${stream.paint('red', 'not calculated')}: ${whyNot(row)}`];
    case 'curve':
    case 'function':
    case 'instrument':
    case 'use':
      return [];
    default:
      return row satisfies never;
  }
}

function entryLines(row: EntryRow, widths: Widths, stream: Stream): readonly string[] {
  const { paint } = stream;
  const name = padRight(visible(row.name), widths.name);
  if (row.value === null) return [`${name}  ${paint('red', 'not calculated')}: ${whyNot(row)}`];
  const value = padRight(result(row), widths.value);
  const said = notes(row);
  if (said === '') return [`${name}  ${value}`.trimEnd()];
  const indent = ' '.repeat(columns(name) + columns(value) + 4);
  const lines = wrap(said, Math.max(30, stream.width - indent.length - INDENT.length));
  const [first, ...rest] = lines.map((line) => paint('dim', line));
  return [`${name}  ${value}  ${first}`, ...rest.map((line) => indent + line)];
}

/** Its own first error, else what it needs and has no value. */
function whyNot(row: RowView): string {
  return visible(row.problems.find((problem) => problem.severity === 'error')?.message ?? row.missing ?? 'it has no value');
}

/** What stands behind a value: its description, its source, remarks. */
function notes(row: EntryRow): string {
  const source = row.source && `${row.source.kind} "${row.source.text}"`;
  const because = row.because === null ? null : `because "${row.because}"`;
  const parts = [row.description, source, because, row.reading, row.value?.remark, row.choice && choice(row.choice)];
  return visible(parts.filter(Boolean).join(' · '));
}

function choice({ rows, ruledOut, ties, undecided }: NonNullable<EntryRow['choice']>): string {
  const out = ruledOut.filter((part) => part.count > 0).map((part) => `${part.count} by ${part.condition}`);
  return [
    `of ${rows} rows${out.length > 0 ? `, ruled out ${out.join(', ')}` : ''}`,
    ties > 1 && `${ties} rows are equal, the first is taken`,
    undecided,
  ]
    .filter(Boolean)
    .join(' · ');
}

function requirementLines(row: RequirementRow, stream: Stream): readonly string[] {
  const { paint } = stream;
  const decided = (status: StatusView, sides: SidesView | null) => {
    const said = sides ? comparison(sides) : status === 'not calculated' ? whyNot(row) : null;
    return paint(STATUS_STYLE[status], status) + (said === null ? '' : `: ${said}`);
  };
  const lines = [visible(`${row.force} ${row.condition.written}`), `  ${decided(row.status, row.sides)}`];
  if (row.throughout !== null) lines.push(`  ${visible(row.throughout)}`);
  if (row.forEach !== null) lines.push(`  ${visible(row.forEach)}`);
  for (const one of row.rows) lines.push(`    ${visible(one.label)} ${decided(one.status, one.sides)}`);
  if (row.concession) {
    const { by, until, because } = row.concession;
    lines.push(`  ${visible(`accepted by "${by}" until ${until} because "${because}"`)}`);
  }
  if (row.because !== null)
    lines.push(...wrap(`because "${visible(row.because)}"`, stream.width - 6).map((line) => `  ${paint('dim', line)}`));
  return lines;
}

/** `34.40 A ± 0.69 A ≤ 40 A, 5.60 A (14 %) in hand, U = 0.69 A`. */
function comparison({ left, relation, right, margin, uncertainty }: SidesView): string {
  return visible([`${whole(left)} ${relation} ${whole(right)}`, margin, uncertainty].filter(Boolean).join(', '));
}

function result(row: EntryRow): string {
  return row.value ? visible(whole(row.value)) : '';
}

/** `34.40 A ± 0.69 A (k = 2)`; no-break spaces as plain ones, for copying. */
function whole({ text, plusMinus, coverage }: ValueView): string {
  return [text, plusMinus, coverage && `(${coverage})`].filter(Boolean).join(' ').replaceAll('\u00a0', ' ');
}

/** The heading above each calc cell that has one, by number of the cell. */
function headingsOf(sheet: Sheet): ReadonlyMap<number, string> {
  const found = new Map<number, string>();
  let last: string | null = null;
  for (const cell of sheet.cells) {
    if (cell.kind === 'prose') last = firstHeading(cell.text.slice(0, cell.text.search(/[\r\n]|$/))) ?? last;
    else if (cell.kind === 'calc' && last !== null) found.set(cell.number, last);
  }
  return found;
}
