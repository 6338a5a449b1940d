// The view's trees as content: what page and editor build of HTML, paper builds of Typst.
import { widthOf } from '../../view/math/width.ts';
import type { ElementNode, ViewNode } from '../../view/node.ts';
import { below, type Code, call, EMPTY, joined, quoted, words } from './code.ts';
import { drawing, standsAlone } from './drawing.ts';
import { formula } from './formula.ts';
import { CHOICE, ledgerTable } from './ledger.ts';
import { equation } from './math.ts';
import { tableOf } from './table.ts';
import type { Writer } from './writer.ts';

/** A writer of one document. */
export function contentWriter(): Writer & { readonly places: ReadonlySet<string> } {
  const places = new Set<string>();
  const place = (id: string): Code => {
    if (places.has(id)) return EMPTY;
    places.add(id);
    return call('place-of', quoted(id));
  };
  const writer = { places, place, content: (nodes: readonly ViewNode[]) => content(nodes, writer) };
  return writer;
}

/** Letters of a symbol that has room in every column. */
const LONGEST_SYMBOL = 14;

/** What stands on lines of its own; everything else stands in a line. */
const BLOCKS: ReadonlySet<string> = new Set(['div', 'p', 'ul', 'ol', 'table', 'section', 'details', 'summary', 'figure', 'figcaption']);

function isBlock(node: ViewNode): boolean {
  return typeof node === 'object' && (BLOCKS.has(node.tag) || (node.tag === 'svg' && standsAlone(node)) || hasClass(node, 'aw-apart'));
}

function content(nodes: readonly ViewNode[], writer: Writer): Code {
  const blocks: Code[] = [];
  let line: Code[] = [];
  for (const node of nodes) {
    if (!isBlock(node)) line.push(write(node, writer));
    else {
      blocks.push(joined(line), write(node, writer));
      line = [];
    }
  }
  return below([...blocks, joined(line)]);
}

function hasClass(node: ElementNode, name: string): boolean {
  return (node.attributes.class ?? '').split(' ').includes(name);
}

// What only a screen has: labels of cells in one column, the second size of a drawing and its data, names for readers and keys to looks.
const SCREEN_ONLY = ['aw-unseen', 'aw-celllabel', 'aw-plot-narrow', 'aw-curvedata', 'aw-key'];

/** Looks of text by class; the functions are the preamble's. */
const LOOKS: Readonly<Record<string, string>> = {
  'aw-description': 'quiet',
  'aw-because': 'quiet',
  'aw-kind': 'quiet',
  'aw-remark': 'quiet',
  'aw-reading': 'quiet',
  'aw-missing': 'quiet',
  'aw-coverage': 'quiet',
  'aw-units': 'quiet',
  'aw-old': 'quiet',
  'aw-call': 'aside',
  'aw-where': 'aside',
  'aw-label': 'label-of',
  'aw-symbol': 'symbol-of',
  'aw-value': 'strong',
  'aw-force': 'strong',
  'aw-severity': 'strong',
  'aw-plusminus': 'whole',
  'aw-nowrap': 'whole',
  'aw-status': 'whole',
  'aw-holds': 'holds',
  'aw-fails': 'fails',
  'aw-undecided': 'undecided',
  'aw-none': 'quiet',
  'aw-error': 'fails',
  'aw-warning': 'undecided',
  'aw-putin-below': 'put-in',
  'aw-summary': 'summary',
};

function write(node: ViewNode, writer: Writer): Code {
  if (typeof node === 'string') return words(node);
  if (node.attributes['aria-hidden'] === 'true' && node.tag === 'span') return EMPTY;
  if (SCREEN_ONLY.some((name) => hasClass(node, name))) return EMPTY;
  if (node.tag === 'svg') return drawing(node);
  const names = (node.attributes.class ?? '').split(' ').flatMap((name) => LOOKS[name] ?? []);
  return names.reduce((code, name) => (code === EMPTY ? code : call(name, code)), element(node, writer));
}

function element(node: ElementNode, writer: Writer): Code {
  const inner = () => writer.content(node.children);
  const id = node.attributes.id;
  if (hasClass(node, 'aw-math')) return formula(node.children);
  if (hasClass(node, CHOICE)) return EMPTY; // the ledger has it in another column
  if (hasClass(node, 'aw-table')) return ledgerTable(node, writer);
  if (hasClass(node, 'aw-problem') || hasClass(node, 'aw-notice')) return problem(node, writer);
  switch (node.tag) {
    case 'table':
      return tableOf(node, writer);
    case 'math':
      return widthOf(node) > LONGEST_SYMBOL ? call('fit', equation(node)) : equation(node);
    case 'a':
      return node.attributes.href ? call('to', quoted(node.attributes.href.slice(1)), inner()) : inner();
    case 'ul':
      return call(node.children.some(isFigure) ? 'figures' : 'list', ...items(node, writer));
    case 'ol':
      return call('enum', ...items(node, writer));
    case 'p':
      return call('par', inner());
    case 'strong':
    case 'b':
      return call('strong', inner());
    case 'em':
    case 'i':
      return call('emph', inner());
    case 'code':
      return call('mono', inner());
    case 'br':
      return 'linebreak()';
    case 'wbr':
      return 'gap';
    case 'details':
      return onPaper(node, writer);
    default:
      return id ? joined([writer.place(id), inner()]) : inner();
  }
}

function items(node: ElementNode, writer: Writer): readonly Code[] {
  return node.children.flatMap((child) => (typeof child === 'object' ? [writer.content(child.children)] : []));
}

/** Whether an item of a list is a name with its value: such lists run on in lines. */
function isFigure(item: ViewNode): boolean {
  return typeof item === 'object' && item.children.some((child) => typeof child === 'object' && hasClass(child, 'aw-figure'));
}

/** What unfolds shows its first line on paper; the rest is in the registers, and the decision on each row in the ledger's wide column. */
function onPaper({ children }: ElementNode, writer: Writer): Code {
  const summary = children.filter((child) => typeof child === 'object' && child.tag === 'summary');
  const lines = summary.flatMap((child) => (typeof child === 'object' ? child.children : []));
  return lines.every(namesOnly) ? EMPTY : writer.content(lines);
}

/** Whether a line does no more than name what unfolds below it. */
function namesOnly(node: ViewNode): boolean {
  if (typeof node === 'string') return node.trim() === '';
  return hasClass(node, 'aw-label') || (hasClass(node, 'aw-line') && node.children.every(namesOnly));
}

/** Mark and words of a problem or notice, side by side. */
function problem(node: ElementNode, writer: Writer): Code {
  const [mark, ...rest] = node.children;
  return call('problem', mark === undefined ? EMPTY : write(mark, writer), writer.content(rest));
}
