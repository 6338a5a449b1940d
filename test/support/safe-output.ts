// What must hold of every page and every Markdown text that is made of a sheet: texts of the sheet stay texts.
import assert from 'node:assert/strict';
import MarkdownIt, { type Token } from 'markdown-it';

/** Nothing in the page runs, loads, sends or leads to where a page should not lead. */
export function checkPage(page: string): void {
  for (const [tag, name] of page.matchAll(/<\/?([a-zA-Z][^\s/>]*)[^>]*>/g)) {
    assert.ok(
      !/^(?:script|iframe|frame|object|embed|form|img|image|link|base|audio|video|input|button|template|foreignobject|animate|set|use)$/i.test(
        name!,
      ),
      tag,
    );
    assert.ok(
      !/\son\w+\s*=|\s(?:srcdoc|formaction|xlink:href|src|srcset|action|ping|background|poster|data)\s*=/i.test(withoutValues(tag)),
      tag,
    );
    for (const [, href] of tag.matchAll(/\shref="([^"]*)"/g)) assert.match(href!, /^(?:#|https?:\/\/|mailto:)/i, tag);
  }
  assert.match(page, /<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; /);
}

/** A tag with its attributes' values left out: what stands in quotes is no attribute. */
function withoutValues(tag: string): string {
  return tag.replace(/"[^"]*"/g, '""');
}

const forge = new MarkdownIt('default', { html: true, linkify: false });
const OWN = /^(?:<\/?(?:del|ins|details)>|<summary>[^<>]*<\/summary>|<!-- -->|\s)*$/;

/** As a forge reads it, the Markdown has no markup of HTML but our own, no links and no pictures. */
export function checkMarkdown(markdown: string): void {
  const walk = (tokens: readonly Token[]) => {
    for (const { type, content, children } of tokens) {
      assert.ok(type !== 'link_open' && type !== 'image', `a link from a text: ${content}`);
      if (type === 'html_block' || type === 'html_inline') assert.match(content, OWN);
      if (children) walk(children);
    }
  };
  walk(forge.parse(markdown, {}));
}
