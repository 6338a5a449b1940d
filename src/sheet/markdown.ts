// The block structure of Markdown text, from markdown-it: what stands on which lines.
import MarkdownIt, { type Token } from 'markdown-it';

/** One block: lines `from` up to, not including, `to`, counted from 0. */
export interface Block {
  readonly kind: string;
  /** 0 at the margin; more inside lists and quotes. */
  readonly level: number;
  readonly from: number;
  readonly to: number;
  /** Info string of a fence. */
  readonly info: string;
  /** The characters of a fence. */
  readonly markup: string;
  /** What a paragraph or a heading holds, without its indentation and quote marks; empty for other kinds. */
  readonly content: string;
}

// HTML is on so that fences inside comments are seen for what they are; nothing here is ever rendered.
const markdown = new MarkdownIt('commonmark', { html: true }).enable('table');
markdown.core.ruler.enableOnly(['normalize', 'block']);

/** Tokens as plain records: every cell of every table makes three of them, and markdown-it's own constructor was a fifth of reading a sheet. */
markdown.block.State = class extends markdown.block.State {
  override push(type: string, tag: string, nesting: -1 | 0 | 1): Token {
    if (nesting < 0) this.level--;
    // biome-ignore format: one token
    const token = {
      type, tag, nesting, attrs: null, map: null, level: this.level, children: null,
      content: '', markup: '', info: '', meta: null, block: true, hidden: false,
    } as unknown as Token;
    if (nesting > 0) this.level++;
    this.tokens.push(token);
    return token;
  }
};

const KINDS: Readonly<Record<string, string>> = {
  paragraph_open: 'paragraph',
  heading_open: 'heading',
  table_open: 'table',
  fence: 'fence',
  html_block: 'html',
  hr: 'rule',
  code_block: 'indented code',
  bullet_list_open: 'list',
  ordered_list_open: 'list',
  blockquote_open: 'quote',
};

/**
 * The blocks of the text that start a construct, in order; those inside lists and quotes follow the one that holds them. Its first line is
 * counted as line `first`.
 */
export function readBlocks(text: string, first = 0): readonly Block[] {
  const blocks: Block[] = [];
  const tokens = markdown.parse(text, {});
  for (const [i, token] of tokens.entries()) {
    const kind = KINDS[token.type];
    if (kind === undefined || !token.map) continue;
    const inline = kind === 'paragraph' || kind === 'heading' ? tokens[i + 1] : undefined;
    const { level, info, markup } = token;
    const [from, to] = token.map;
    blocks.push({ kind, level, from: first + from, to: first + to, info: info.trim(), markup, content: inline?.content ?? '' });
  }
  return blocks;
}
