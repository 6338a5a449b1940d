// The cells of a sheet in the editor, and what is written when they have been edited, added, moved or removed.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { type NotebookCell, notebookCells, sheetText } from '../../src/editor/notebook-text.ts';

const sheet = [
  '---',
  'ampwright: 1',
  '---',
  '# Starter',
  '',
  'The motor draws [34.40 A](#I_n).',
  '```ampwright',
  'I_n = 34.4 A',
  '```',
  '',
  '<!-- results -->',
  '| result | value | note |',
  '| :-- | --: | :-- |',
  '| I_n | 34.40 A | |',
  '<!-- end results -->',
  '',
  '',
  '## Check',
  '',
  '```ampwright',
  'shall I_n <= 40 A',
  '```',
].join('\n');

const calc = (text: string): NotebookCell => ({ markup: false, language: 'ampwright', text, layout: null });
const prose = (text: string): NotebookCell => ({ markup: true, language: 'markdown', text, layout: null });

/** What is written after `edit` on the cells of `text`. */
function written(text: string, edit: (cells: NotebookCell[]) => NotebookCell[]): string {
  const { cells, file } = notebookCells(text);
  return sheetText(edit([...cells]), file).text;
}
const rewrite = (text: string, index: number, code: string) =>
  written(text, (cells) => cells.map((cell, i) => (i === index ? { ...cell, text: code } : cell)));

describe('a sheet in the editor', () => {
  it('shows front matter, prose from heading to heading, and the code of each block', () => {
    const shown = notebookCells(sheet).cells.map(({ markup, language, text }) => [markup ? 'markup' : 'code', language, text]);
    assert.deepEqual(shown, [
      ['code', 'yaml', 'ampwright: 1'],
      ['markup', 'markdown', '# Starter\n\nThe motor draws [34.40 A](#I_n).'],
      ['code', 'ampwright', 'I_n = 34.4 A'],
      ['markup', 'markdown', '## Check'],
      ['code', 'ampwright', 'shall I_n <= 40 A'],
    ]);
  });

  it('shows a region with merge markers as plain text', () => {
    const text = '# A\n\n<<<<<<< ours\nx\n=======\ny\n>>>>>>> theirs\n';
    const { cells, file } = notebookCells(text);
    assert.ok(cells.some((cell) => cell.language === 'plaintext' && cell.text.includes('<<<<<<< ours')));
    assert.equal(sheetText(cells, file).text, text);
  });

  describe('is written', () => {
    const check = (what: string, actual: () => string, expected: string) => it(what, () => assert.equal(actual(), expected));

    check('byte for byte when nothing was edited', () => written(sheet, (cells) => cells), sheet);
    check(
      'with what closes prose that was left open, so that the block below stays one',
      () => rewrite(sheet, 1, '# Starter\n\n~~~\nas found'),
      sheet.replace('The motor draws [34.40 A](#I_n).', '~~~\nas found\n~~~'),
    );
    check(
      'with what closes the last prose, once a block is added below it',
      () => written('# A\n\n<!-- to do', (cells) => [...cells, calc('a = 1')]),
      '# A\n\n<!-- to do\n-->\n\n```ampwright\na = 1\n```',
    );
    check(
      'with an edited block in its fence, its results still below',
      () => rewrite(sheet, 2, 'I_n = 35 A'),
      sheet.replace('I_n = 34.4 A', 'I_n = 35 A'),
    );
    check(
      'in the line ends of its file',
      () => rewrite('# A\r\n\r\n```ampwright\r\na = 1\r\n```\r\n', 1, 'a = 1\nb = 2'),
      '# A\r\n\r\n```ampwright\r\na = 1\r\nb = 2\r\n```\r\n',
    );
    check('with code in a block that was empty', () => rewrite('```ampwright\n```\n', 0, 'a = 1'), '```ampwright\na = 1\n```\n');
    check('with a block that was emptied', () => rewrite('```ampwright\na = 1\n```\n', 0, ''), '```ampwright\n\n```\n');
    check(
      'with a longer fence around code that holds one',
      () => rewrite('```ampwright\na = 1\n```\n', 0, 'a = 1\n```\nb = 2'),
      '````ampwright\na = 1\n```\nb = 2\n````\n',
    );
    check(
      'with a cell added at the end, behind a blank line',
      () => written('# A\n', (cells) => [...cells, calc('a = 1')]),
      '# A\n\n```ampwright\na = 1\n```\n',
    );
    check(
      'with a cell added between two that stood close',
      () => written('# A\n```ampwright\na = 1\n```\n', ([head, block]) => [head!, prose('Text.'), block!]),
      '# A\n\nText.\n\n```ampwright\na = 1\n```\n',
    );
    check('with two cells that changed places', () => written('# A\n\n# B\n\n\n# C', ([a, b, c]) => [c!, a!, b!]), '# C\n\n# A\n\n# B');
    check('without a cell that was removed', () => written('# A\n\n```ampwright\na = 1\n```\n', ([head]) => [head!]), '# A\n');
    check('without a cell that holds nothing', () => written('# A\n', (cells) => [...cells, prose('')]), '# A\n');
    check(
      'with a block closed when a cell follows it',
      () => written('```ampwright\na = 1', (cells) => [...cells, prose('# B')]),
      '```ampwright\na = 1\n```\n\n# B',
    );
    check(
      'with a cell of another language as a block of that language',
      () => written('', () => [{ markup: false, language: 'python', text: 'print(1)', layout: null }]),
      '```python\nprint(1)\n```',
    );
    check(
      'as prose once a block was turned into Markdown',
      () => written('```ampwright\na = 1\n```\n', ([block]) => [{ ...block!, markup: true, language: 'markdown' }]),
      'a = 1\n',
    );
    it('with LF and a last line end where it is new', () => {
      assert.equal(sheetText([prose('# A'), calc('a = 1')], null).text, '# A\n\n```ampwright\na = 1\n```\n');
    });
  });

  it('says where the text of each cell begins', () => {
    const { cells, file } = notebookCells(sheet);
    const { text, starts } = sheetText([...cells, prose('')], file);
    assert.deepEqual(
      cells.map((cell, i) => text.slice(starts[i]!, starts[i]! + cell.text.length)),
      cells.map((cell) => cell.text),
    );
    assert.equal(starts.at(-1), null);
  });

  const line = fc.constantFrom('', '# A', 'text', '```ampwright', '```', '~~~ampwright', '~~~', 'a = 1 V', '---', '<!-- results -->', '<!-- end results -->', '| a | b |', '<<<<<<< x', '=======', '>>>>>>> y', '    code', '> ```'); // biome-ignore format: one list
  const sheetWith = (...lineEnds: string[]) =>
    fc
      .tuple(fc.constantFrom('', '\uFEFF', '\n'), fc.array(fc.tuple(line, fc.constantFrom(...lineEnds)), { maxLength: 30 }), line)
      .map(([lead, lines, last]) => lead + lines.flat().join('') + last);
  const anySheet = sheetWith('\n', '\r\n', '\r');

  it('keeps every byte of any text', () => {
    fc.assert(
      fc.property(anySheet, (text) => {
        const { cells, file } = notebookCells(text);
        assert.equal(sheetText(cells, file).text, text);
      }),
      { numRuns: 2000 },
    );
  });

  it('keeps every byte of any text when the editor has turned its line ends into LF', () => {
    fc.assert(
      fc.property(anySheet, (text) => {
        const { cells, file } = notebookCells(text);
        const normalised = cells.map((cell) => ({ ...cell, text: cell.text.replace(/\r\n?/g, '\n') }));
        assert.equal(sheetText(normalised, file).text, text);
      }),
    );
  });

  it('changes no other cell when one block is edited', () => {
    const code = fc.array(fc.constantFrom('b = 2 A', '```', '````', '~~~', '# c', ''), { maxLength: 4 }).map((lines) => lines.join('\n'));
    fc.assert(
      fc.property(sheetWith('\n', '\r\n'), code, fc.nat(), (text, edited, which) => {
        const { cells, file } = notebookCells(text);
        const blocks = cells.flatMap((cell, i) => (cell.language === 'ampwright' && cell.layout.behind !== '' ? [i] : []));
        fc.pre(blocks.length > 0);
        const index = blocks[which % blocks.length]!;
        const after = sheetText(cells.map((cell, i) => (i === index ? { ...cell, text: edited } : cell)), file); // biome-ignore format: short
        const again = notebookCells(after.text).cells;
        const shape = (all: readonly NotebookCell[]) => all.map((cell) => [cell.language, cell.text.replace(/\r\n?/g, '\n')]);
        const expected = shape(cells).map((cell, i) => (i === index ? ['ampwright', edited] : cell));
        assert.deepEqual(shape(again), expected);
      }),
    );
  });
});
