// Pieces of a formula while it is being set: what they hold, how tightly they bind, and where a line may break.

import { type ElementNode, element, type ViewNode } from '../node.ts';
import { widthOf } from './width.ts';

/** How tightly an expression binds (grammar P1); what binds less than its place asks for gets parentheses. */
export const LEVEL = { whole: 0, or: 1, and: 2, not: 3, comparison: 4, sum: 5, product: 6, sign: 7, power: 8, atom: 9 } as const;

/** A piece of a formula. */
export interface Typeset {
  /** The formula in parts; a line may break between two of them. */
  readonly parts: readonly (readonly ViewNode[])[];
  readonly level: number;
  /** Whether it begins with a minus sign. */
  readonly negative: boolean;
  /** How it stands in a product: a `digit` or a `letter` needs no multiplication sign before a letter, a `word` needs one. */
  readonly shape: 'digit' | 'letter' | 'word';
}

/** A piece in one part. */
export function piece(nodes: readonly ViewNode[], level: number, shape: Typeset['shape'] = 'word', negative = false): Typeset {
  return { parts: [nodes], level, negative, shape };
}

/** All nodes of a piece in one line. */
export function nodesOf(typeset: Typeset): readonly ViewNode[] {
  return typeset.parts.length === 1 ? typeset.parts[0]! : typeset.parts.flat();
}

/** The nodes of a piece as one node. */
export function oneNode(typeset: Typeset): ViewNode {
  return grouped(nodesOf(typeset));
}

export function grouped(nodes: readonly ViewNode[]): ViewNode {
  return nodes.length === 1 ? nodes[0]! : element('mrow', {}, ...nodes);
}

/** The piece, in parentheses where it binds less tightly than `level` or has a minus sign where none may stand. */
export function bound(typeset: Typeset, level: number, minusAllowed = true): Typeset {
  return typeset.level < level || (typeset.negative && !minusAllowed) ? parenthesised(typeset) : typeset;
}

export function parenthesised(typeset: Typeset): Typeset {
  return piece([element('mrow', {}, ...bracketed('(', stacked(typeset), ')'))], LEVEL.atom);
}

/** All nodes of a piece that can't go on with the line around it (half a fraction, below a root, in brackets): a long one in several lines of its own. */
export function stacked(of: Typeset): readonly ViewNode[] {
  const lines: (readonly ViewNode[])[] = [];
  let room = 0;
  for (const part of operands(of.parts)) {
    const width = widthOfAll(part);
    if (lines.length > 0 && (width <= room || room > WIDEST_STACK - LEAST)) lines.push([...lines.pop()!, ...part]);
    else {
      lines.push(part);
      room = WIDEST_STACK;
    }
    room -= width;
  }
  if (lines.length < 2) return lines[0] ?? [];
  const rows = lines.map((line) => element('mtr', {}, element('mtd', {}, ...line)));
  return [element('mtable', { class: 'aw-stack', displaystyle: 'true' }, ...rows)];
}

// A line of a stack begins with an operator; the arguments of a call stay together unless they are too long for any line.
function operands(parts: Typeset['parts']): Typeset['parts'] {
  const joined: (readonly ViewNode[])[] = [];
  for (const part of parts) {
    const last = joined.at(-1);
    if (last && !isOperator(part[0]) && widthOfAll(last) + widthOfAll(part) <= WIDEST_PIECE) joined.push([...joined.pop()!, ...part]);
    else joined.push(part);
  }
  return joined;
}

function isOperator(node: ViewNode | undefined): boolean {
  return typeof node === 'object' && node.tag === 'mo' && node.attributes.form === 'infix' && node.attributes.separator === undefined;
}

function widthOfAll(nodes: readonly ViewNode[]): number {
  return nodes.reduce((sum, node) => sum + widthOf(node), 0);
}

// Letters: what a line of a stack may have, what is too little for a line of its own, and what must not stay in one piece.
const WIDEST_STACK = 26;
const LEAST = 6;
const WIDEST_PIECE = 38;

/** The piece as one part where it is short: then its line breaks before or behind it. */
export function whole(typeset: Typeset): Typeset {
  const { parts } = typeset;
  if (parts.length < 2 || widthOfAll(parts.flat()) > SHORT) return typeset;
  return { ...typeset, parts: [parts.flat()] };
}

const SHORT = 20;

/** The parts of a piece with nodes before the first. */
export function led(nodes: readonly ViewNode[], parts: Typeset['parts']): Typeset['parts'] {
  return [[...nodes, ...(parts[0] ?? [])], ...parts.slice(1)];
}

/** Parts with nodes behind the last. */
export function followed(parts: Typeset['parts'], nodes: readonly ViewNode[]): Typeset['parts'] {
  return [...parts.slice(0, -1), [...(parts.at(-1) ?? []), ...nodes]];
}

/** An operator between two operands; the form is said, since at the start of a part it would be taken for a sign. */
export function infix(sign: string): ElementNode {
  return element('mo', { form: 'infix' }, sign);
}

/** Nodes between brackets, which grow with what is tall. */
export function bracketed(open: string, nodes: readonly ViewNode[], close: string): ViewNode[] {
  const stretchy = nodes.some(isTall) ? null : 'false';
  return [element('mo', { form: 'prefix', stretchy }, open), ...nodes, element('mo', { form: 'postfix', stretchy }, close)];
}

/** Parts between brackets. */
export function bracketedParts(head: readonly ViewNode[], open: string, parts: Typeset['parts'], close: string): Typeset['parts'] {
  const stretchy = 'false';
  if (parts.length < 2) return [[...head, ...bracketed(open, parts[0] ?? [], close)]];
  return followed(led([...head, element('mo', { form: 'prefix', stretchy }, open)], parts), [
    element('mo', { form: 'postfix', stretchy }, close),
  ]);
}

function isTall(node: ViewNode): boolean {
  if (typeof node === 'string') return false;
  return node.tag === 'mfrac' || node.tag === 'mtable' || node.children.some(isTall);
}

/** Words in a formula; blanks at the ends are kept. */
export function words(text: string): ElementNode {
  return element('mtext', {}, text.replace(/^ | $/g, '\u00A0'));
}

/** Between the arguments of a call. */
export const COMMA: ElementNode = element('mo', { separator: 'true', form: 'infix', lspace: '0', rspace: '0.25em' }, ',');

/** Between a function's name and its arguments: not seen, but said. */
export const APPLIED: ElementNode = element('mo', { lspace: '0', rspace: '0' }, '\u2061');
