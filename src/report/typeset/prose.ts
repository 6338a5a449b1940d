// Prose of the sheet: the tokens of its Markdown as content. Nothing loads, and links lead to the web, to mail and into the document.
import type { Token } from 'markdown-it';
import { below, type Code, call, EMPTY, joined, named, quoted, words } from './code.ts';
import { type Cell, table } from './table.ts';
import type { Writer } from './writer.ts';

/** Markdown that was parsed by the page's own renderer. */
export function prose(tokens: readonly Token[], writer: Writer): Code {
  const nodes = nested(tokens);
  return below(nodes.map((node, i) => (leadsTable(node, nodes[i + 1]) ? call('lead', block(node, writer)) : block(node, writer))));
}

/** The line above a table stays with it. */
function leadsTable(node: Nested, next: Nested | undefined): boolean {
  return node.token.type === 'paragraph_open' && next?.token.type === 'table_open';
}

interface Nested {
  readonly token: Token;
  readonly children: readonly Nested[];
}

/** Opening and closing tokens as a tree. */
function nested(tokens: readonly Token[]): readonly Nested[] {
  const roots: Nested[] = [];
  const open: { token: Token; children: Nested[] }[] = [];
  for (const token of tokens) {
    if (token.nesting < 0) open.pop();
    else {
      const node = { token, children: token.type === 'inline' ? [...nested(token.children ?? [])] : [] };
      (open.at(-1)?.children ?? roots).push(node);
      if (token.nesting > 0) open.push(node);
    }
  }
  return roots;
}

function block({ token, children }: Nested, writer: Writer): Code {
  const inner = () => below(children.map((child) => block(child, writer)));
  switch (token.type) {
    case 'heading_open': {
      const id = token.attrGet('id');
      const place = id ? writer.place(String(id)) : EMPTY;
      return call('heading', named('level', token.tag.slice(1)), joined([place, inner()]));
    }
    case 'paragraph_open':
      return token.hidden ? inner() : call('par', inner());
    case 'inline':
      return inline(children);
    case 'bullet_list_open':
      return call('list', ...children.map((item) => block(item, writer)));
    case 'ordered_list_open':
      return call(
        'enum',
        named('start', String(Math.min(1e9, Number(token.attrGet('start') ?? 1)))),
        ...children.map((item) => block(item, writer)),
      );
    case 'blockquote_open':
      return call('quotation', inner());
    case 'code_block':
    case 'fence':
      return call('listing', ...token.content.replace(/\n$/, '').split('\n').map(words));
    case 'hr':
      return 'line(length: 100%, stroke: hair)';
    case 'table_open':
      return proseTable(children);
    default:
      return inner();
  }
}

function proseTable(sections: readonly Nested[]): Code {
  const [head = [], ...lines] = sections.flatMap(({ children }) => children.map((row) => row.children.map(cellOf)));
  return table('register', { caption: null, heads: head, lines, natural: true });
}

function cellOf({ children }: Nested): Cell {
  const content = children.flatMap((child) => child.children);
  return { text: plain(content), code: inline(content) };
}

function plain(nodes: readonly Nested[]): string {
  return nodes.map(({ token, children }) => (token.nesting === 0 ? token.content : plain(children))).join('');
}

function inline(nodes: readonly Nested[]): Code {
  return joined(nodes.map(span));
}

function span({ token, children }: Nested): Code {
  switch (token.type) {
    case 'softbreak':
      return '" "';
    case 'hardbreak':
      return 'linebreak()';
    case 'code_inline':
      return call('mono', words(token.content));
    case 'em_open':
      return call('emph', inline(children));
    case 'strong_open':
      return call('strong', inline(children));
    case 's_open':
      return call('strike', inline(children));
    case 'link_open':
      return linked(String(token.attrGet('href') ?? ''), children);
    case 'image':
      return words(`[picture: ${token.content}]`);
    default:
      return words(token.content);
  }
}

function linked(href: string, children: readonly Nested[]): Code {
  const inner = inline(children);
  if (href.startsWith('#')) return call('to', quoted(decoded(href.slice(1))), inner);
  const said = plain(children).includes(href) || href.startsWith('mailto:');
  const link = call('link', quoted(href), inner);
  return said ? link : joined([link, '" ("', words(href), '")"']);
}

function decoded(fragment: string): string {
  try {
    return decodeURIComponent(fragment);
  } catch {
    return fragment;
  }
}
