// The comment for a pull request, as a forge shows it.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import MarkdownIt from 'markdown-it';
import { comparisonsMarkdown, LONGEST_COMMENT } from '../../../src/report/comparison/markdown.ts';
import { golden } from '../../support/golden.ts';
import { FULL, LONG, MARKUP, NOTHING, SEVERAL } from './compared.ts';

/** As GitHub renders a comment: HTML is let through (and filtered by it), plain addresses become links. */
const render = (text: string) => new MarkdownIt({ html: true, linkify: true }).enable('strikethrough').render(text);

describe('a comparison as Markdown', () => {
  it('reads well', () => {
    golden(join(import.meta.dirname, 'golden/full.md'), comparisonsMarkdown(FULL));
    golden(join(import.meta.dirname, 'golden/several.md'), comparisonsMarkdown(SEVERAL));
    golden(join(import.meta.dirname, 'golden/nothing.md'), comparisonsMarkdown(NOTHING));
  });

  it('shows the worst first and folds what is only a consequence', () => {
    const html = render(comparisonsMarkdown(FULL));
    const titles = [...html.matchAll(/<(?:h4|summary)>(.*?)<\//g)].map(([, title]) => title!.replace(/ \(\d+\)/, ''));
    assert.deepEqual(titles, [
      'New errors and warnings',
      'Results that have no value any more',
      'Requirements',
      'Choices',
      'Inputs',
      'Functions',
      'Tables',
      'Other lines',
      'Results that changed although their own line did not',
      'Margins that moved',
      'Title block',
      'Prose',
    ]);
    assert.deepEqual(
      [...html.matchAll(/<summary>([^(]*) \(/g)].map(([, title]) => title),
      titles.slice(8),
    );
  });

  it('tables have as many cells in each row as heads', () => {
    for (const comparisons of [FULL, SEVERAL, MARKUP, LONG]) {
      for (const [table] of render(comparisonsMarkdown(comparisons)).matchAll(/<table>[\s\S]*?<\/table>/g)) {
        const [head, ...rows] = [...table.matchAll(/<tr>[\s\S]*?<\/tr>/g)].map(([row]) => row.match(/<t[hd][ >]/g)!.length);
        assert.ok(
          rows.every((count) => count === head),
          table,
        );
      }
      // A row that is broken would stand outside of any table.
      assert.doesNotMatch(render(comparisonsMarkdown(comparisons)), /<p>[^<]*\|/);
    }
  });

  it('no text of a sheet becomes markup, a link, a mention or a formula', () => {
    const html = render(comparisonsMarkdown(MARKUP));
    const tags = new Set([...html.matchAll(/<\/?([a-z0-9]+)/g)].map(([, tag]) => tag));
    assert.deepEqual([...tags].sort(), [
      'code',
      'del',
      'details',
      'h2',
      'h3',
      'h4',
      'ins',
      'p',
      'strong',
      'summary',
      'table',
      'tbody',
      'td',
      'th',
      'thead',
      'tr',
    ]);
    const outsideCode = html.replace(/<code>[\s\S]*?<\/code>/g, '');
    assert.doesNotMatch(outsideCode, /[@#](?=[a-z0-9])|https?:|www\./);
    assert.equal(html.match(/<details>/g)!.length, html.match(/<\/details>/g)!.length);
  });

  it('stays within the length of a comment, keeps the worst, and says what is left out', () => {
    const whole = comparisonsMarkdown(LONG, Number.MAX_SAFE_INTEGER);
    assert.ok(whole.length > 2 * LONGEST_COMMENT);
    assert.doesNotMatch(whole, /Cut here/);
    for (const longest of [LONGEST_COMMENT, 20_000, 3000, 800]) {
      const text = comparisonsMarkdown(LONG, longest);
      assert.ok(text.length <= longest, `${text.length} of ${longest}`);
      assert.match(text, new RegExp(`Cut here: a comment holds ${longest} characters, and \\d+ more parts do not fit`));
      const html = render(text);
      assert.equal(html.match(/<details>/g)?.length, html.match(/<\/details>/g)?.length);
      if (longest > 3000) assert.match(text, /holds → fails/);
    }
  });

  it('the same comparisons give the same text', () => {
    assert.equal(comparisonsMarkdown(FULL), comparisonsMarkdown(FULL));
  });
});
