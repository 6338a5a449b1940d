// XML 1.0 text of elements: everything escaped, and nothing that XML can't hold.

export interface XmlElement {
  readonly name: string;
  /** Null is left out. */
  readonly attributes: Readonly<Record<string, string | number | null>>;
  readonly children: readonly (XmlElement | string)[];
}

/** One element. */
export function xml(name: string, attributes: XmlElement['attributes'], ...children: XmlElement['children']): XmlElement {
  return { name, attributes, children };
}

/** A document with its declaration; elements that hold elements are indented. */
export function xmlDocument(root: XmlElement): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}\n`;
}

function written({ name, attributes, children }: XmlElement, indent: string): string {
  const pairs = Object.entries(attributes).filter(([, value]) => value !== null);
  const open = `${indent}<${name}${pairs.map(([key, value]) => ` ${key}="${attribute(String(value))}"`).join('')}`;
  if (children.length === 0) return `${open}/>`;
  if (children.every((child) => typeof child === 'string')) return `${open}>${children.map(content).join('')}</${name}>`;
  const inner = children.map((child) => (typeof child === 'string' ? indent + content(child) : written(child, `${indent}  `)));
  return `${open}>\n${inner.join('\n')}\n${indent}</${name}>`;
}

/** Line ends and tabs of an attribute would be read as blanks, so they are written as references. */
function attribute(text: string): string {
  return content(text)
    .replaceAll('"', '&quot;')
    .replace(/[\t\n\r]/g, (c) => `&#${c.charCodeAt(0)};`);
}

function content(text: string): string {
  return holdable(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

// Char of XML 1.0, 2.2: no control characters but tab and line ends, no lone surrogates, no U+FFFE and U+FFFF.
const OUTSIDE = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

/** What XML can't hold is shown by its code point. */
function holdable(text: string): string {
  return text.replace(OUTSIDE, (c) => `\\u{${c.codePointAt(0)!.toString(16)}}`);
}
