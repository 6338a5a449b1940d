// An element tree as DOM, by createElement alone: no text of a document is ever read as markup.
import { type ElementNode, isAllowed, languageOf, shownText, type ViewNode } from '../view/node.ts';

const NAMESPACES = {
  html: 'http://www.w3.org/1999/xhtml',
  math: 'http://www.w3.org/1998/Math/MathML',
  svg: 'http://www.w3.org/2000/svg',
} as const;

/** The DOM of a tree. Tags and attributes that are not allowed are left out, their children stay. */
export function build(tree: ViewNode, to: Document): Node {
  if (typeof tree === 'string') return to.createTextNode(shownText(tree));
  const language = languageOf(tree.tag);
  const made = language === null ? to.createDocumentFragment() : to.createElementNS(NAMESPACES[language], tree.tag);
  if (language !== null) setAttributes(made as Element, tree);
  for (const child of tree.children) made.appendChild(build(child, to));
  return made;
}

function setAttributes(element: Element, tree: ElementNode): void {
  for (const [name, value] of Object.entries(tree.attributes)) {
    if (value !== undefined && isAllowed(name, value)) element.setAttribute(name, shownText(value));
  }
}

/**
 * Puts a tree in place of what an element holds; details that stood open stay open, and the focus stays where it was. `finish` adds what
 * only a page with a script has.
 */
export function mount(tree: ViewNode, into: HTMLElement, finish: () => void = () => {}): void {
  const open = new Set([...into.querySelectorAll('details[open]')].map(keyOf));
  const focused = into.contains(document.activeElement) ? placeOf(document.activeElement!) : null;
  into.replaceChildren(build(tree, document));
  for (const details of into.querySelectorAll('details')) if (open.has(keyOf(details))) details.open = true;
  finish();
  if (focused !== null) into.querySelector<HTMLElement>(focused)?.focus({ preventScroll: true });
}

function keyOf(details: Element): string | null {
  return details.getAttribute('data-key');
}

// A selector for the element that has the focus, in the tree as it will be made again.
function placeOf(element: Element): string | null {
  const key = element.closest('[data-key]')?.getAttribute('data-key');
  if (!key) return null;
  if (element.hasAttribute('data-key')) return `[data-key="${CSS.escape(key)}"]`;
  const inside = element.hasAttribute('data-name') ? `[data-name="${CSS.escape(element.getAttribute('data-name')!)}"]` : element.localName;
  return `[data-key="${CSS.escape(key)}"] ${inside}`;
}
