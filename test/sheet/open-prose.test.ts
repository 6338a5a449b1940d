// Prose that would swallow what follows it is closed first.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { closingLine } from '../../src/sheet/open-prose.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { calcCells } from '../../src/sheet/sheet.ts';
import { markdownish } from './support.ts';

describe('the line that closes a prose cell', () => {
  const check = (prose: string, line: string) => assert.equal(closingLine(prose), line);
  it('is empty where nothing is open', () => {
    for (const prose of ['', 'Text.', '# T\n\n- a\n  - b', '> ```\n> a', '```\na\n```', '<!-- a -->', '| a |\n| - |', '<div>', '    a'])
      check(prose, '');
  });
  it('ends a fence as it began', () => {
    check('```\na', '```');
    check('a\n~~~~ python', '~~~~');
    check('```` \n```', '````');
  });
  it('ends a comment and raw HTML', () => {
    check('<!-- a', '-->');
    check('<pre>\n\na', '</pre>');
    check('<?php', '?>');
    check('<![CDATA[', ']]>');
  });
  it('lets a calc block follow any prose', () => {
    fc.assert(
      fc.property(markdownish, (text) => {
        const prose = readSheet(text).cells.at(-1)?.text ?? '';
        const line = closingLine(prose);
        const closed = line === '' ? prose : `${prose}\n${line}`;
        const sheet = readSheet(`# T\n\n${closed}\n\n\`\`\`ampwright\nlast = 1\n\`\`\`\n`);
        assert.equal(calcCells(sheet).at(-1)?.text ?? 'last = 1', 'last = 1');
        assert.ok(calcCells(sheet).length > 0 || sheet.conflicts.length > 0);
      }),
      { numRuns: 500 },
    );
  });
});
