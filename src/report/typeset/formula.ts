// A formula of the ledger: its parts on one line, which may break between them; what is too wide is set smaller, or spelled out.
import { widthOf } from '../../view/math/width.ts';
import type { ElementNode, ViewNode } from '../../view/node.ts';
import { array, type Code, call, joined } from './code.ts';
import { equation } from './math.ts';

/** Letters that have room in the narrowest column; only a wider part is measured. */
const SURELY_FITS = 16;

/** The parts of a formula: `math` elements, with `br` where a line must break. */
export function formula(nodes: readonly ViewNode[]): Code {
  const parts = nodes.filter((node) => typeof node === 'object' && (node.tag === 'math' || node.tag === 'br')) as readonly ElementNode[];
  const codes = parts.map((part) => (part.tag === 'br' ? 'linebreak()' : equation(part)));
  if (parts.some((part) => widthOf(part) > SURELY_FITS)) return call('fit', array(codes));
  return joined(codes.flatMap((code, i) => (i === 0 ? [code] : ['h(0pt)', code])));
}
