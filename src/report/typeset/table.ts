// Tables: columns as wide as what stands in them asks for, heads repeated on every page, numbers to the right.
import { type ElementNode, textOf, type ViewNode } from '../../view/node.ts';
import { array, below, type Code, call, EMPTY, named } from './code.ts';
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
}

/** Letters that a page has room for at the size of tables. */
const PAGE = 118;
/** Letters of a column that are reckoned with at most: longer texts are broken into lines. */
const MOST = 58;
/** The longest run that is kept whole. */
const RUN = 16;

/** A table over the whole width; `look` is the name of the function that draws it. */
export function table(look: 'register' | 'slim', { caption, heads, lines }: TableParts): Code {
  const columns = heads.map((head, i) => columnOf([head, ...lines.map((line) => line[i] ?? NOTHING)]));
  if (columns.length === 0) return EMPTY;
  const room = columns.reduce((sum, column) => sum + column.least, 0);
  const size = Math.max(0.55, Math.min(1, PAGE / (room + 2 * columns.length)));
  const set = call(
    look,
    named('columns', array(columns.map(({ wish, least }) => `${Math.max(wish, least)}fr`))),
    named('align', array(columns.map(({ numbers }) => (numbers ? 'right' : 'left')))),
    size < 1 ? named('size', size.toFixed(2)) : null,
    call('table.header', ...heads.map(({ code }) => code)),
    ...lines.flatMap((line) => heads.map((_, i) => line[i]?.code ?? EMPTY)),
  );
  return below([caption === null ? EMPTY : call('caption', caption), set]);
}

const NOTHING: Cell = { text: '', code: EMPTY };

function columnOf(cells: readonly Cell[]) {
  const [head, ...rest] = cells.map((cell) => cell.text);
  const filled = rest.filter((text) => text !== '' && text !== '–');
  const lengths = cells.map((cell) => letters(cell.text));
  const longest = Math.max(1, ...lengths);
  const mean = lengths.reduce((sum, length) => sum + length, 0) / lengths.length;
  const least = Math.max(4, ...cells.map((cell) => Math.min(RUN, longestRun(cell.text))));
  return {
    least,
    // Between what most cells have and what the longest has, so that one long text does not take the room of all others.
    wish: Math.min(MOST, Math.max(letters(head ?? '') / 2, longest / 2 + mean / 2)),
    numbers: filled.length > 0 && filled.every((text) => /^[−+-]?\d[\d\s.,]*(?:[eE×]\S+)?(?:\s*±\s*[\d.,\s]+)?$/.test(text)),
  };
}

/** Wide characters count twice. */
function letters(text: string): number {
  return text.length + (text.match(/[\u1100-\u115f\u2e80-\ud7a3\uf900-\ufaff\uff00-\uff60]/g)?.length ?? 0);
}

function longestRun(text: string): number {
  return text.split(/[\s\u2e80-\ud7a3]+/).reduce((most, run) => Math.max(most, run.length), 0);
}

/** A table of the view. */
export function tableOf(node: ElementNode, writer: Writer): Code {
  const parts = node.children.filter((child) => typeof child === 'object');
  const caption = parts.find((part) => part.tag === 'caption');
  const rows = (tag: 'thead' | 'tbody') => parts.filter((part) => part.tag === tag).flatMap((part) => part.children.filter(isElement));
  const cellsOf = (row: ElementNode): Cell[] =>
    row.children.filter(isElement).map((c) => ({ text: textOf(c), code: writer.content(c.children) }));
  return table(node.attributes.class?.includes('aw-register') ? 'register' : 'slim', {
    caption: caption ? writer.content(caption.children) : null,
    heads: rows('thead').slice(0, 1).flatMap(cellsOf),
    lines: rows('tbody').map(cellsOf),
  });
}

function isElement(node: ViewNode): node is ElementNode {
  return typeof node === 'object';
}
