// A formula read out on one line: for readers who don't see it.
import type { ElementNode, ViewNode } from '../../view/node.ts';

/** `(P_n)/(√(3)·U_n·η)`: names as they are written in the sheet, quotients with a stroke. */
export function mathText(node: ViewNode | readonly ViewNode[]): string {
  return clean(typeof node === 'string' ? node : isList(node) ? inner(node) : read(node));
}

function isList(node: ViewNode | readonly ViewNode[]): node is readonly ViewNode[] {
  return Array.isArray(node);
}

function clean(text: string): string {
  return text
    .replace(/[\s\u00A0]+/g, ' ')
    .replace(/ ([,)\]])/g, '$1')
    .trim();
}

function read(node: ViewNode): string {
  if (typeof node === 'string') return node.replaceAll('\u2061', '').replaceAll('\u2062', '·');
  const [first, second, third] = node.children.map(read);
  const name = node.attributes['data-name'];
  switch (node.tag) {
    case 'mfrac':
      return `${grouped(first)}/${grouped(second)}`;
    case 'msub':
      return name ?? `${first}_${grouped(second)}`;
    case 'msup':
      return `${held(node, name ?? first)}^${grouped(second)}`;
    case 'msubsup':
      return `${name ?? `${first}_${grouped(second)}`}^${grouped(third)}`;
    case 'msqrt':
      return `√(${inner(node.children)})`;
    case 'mroot':
      return `${grouped(second)}√(${first})`;
    case 'mtable':
      return node.children.map(read).join(node.attributes.class === 'aw-cases' ? '; ' : ' ');
    case 'mspace':
      return ' ';
    case 'mo':
      return operator(node);
    case 'br':
      return '; ';
    default:
      return inner(node.children);
  }
}

function inner(nodes: readonly ViewNode[]): string {
  return nodes.map(read).join('');
}

function operator(node: ElementNode): string {
  const sign = inner(node.children);
  return node.attributes.form === 'infix' && node.attributes.lspace !== '0' ? ` ${sign} ` : sign;
}

/** What is raised, in parentheses where it is no single sign. */
function held(node: ElementNode, base: string | undefined): string {
  const [of] = node.children;
  return typeof of === 'object' && (of.tag === 'mi' || of.tag === 'mn') ? base! : grouped(base);
}

/** One word as it is, more in parentheses. */
function grouped(text = ''): string {
  return /^[\p{L}\p{N}\p{M}_.]*$/u.test(text.trim()) || /^\([^()]*\)$/.test(text.trim()) ? text.trim() : `(${text.trim()})`;
}
