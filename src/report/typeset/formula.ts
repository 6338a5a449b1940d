// A formula of the ledger: its parts on one line, which may break between them; what is too wide is set smaller, or spelled out.
import { widthOf } from '../../view/math/width.ts';
import type { ElementNode, ViewNode } from '../../view/node.ts';
import { type Code, call, joined } from './code.ts';
import { equation } from './math.ts';

/** Letters that have room in the narrowest column; only a wider part is measured. */
const SURELY_FITS = 16;

/** The parts of a formula: `math` elements, with `br` where a line must break. */
export function formula(nodes: readonly ViewNode[]): Code {
  const parts = nodes.filter((node) => typeof node === 'object' && (node.tag === 'math' || node.tag === 'br')) as readonly ElementNode[];
  const codes = parts.flatMap((part, i) => (i === 0 ? [setPart(part)] : [between(parts[i - 1]!, part), setPart(part)]));
  return parts.some((part) => widthOf(part) > SURELY_FITS) ? call('formula', call('fit', ...codes)) : call('formula', joined(codes));
}

function setPart(part: ElementNode): Code {
  return part.tag === 'br' ? 'linebreak()' : equation(part);
}

/** Where a line may break, with the room that a sign between the two has. */
function between(before: ElementNode, after: ElementNode): Code {
  return isSpaced(leaf(before, -1), 'rspace') || isSpaced(leaf(after, 0), 'lspace') ? '[ ]' : 'gap';
}

function isSpaced(node: ViewNode | undefined, side: 'lspace' | 'rspace'): boolean {
  return typeof node === 'object' && node.tag === 'mo' && node.attributes.form === 'infix' && node.attributes[side] !== '0';
}

/** The first or last sign of a formula. */
function leaf(node: ViewNode, at: 0 | -1): ViewNode | undefined {
  if (typeof node === 'string' || (node.tag !== 'math' && node.tag !== 'mrow')) return node;
  const child = node.children.at(at);
  return child === undefined ? undefined : leaf(child, at);
}
