// The element tree as HTML: escaped, and nothing in it that could run, load or lead away.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { type ElementNode, element, textOf, toHtml } from '../../src/view/node.ts';

function hostile(tag: string, attributes: Record<string, string> = {}): ElementNode {
  return { tag, attributes, children: ['inside'] } as unknown as ElementNode;
}

describe('an element tree', () => {
  const rows: readonly (readonly [title: string, tree: ElementNode | string, html: string])[] = [
    ['escapes text', element('p', {}, 'a < b & "c" > d'), '<p>a &lt; b &amp; "c" &gt; d</p>'],
    ['escapes attributes', element('p', { class: '"><i>' }), '<p class="&quot;&gt;&lt;i&gt;"></p>'],
    ['leaves out attributes that are null or false', element('p', { class: null, id: false, open: true }), '<p open=""></p>'],
    ['opens lists of children and leaves out what is not there', element('p', {}, ['a', [null, 'b']], false, undefined), '<p>ab</p>'],
    ['closes no void element', element('p', {}, element('br', {}), element('wbr', {})), '<p><br><wbr></p>'],
    ['leaves out elements that it may not hold, but not their text', element('p', {}, hostile('script')), '<p>inside</p>'],
    [
      'holds no style, frame, image or form',
      element('p', {}, ...['style', 'iframe', 'img', 'form', 'input', 'object'].map((t) => hostile(t))),
      '<p>insideinsideinsideinsideinsideinside</p>',
    ],
    [
      'leaves out attributes that could run',
      hostile('p', { onclick: 'x()', style: 'x', src: 'x', 'xlink:href': 'x', 'aria-x y': 'z' }),
      '<p>inside</p>',
    ],
    [
      'leads to places of the page alone',
      element('p', {}, hostile('a', { href: 'javascript:x()' }), hostile('a', { href: 'https://x' }), hostile('a', { href: '#x' })),
      '<p><a>inside</a><a>inside</a><a href="#x">inside</a></p>',
    ],
  ];
  for (const [title, tree, html] of rows) it(title, () => assert.equal(toHtml(tree), html));

  it('never lets a text end an attribute or begin an element', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const html = toHtml(element('p', { class: text }, text));
        assert.equal(html.split('<').length, 3);
        assert.equal(html.split('"').length - 1 - (text.match(/"/g)?.length ?? 0), 2);
      }),
    );
  });

  it('gives its text', () => {
    assert.equal(textOf(element('p', {}, 'a', element('b', {}, 'c'))), 'ac');
  });
});
