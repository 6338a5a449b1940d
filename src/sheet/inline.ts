// Inside a paragraph, heading or cell: links to a fragment with their places, and the plain text that a heading shows.
import MarkdownIt from 'markdown-it';

/** A link `[text](#fragment)` by offsets in the inline text that holds it. */
export interface FragmentLink {
  readonly start: number;
  readonly end: number;
  /** Between the brackets. */
  readonly textStart: number;
  readonly textEnd: number;
  /** As written, percent-encoding undone. */
  readonly fragment: string;
}

const LINK = /\[((?:[^[\]\\`<]|\\[!-/:-@[-`{-~])*)\]\(#([^\s()<>]+)(?:[ \t]+"[^"\n]*")?\)/y;

const markdown = new MarkdownIt('commonmark', { html: true });
// markdown-it keeps no places inside a line, so a rule of our own takes these links where its link rule would: never in code,
// HTML, escapes or addresses, which other rules have taken by then.
markdown.inline.ruler.before('link', 'fragment', (state, silent) => {
  LINK.lastIndex = state.pos;
  const found = LINK.exec(state.src);
  if (!found || LINK.lastIndex > state.posMax) return false;
  const textStart = state.pos + 1;
  const link = { start: state.pos, end: LINK.lastIndex, textStart, textEnd: textStart + found[1]!.length, fragment: decoded(found[2]!) };
  if (!silent) {
    (state.env as { links: FragmentLink[] }).links.push(link);
    state.push('text', '', 0).content = found[1]!;
  }
  state.pos = link.end;
  return true;
});

/** The links to fragments in an inline text, in order. */
export function fragmentLinks(text: string): readonly FragmentLink[] {
  if (!text.includes('](#')) return [];
  const env = { links: [] as FragmentLink[] };
  markdown.parseInline(text, env);
  return env.links;
}

/** What an inline text shows, without its markup. */
export function shownText(text: string): string {
  const [token] = markdown.parseInline(text, { links: [] });
  return (token?.children ?? []).map((child) => (child.type === 'text' || child.type === 'code_inline' ? child.content : '')).join('');
}

function decoded(fragment: string): string {
  try {
    return decodeURIComponent(fragment);
  } catch {
    return fragment;
  }
}
