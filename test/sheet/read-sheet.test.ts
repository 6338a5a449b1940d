// A sheet's file is cut into cells without losing a byte, whatever is in it.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import type { Sheet, SheetCell } from '../../src/sheet/sheet.ts';
import { markdownish } from './support.ts';

/** The cells in short: kind and text, with `!` behind a block that is not closed and `+` behind one with results. */
function outline(sheet: Sheet): string[] {
  return sheet.cells.map((cell) => `${label(cell)}: ${cell.text.replace(/\r\n?|\n/g, '⏎')}`);
}

function label(cell: SheetCell): string {
  if (cell.kind === 'calc') return `calc${cell.closed ? '' : '!'}${cell.results ? `+${cell.results.rows?.length ?? '?'}` : ''}`;
  return cell.kind === 'prose' && cell.conflict ? 'conflict' : cell.kind;
}

function together(sheet: Sheet): string {
  return sheet.lead + sheet.cells.map((cell) => cell.raw + cell.after).join('');
}

/** Reads `lines`, joined by LF, and compares cells and problems; the text must come back whole. */
function check(lines: string | readonly string[], cells: readonly string[], problems: readonly string[] = []): Sheet {
  const text = typeof lines === 'string' ? lines : lines.join('\n');
  const sheet = readSheet(text);
  assert.equal(together(sheet), text);
  assert.deepEqual(outline(sheet), cells);
  assert.deepEqual(
    sheet.problems.map((p) => `${p.severity} ${p.code}: ${text.slice(p.at.start, p.at.end).split(/\r\n?|\n/)[0]}`),
    problems,
  );
  return sheet;
}

const block = ['```ampwright', 'x = 1', '```'];
const results = ['<!-- results -->', '| result | value | note |', '| :-- | --: | :-- |', '| x | 1 | |', '<!-- end results -->'];

describe('the cells of a sheet', () => {
  it('are front matter, prose from heading to heading, and calc blocks with their results', () => {
    const lines = ['---', 'title: T', '---', '', '# One', '', 'Text.', '', ...block, '', ...results, '', 'More.', '## Two', 'End.', ''];
    const sheet = check(lines, ['front matter: title: T', 'prose: # One⏎⏎Text.', 'calc+1: x = 1', 'prose: More.', 'prose: ## Two⏎End.']);
    const calc = sheet.cells[2]!;
    assert.ok(calc.kind === 'calc');
    assert.equal(sheet.text.slice(calc.code.start, calc.code.end), 'x = 1');
    assert.deepEqual(calc.results?.rows, [{ result: 'x', value: '1', note: '' }]);
  });

  it('are none in an empty file, or in one of blank lines', () => {
    for (const text of ['', '\n', ' \n\t\n', '\ufeff', '\ufeff\r\n']) check(text, []);
  });

  it('split at underlined headings, not at headings in lists, quotes and code', () => {
    check(
      ['a', '', 'T', '===', 'b', '- # c', '> # d', '', '    # e', '~~~', '# f', '~~~'],
      ['prose: a', 'prose: T⏎===⏎b⏎- # c⏎> # d⏎⏎    # e⏎~~~⏎# f⏎~~~'],
    );
  });

  for (const [name, end] of [
    ['CRLF', '\r\n'],
    ['CR', '\r'],
    ['LF', '\n'],
  ] as const) {
    it(`are the same with ${name} line ends, with a byte order mark, and without a last line end`, () => {
      const lines = ['---', 'title: T', '---', '# One', ...block, '', ...results];
      for (const text of [lines.join(end), `\ufeff${lines.join(end)}${end}`]) {
        const sheet = check(text, ['front matter: title: T', 'prose: # One', 'calc+1: x = 1']);
        assert.equal(sheet.lineEnd, end);
      }
    });
  }

  it('have their code in one piece, so that a place in a block is a place in the file', () => {
    const text = 'é\r\n\r\n```ampwright\r\na = 1\r\n\r\nb = 2\r\n\r\n```\r\n';
    const cell = readSheet(text).cells[1]!;
    assert.ok(cell.kind === 'calc');
    assert.equal(cell.text, 'a = 1\r\n\r\nb = 2\r\n');
    assert.equal(text.indexOf('b = 2'), cell.code.start + cell.text.indexOf('b = 2'));
  });
});

describe('a calc block', () => {
  it('may have longer fences, tildes, and words behind its info string', () => {
    check(['````ampwright', 'a', '```', '````'], ['calc: a⏎```'], ['error fence-in-block: ```']);
    check(['~~~ ampwright', 'a', '~~~~'], ['calc: a']);
    check(['```ampwright of the coil', 'a', '```'], ['calc: a']);
  });
  it('may be empty', () => {
    check(['```ampwright', '```'], ['calc: ']);
    check(['```ampwright', '', '```'], ['calc: ']);
  });
  it('directly under a paragraph and above one is still a block', () => {
    check(['a', ...block, 'b'], ['prose: a', 'calc: x = 1', 'prose: b']);
  });
  it('inside another fence, a comment or indented code is prose', () => {
    check(['````', ...block, '````'], ['prose: ````⏎```ampwright⏎x = 1⏎```⏎````']);
    check(['<!--', ...block, '-->'], ['prose: <!--⏎```ampwright⏎x = 1⏎```⏎-->']);
    check(['a', '', ...block.map((line) => `    ${line}`)], ['prose: a⏎⏎    ```ampwright⏎    x = 1⏎    ```']);
  });
  it('in a list or a quote, or indented, is prose, with a warning', () => {
    const warning = (line: string) => [`warning block-not-at-margin: ${line}`];
    check(['- a', ...block.map((line) => `  ${line}`)], ['prose: - a⏎  ```ampwright⏎  x = 1⏎  ```'], warning('  ```ampwright'));
    check(
      block.map((line) => `> ${line}`),
      ['prose: > ```ampwright⏎> x = 1⏎> ```'],
      warning('> ```ampwright'),
    );
    check(
      block.map((line) => ` ${line}`),
      ['prose:  ```ampwright⏎ x = 1⏎ ```'],
      warning(' ```ampwright'),
    );
  });
  it('whose word is misspelt is prose, with a warning', () => {
    for (const word of ['Ampwright', 'ampwrite', 'amp-right', 'amwright', 'ampwrihgt'])
      check([`\`\`\`${word}`, '```'], [`prose: \`\`\`${word}⏎\`\`\``], [`warning info-string-near: ${word}`]);
    for (const word of ['amp', 'copyright', 'python', '']) check([`\`\`\`${word}`, '```'], [`prose: \`\`\`${word}⏎\`\`\``]);
  });
  it('in a row of a table is text of that row', () => {
    check(['| a |', '| - |', '| ```ampwright |'], ['prose: | a |⏎| - |⏎| ```ampwright |']);
  });
  it('that is not closed holds the rest of the file', () => {
    check(['```ampwright', 'x = 1', '', 'b', ''], ['calc!: x = 1⏎⏎b'], ['error block-not-closed: ```ampwright']);
    check(['```ampwright'], ['calc!: '], ['error block-not-closed: ```ampwright']);
  });
  it('whose closing fence was forgotten is named where the next one opens', () => {
    check(['```ampwright', 'x = 1', '', 'b', '', ...block], ['calc: x = 1⏎⏎b⏎⏎```ampwright⏎x = 1'], ['error fence-in-block: ```ampwright']);
  });
});

describe('a results block', () => {
  it('may have blank lines around its table, as formatters put them', () => {
    check([...block, '', results[0]!, '', ...results.slice(1, 4), '', results[4]!, 'b'], ['calc+1: x = 1', 'prose: b']);
  });
  it('without its cell stays prose, with an error', () => {
    check(['a', '', ...results, '', 'b'], [`prose: a⏎⏎${results.join('⏎')}⏎⏎b`], ['error results-without-block: <!-- results -->']);
  });
  it('that is doubled stays prose, with an error', () => {
    check([...block, ...results, ...results], ['calc+1: x = 1', `prose: ${results.join('⏎')}`], ['error results-twice: <!-- results -->']);
  });
  it('that is not closed ends with its last row', () => {
    check([...block, ...results.slice(0, 4), 'b'], ['calc+?: x = 1', 'prose: b'], ['error results-not-closed: <!-- results -->']);
    check([...block, results[0]!], ['calc+?: x = 1'], ['error results-not-closed: <!-- results -->']);
  });
  it('with a line of prose in it does not swallow that line', () => {
    check(
      [...block, ...results.slice(0, 4), 'b', results[4]!],
      ['calc+?: x = 1', 'prose: b⏎<!-- end results -->'],
      ['error results-not-closed: <!-- results -->', 'error results-end-alone: <!-- end results -->'],
    );
  });
  it('with another head or a row of another width has no rows', () => {
    check([...block, results[0]!, '| a | b | c |', ...results.slice(2)], ['calc+?: x = 1']);
    check([...block, ...results.slice(0, 3), '| x | 1 |', results[4]!], ['calc+?: x = 1']);
  });
});

describe('front matter', () => {
  it('that is not closed is prose, with an error', () => {
    check(['---', 'title: T'], ['prose: ---⏎title: T'], ['error front-matter-not-closed: ---']);
  });
  it('may be empty', () => {
    check(['---', '---'], ['front matter: ']);
  });
});

describe('conflict markers of a merge', () => {
  const conflict = (ours: string[], theirs: string[]) => ['<<<<<<< HEAD', ...ours, '=======', ...theirs, '>>>>>>> b'];
  it('make the cells that they touch prose; the others stay', () => {
    const lines = [...block, '', '# A', '```ampwright', ...conflict(['y = 2'], ['y = 3']), '```', '', '# B', ...block];
    const sheet = check(
      lines,
      ['calc: x = 1', 'prose: # A', 'conflict: ```ampwright⏎<<<<<<< HEAD⏎y = 2⏎=======⏎y = 3⏎>>>>>>> b⏎```', 'prose: # B', 'calc: x = 1'],
      ['error conflict-markers: <<<<<<< HEAD'],
    );
    assert.equal(sheet.conflicts.length, 1);
  });
  it('around headings and whole blocks keep the region in one cell', () => {
    check(
      ['# A', ...conflict(['# B', ...block], ['# C', ...block]), '', '# D'],
      ['conflict: # A⏎<<<<<<< HEAD⏎# B⏎```ampwright⏎x = 1⏎```⏎=======⏎# C⏎```ampwright⏎x = 1⏎```⏎>>>>>>> b', 'prose: # D'],
      ['error conflict-markers: <<<<<<< HEAD'],
    );
  });
  it('count when only some of them were removed', () => {
    check(['a', '<<<<<<< HEAD', 'b'], ['conflict: a⏎<<<<<<< HEAD⏎b'], ['error conflict-markers: <<<<<<< HEAD']);
    check(['a', '', '=======', 'b', '>>>>>>> c'], ['conflict: a⏎⏎=======⏎b⏎>>>>>>> c'], ['error conflict-markers: =======']);
  });
  it('in recorded results alone leave the block alive: recording settles them', () => {
    const lines = [...block, '', ...results.slice(0, 3), ...conflict(['| x | 1 | |'], ['| x | 2 | |']), results[4]!, '', 'b'];
    const sheet = check(lines, ['calc+?: x = 1', 'prose: b'], ['error results-conflict: <!-- results -->']);
    assert.deepEqual(sheet.conflicts, []);
  });
  it('are not seen in a heading of seven letters or a deep quote', () => {
    check(['Heading', '======='], ['prose: Heading⏎=======']);
    check(['>>>>>>> deep'], ['prose: >>>>>>> deep']);
  });
});

describe('any text at all', () => {
  it('is the concatenation of its cells', () => {
    fc.assert(
      fc.property(fc.oneof(markdownish, fc.string({ unit: 'binary' })), (text) => {
        const sheet = readSheet(text);
        assert.equal(together(sheet), text);
        for (const cell of sheet.cells) {
          assert.equal(text.slice(cell.at.start, cell.at.end), cell.raw);
          if (cell.kind !== 'prose') assert.equal(text.slice(cell.code.start, cell.code.end), cell.text);
        }
        for (const { at } of sheet.problems) assert.ok(0 <= at.start && at.start <= at.end && at.end <= text.length);
      }),
      { numRuns: 2000 },
    );
  });
});
