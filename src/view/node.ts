// What a result looks like, as plain data: a small tree of elements that the page prints and the editor builds.
import { readable } from '../text/visible.ts';

/** A text of a tree as it is shown. */
export const shownText = readable;

/** The elements that a tree may hold, by the language that they belong to. Nothing here can run, load or send anything. */
// biome-ignore format: word lists
export const TAGS = {
  html: [
    'a', 'abbr', 'b', 'br', 'caption', 'code', 'col', 'colgroup', 'dd', 'del', 'details', 'div', 'dl', 'dt', 'em', 'figcaption', 'figure',
    'footer', 'h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'header', 'i', 'ins', 'li', 'main', 'nav', 'ol', 'p', 'section', 'span', 'strong', 'sub',
    'summary', 'sup', 'table', 'tbody', 'td', 'th', 'thead', 'time', 'tr', 'ul', 'wbr',
  ],
  math: [
    'math', 'mfrac', 'mi', 'mn', 'mo', 'mover', 'mroot', 'mrow', 'mspace', 'msqrt', 'msub', 'msubsup', 'msup', 'mtable', 'mtd', 'mtext',
    'mtr', 'munder',
  ],
  svg: ['circle', 'desc', 'g', 'line', 'path', 'polygon', 'polyline', 'rect', 'svg', 'text', 'title', 'tspan'],
} as const;

/** The attributes that an element may carry, beside `aria-*`. `href` leads to a place of the same page alone. */
// biome-ignore format: a word list
const ATTRIBUTES = [
  'class', 'colspan', 'datetime', 'dir', 'href', 'id', 'lang', 'open', 'role', 'rowspan', 'scope', 'span', 'tabindex',
  'data-key', 'data-name',
  'display', 'displaystyle', 'form', 'lspace', 'mathvariant', 'rspace', 'scriptlevel', 'separator', 'stretchy', 'fence',
  'cx', 'cy', 'd', 'dx', 'dy', 'height', 'points', 'r', 'text-anchor', 'transform', 'viewBox', 'width', 'x', 'x1', 'x2', 'y', 'y1', 'y2',
] as const;

export type Tag = (typeof TAGS)[keyof typeof TAGS][number];
export type Attribute = (typeof ATTRIBUTES)[number] | `aria-${string}`;

export interface ElementNode {
  readonly tag: Tag;
  readonly attributes: Readonly<Partial<Record<Attribute, string>>>;
  readonly children: readonly ViewNode[];
}

/** An element, or a text. */
export type ViewNode = ElementNode | string;

/** What may stand among children while a tree is being made: lists are opened, null and false are left out. */
export type Child = ViewNode | null | undefined | false | readonly Child[];

/** One element; attributes that are null or false are left out, true stands as an empty one. */
export function element(
  tag: Tag,
  attributes: Partial<Record<Attribute, string | number | boolean | null>>,
  ...children: readonly Child[]
): ElementNode {
  const kept: Partial<Record<Attribute, string>> = {};
  for (const name of Object.keys(attributes) as Attribute[]) {
    const value = attributes[name];
    if (value !== null && value !== undefined && value !== false) kept[name] = value === true ? '' : String(value);
  }
  return { tag, attributes: kept, children: flat(children) };
}

/** Children as they end up in an element. */
export function flat(children: readonly Child[]): ViewNode[] {
  const found: ViewNode[] = [];
  const open = (child: Child): void => {
    if (isList(child)) child.forEach(open);
    else if (child !== null && child !== undefined && child !== false) found.push(child);
  };
  children.forEach(open);
  return found;
}

const isList = (child: Child): child is readonly Child[] => Array.isArray(child);

const LANGUAGE_OF = new Map<string, keyof typeof TAGS>(
  (Object.keys(TAGS) as (keyof typeof TAGS)[]).flatMap((language) => TAGS[language].map((tag) => [tag, language] as const)),
);
const KNOWN_ATTRIBUTES: ReadonlySet<string> = new Set(ATTRIBUTES);

/** Which language a tag belongs to; null for a tag that no tree may hold. */
export function languageOf(tag: string): keyof typeof TAGS | null {
  return LANGUAGE_OF.get(tag) ?? null;
}

/** Whether an attribute may stand with this value. */
export function isAllowed(name: string, value: string): boolean {
  if (name === 'href') return value.startsWith('#');
  return KNOWN_ATTRIBUTES.has(name) || /^aria-[a-z]+$/.test(name);
}

const VOID: ReadonlySet<string> = new Set(['br', 'col', 'wbr']);

/** A tree as HTML text. Tags and attributes that are not allowed are left out, their children stay. */
export function toHtml(tree: ViewNode | readonly ViewNode[]): string {
  const out: string[] = [];
  for (const node of Array.isArray(tree) ? (tree as readonly ViewNode[]) : [tree as ViewNode]) write(node, out);
  return out.join('');
}

function write(node: ViewNode, out: string[]): void {
  if (typeof node === 'string') {
    out.push(escapeText(node));
    return;
  }
  const known = languageOf(node.tag) !== null;
  if (known) {
    out.push('<', node.tag);
    for (const [name, value] of Object.entries(node.attributes)) {
      if (value !== undefined && isAllowed(name, value)) out.push(' ', name, '="', escapeText(value).replaceAll('"', '&quot;'), '"');
    }
    out.push('>');
  }
  for (const child of node.children) write(child, out);
  if (known && !VOID.has(node.tag)) out.push('</', node.tag, '>');
}

/** Text with the characters escaped that HTML gives a meaning, and those shown that would steer how it is read. */
export function escapeText(text: string): string {
  return readable(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** The text of a tree, as a reader without markup would see it. */
export function textOf(tree: ViewNode | readonly ViewNode[]): string {
  if (typeof tree === 'string') return tree;
  return (Array.isArray(tree) ? (tree as readonly ViewNode[]) : (tree as ElementNode).children).map(textOf).join('');
}
