// The prose of a sheet as HTML: Markdown without raw HTML, links to few kinds of places, nothing that loads or runs.
import MarkdownIt, { type Token } from 'markdown-it';
import { readable } from '../text/visible.ts';
import { escapeText } from '../view/node.ts';

/** Where the fragments of a sheet lead on its page. */
export interface Places {
  /** The id of an entry's row; null where no entry has the name. */
  readonly entry: (name: string) => string | null;
}

/** Renders the prose cells of one sheet; headings of all of them share one list of ids. */
export interface ProseRenderer {
  readonly render: (markdown: string) => string;
  /** What is rendered, for another medium: headings lowered and with their ids, links as they may stand. */
  readonly tokens: (markdown: string) => readonly Token[];
}

const DEEPEST = 6;

/** A renderer for one page. `title`: a first heading that repeats it is left out. */
export function proseRenderer(places: Places, title: string | null): ProseRenderer {
  const markdown = new MarkdownIt('default', { html: false, linkify: false, typographer: false });
  const ids = new Map<string, number>();
  let first = true;
  // The page's own heading is the first; where the sheet's first heading is the same, the levels below it fit as they are.
  let down = 1;
  markdown.validateLink = (url) => isSafeLink(url) || isFile(url);
  markdown.renderer.rules['image'] = (tokens, i) => `<span class="aw-picture">[picture: ${escapeText(tokens[i]!.content)}]</span>`;
  // A wide table scrolls by itself, by keyboard too.
  markdown.renderer.rules['table_open'] = () => '<div class="aw-scroll" tabindex="0" role="group" aria-label="Table">\n<table>\n';
  markdown.renderer.rules['table_close'] = () => '</table>\n</div>\n';
  // So does a long line of code.
  for (const name of ['fence', 'code_block']) {
    const rule = markdown.renderer.rules[name]!;
    markdown.renderer.rules[name] = (...args) => rule(...args).replace('<pre>', '<pre tabindex="0" role="group" aria-label="Code">');
  }
  markdown.core.ruler.push('ampwright', ({ tokens }) => {
    if (first && repeatsTitle(tokens, title)) {
      tokens.splice(0, 3);
      down = 0;
    }
    first = false;
    for (const [i, token] of tokens.entries()) {
      if (token.type === 'heading_open') token.attrSet('id', headingId(tokens[i + 1]!.content, ids));
      if (token.type === 'heading_open' || token.type === 'heading_close') token.tag = lowered(token.tag, down);
      nameFiles(token.children ?? []);
      for (const child of token.children ?? []) leadToEntry(child, places);
    }
  });
  return { render: (text) => markdown.render(readable(text)), tokens: (text) => markdown.parse(text, {}) };
}

/** Whether a link may stand on the page: to the web, to a mail address, or to a place of the page. */
export function isSafeLink(url: string): boolean {
  return /^(https?:\/\/|mailto:|#)/i.test(url.trim());
}

/** Whether a link names a file beside the sheet. */
function isFile(url: string): boolean {
  return /^[^\s:/\\#?][^\s:\\#?]*$/.test(url.trim());
}

/** The page stands alone: a link to a file becomes its text with the file's name behind it. */
function nameFiles(tokens: readonly Token[]): void {
  const files: (string | null)[] = [];
  for (const token of tokens) {
    if (token.type === 'link_open') {
      const href = String(token.attrGet('href') ?? '');
      files.push(isSafeLink(href) ? null : href);
      if (!isSafeLink(href)) asText(token, '');
    } else if (token.type === 'link_close') {
      const file = files.pop();
      if (file) asText(token, ` (${file})`);
    }
  }
}

function asText(token: Token, content: string): void {
  token.type = 'text';
  token.tag = '';
  token.nesting = 0;
  token.content = content;
}

function repeatsTitle(tokens: readonly Token[], title: string | null): boolean {
  return title !== null && tokens[0]?.type === 'heading_open' && tokens[1]?.content.trim() === title.trim();
}

function lowered(tag: string, down: number): string {
  return `h${Math.min(DEEPEST, Math.max(2, Number(tag.slice(1)) + down))}`;
}

// The fragment that a forge gives the heading, so that links in the sheet work on the page as well.
function headingId(text: string, ids: Map<string, number>): string {
  const plain = text
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}\p{Pc}\s-]/gu, '')
    .replace(/\s/g, '-');
  const count = ids.get(plain) ?? 0;
  ids.set(plain, count + 1);
  return count === 0 ? plain : `${plain}-${count}`;
}

function leadToEntry(token: Token, places: Places): void {
  if (token.type !== 'link_open') return;
  const href = String(token.attrGet('href') ?? '');
  const name = href.startsWith('#') ? decoded(href.slice(1)).split('.')[0]! : '';
  const id = name === '' ? null : places.entry(name);
  if (id !== null) token.attrSet('href', `#${id}`);
}

function decoded(fragment: string): string {
  try {
    return decodeURIComponent(fragment);
  } catch {
    return fragment;
  }
}
