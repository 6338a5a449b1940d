// How much room a formula takes, roughly: enough to decide where its lines may break and how large it is set.
import type { ViewNode } from '../node.ts';

/** About how many letters wide a part of a formula is; a fraction counts its wider half. */
export function widthOf(node: ViewNode): number {
  if (typeof node === 'string') return node.length;
  const widths = node.children.map(widthOf);
  if (node.tag === 'mfrac' || node.tag === 'mtable') return Math.max(0, ...widths);
  const sum = widths.reduce((a, b) => a + b, 0);
  if (node.tag === 'mo') return node.attributes.form === 'infix' ? sum + 1.4 : sum;
  if (node.tag === 'msqrt') return sum + 1.5;
  if (node.tag === 'msub' || node.tag === 'msup' || node.tag === 'msubsup') return widths[0]! + (sum - widths[0]!) * 0.7;
  return sum;
}
