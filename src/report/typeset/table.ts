// Tables: columns as wide as what stands in them asks for, heads repeated on every page, numbers to the right.
import { widthOf } from '../../view/math/width.ts';
import type { ElementNode, ViewNode } from '../../view/node.ts';
import { array, below, type Code, call, EMPTY, joined, named } from './code.ts';
import type { Writer } from './writer.ts';

/** A table's cell: what it says, for measuring, and what is set. */
export interface Cell {
  readonly text: string;
  readonly code: Code;
}

export interface TableParts {
  readonly caption: Code | null;
  readonly heads: readonly Cell[];
  readonly lines: readonly (readonly Cell[])[];
  /** Whether a small table is no wider than it needs to be. */
  readonly natural?: boolean;
}

/** Letters that a page has room for at the size of tables. */
const PAGE = 118;
/** Letters of a column that are reckoned with at most: longer texts are broken into lines. */
const MOST = 58;
/** The longest run that is kept whole. */
const RUN = 16;
/** The room between two columns, in letters. */
const GAP = 3;
/** Letters of a row that is kept on one page; where one is longer, rows may be broken. */
const KEPT = 900;
/** Rows of a table that is kept on one page. */
const SMALL = 12;
/** A table of prose that needs less room is no wider than that. */
const NARROW = 70;

/** A table over the whole width; `look` is the name of the function that draws it. */
export function table(look: 'register' | 'slim', { caption, heads, lines, natural = false }: TableParts): Code {
  const columns = heads.map((head, i) => columnOf([head, ...lines.map((line) => line[i] ?? NOTHING)]));
  if (columns.length === 0) return EMPTY;
  const room = columns.reduce((sum, column) => sum + column.least, 0);
  const wish = columns.reduce((sum, column) => sum + column.wish, 0);
  const kept = lines.every((line) => line.reduce((sum, cell) => sum + cell.text.length, 0) < KEPT);
  const size = Math.max(0.55, Math.min(1, PAGE / room));
  const set = call(
    look,
    named('columns', array(widths(columns).map((width) => `${width.toFixed(1)}fr`))),
    named('align', array(columns.map(({ numbers }) => (numbers ? 'right' : 'left')))),
    natural && wish < NARROW ? named('width', `${Math.round((100 * wish) / PAGE)}%`) : null,
    kept ? 'kept: true' : null,
    look === 'register' && isSmall(lines) ? 'whole: true' : null,
    size < 1 ? named('size', size.toFixed(2)) : null,
    call('table.header', ...heads.map(({ code }) => code)),
    ...lines.flatMap((line) => heads.map((_, i) => line[i]?.code ?? EMPTY)),
  );
  return below([caption === null ? EMPTY : call('caption', caption), set]);
}

/** Whether a table stands on one page. */
function isSmall(lines: TableParts['lines']): boolean {
  return lines.length <= SMALL && lines.flat().reduce((sum, cell) => sum + cell.text.length, 0) < KEPT;
}

interface Column {
  readonly least: number;
  readonly wish: number;
  /** Letters of all its cells. */
  readonly bulk: number;
}

/** What each column needs at least, and its part of the rest after its wish. */
function widths(columns: readonly Column[]): readonly number[] {
  const rest = Math.max(1, PAGE - columns.reduce((sum, { least }) => sum + least, 0));
  const wishes = columns.reduce((sum, { wish }) => sum + wish, 0);
  if (wishes <= PAGE) return columns.map(({ wish }) => wish);
  // A column with more to say gets more of the rest, so that rows are not tall for the sake of one cell.
  const shares = columns.map(({ wish, least, bulk }) => (wish - least) * bulk);
  const all = Math.max(1, shares.reduce((sum, share) => sum + share, 0)); // biome-ignore format: one step
  return columns.map(({ least }, i) => least + (rest * shares[i]!) / all);
}

const NOTHING: Cell = { text: '', code: EMPTY };

function columnOf(cells: readonly Cell[]) {
  const filled = cells
    .slice(1)
    .map((cell) => cell.text.trim())
    .filter((text) => text !== '' && text !== '–');
  const longest = cells.reduce((most, cell) => Math.max(most, longestLine(cell.text)), 1);
  const least = Math.max(3, ...cells.map((cell) => Math.min(RUN, longestRun(cell.text)))) + GAP;
  return {
    least,
    bulk: cells.reduce((sum, cell) => sum + letters(cell.text), 0),
    wish: Math.max(least, Math.min(MOST, longest + GAP)),
    numbers: filled.length > 0 && filled.every((text) => /^[−+-]?\d[\d\s.,]*(?:[eE×]\S+\s*)?(?:±[\d.,\s]+%?)?$/.test(text)),
  };
}

/** Wide characters count twice. */
function letters(text: string): number {
  return text.length + (text.match(/[\u1100-\u115f\u2e80-\ud7a3\uf900-\ufaff\uff00-\uff60]/g)?.length ?? 0);
}

function longestLine(text: string): number {
  return text.split('\n').reduce((most, line) => Math.max(most, letters(line)), 0);
}

function longestRun(text: string): number {
  return text.split(/[ \n\t\u2e80-\ud7a3]+/).reduce((most, run) => Math.max(most, run.length), 0);
}

/** A table of the view. */
export function tableOf(node: ElementNode, writer: Writer): Code {
  const parts = node.children.filter((child) => typeof child === 'object');
  const caption = parts.find((part) => part.tag === 'caption');
  const rows = (tag: 'thead' | 'tbody') => parts.filter((part) => part.tag === tag).flatMap((part) => part.children.filter(isElement));
  // Many short rows: what stands below each other on screen stands side by side.
  const content = node.attributes.class?.includes('aw-eachrow')
    ? (nodes: readonly ViewNode[]) => joined(nodes.flatMap((one, i) => [...(i === 0 ? [] : ['h(0.8em)']), writer.content([one])]))
    : writer.content;
  const cellsOf = (row: ElementNode): Cell[] =>
    row.children.filter(isElement).map((c) => ({ text: measured(c), code: content(c.children) }));
  return table(node.attributes.class?.includes('aw-register') ? 'register' : 'slim', {
    caption: caption ? writer.content(caption.children) : null,
    heads: rows('thead').slice(0, 1).flatMap(cellsOf),
    lines: rows('tbody').map(cellsOf),
  });
}

/** The text of a cell with the blanks at which no line breaks as letters, and a mark as three. */
function measured(node: ViewNode): string {
  if (typeof node === 'string') return node;
  if (node.tag === 'svg') return '###';
  if (node.tag === 'math') return '#'.repeat(Math.min(1000, Math.ceil(widthOf(node))));
  const text = node.children.map(measured).join('');
  const whole = /aw-(status|nowrap|plusminus)/.test(node.attributes.class ?? '');
  return `${whole ? text.replaceAll(' ', '#') : text}${node.tag === 'div' ? '\n' : ''}`;
}

function isElement(node: ViewNode): node is ElementNode {
  return typeof node === 'object';
}
