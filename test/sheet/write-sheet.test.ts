// Results in the file: how they are written and read back, and that nothing else moves.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import { type ResultRow, readResults, sameResults, writeResults } from '../../src/sheet/results-block.ts';
import { calcCells } from '../../src/sheet/sheet.ts';
import { writeSheet } from '../../src/sheet/write-sheet.ts';
import { markdownish } from './support.ts';

const row = (result: string, value = '', note = ''): ResultRow => ({ result, value, note });
const I_n = row('I_n', '34.40 A');
const shall = row('shall I_n <= K.I_AC3', '34.40 A ≤ 40 A', 'holds, 14 % in hand');

describe('a results block', () => {
  it('is a pipe table between two comments', () => {
    assert.equal(
      writeResults([I_n, shall], '\n'),
      `<!-- results -->
| result | value | note |
| :-- | --: | :-- |
| I_n | 34.40 A | |
| shall I_n <= K.I_AC3 | 34.40 A ≤ 40 A | holds, 14 % in hand |
<!-- end results -->`,
    );
  });
  const check = (cell: string, written: string) => {
    assert.equal(writeResults([row(cell)], '\n').split('\n')[3], `| ${written} | | |`);
    assert.equal(readResults(writeResults([row(cell)], '\n'))?.[0]?.result, cell);
  };
  it('escapes what Markdown would read as its own', () => {
    check('a | b', 'a \\| b');
    check('a \\| `b`', 'a \\\\\\| \\`b\\`');
    check('<!-- end results -->', '\\<!-- end results -->');
    check('<b>x</b> &lt; 3 < 4 <= 5 & R&D', '\\<b>x\\</b> \\&lt; 3 < 4 <= 5 & R&D');
    check('2 * x, 2*x, _x_1 and x_1', '2 * x, 2\\*x, \\_x_1 and x_1');
    check('[a](b) [34.40 A, 3 A] ~~a~~', '[a\\](b) [34.40 A, 3 A] \\~~a\\~~');
    check('\\', '\\\\');
  });
  it('has a line break as one space', () => {
    for (const end of ['\n', '\r\n', '\r', '\u2028', '\n\n'])
      assert.equal(writeResults([row(`a${end}b`)], '\n').split('\n')[3], '| a b | | |');
  });
  it('reads back as it was written, whatever the texts', () => {
    const clean = (text: string) => text.replace(/[\r\n\v\f\u0085\u2028\u2029]+/g, ' ').replace(/^[ \t]+|[ \t]+$/g, '');
    const texts = fc.oneof(fc.string(), fc.string({ unit: 'binary' }), fc.stringMatching(/^[\\|`<!&;*_~[\]()\- a-c\n]*$/));
    const rows = fc.array(fc.record({ result: texts, value: texts, note: texts }));
    fc.assert(
      fc.property(rows, fc.constantFrom('\n' as const, '\r\n' as const, '\r' as const), (given, lineEnd) => {
        const read = readResults(writeResults(given, lineEnd));
        assert.deepEqual(
          read,
          given.map((r) => row(clean(r.result), clean(r.value), clean(r.note))),
        );
        assert.ok(sameResults(read ?? [], given));
      }),
      { numRuns: 1000 },
    );
  });
});

/** Records rows by cell into the lines of `before`, joined by `end`. */
function check(before: readonly string[], rows: readonly (readonly ResultRow[] | undefined)[], after: readonly string[], end = '\n'): void {
  const results = new Map(rows.flatMap((its, i) => (its ? [[i, its] as const] : [])));
  const written = writeSheet(readSheet(before.join(end)), { results });
  assert.equal(written, after.join(end));
  assert.equal(writeSheet(readSheet(written), { results }), written);
}

describe('recording results', () => {
  const block = ['```ampwright', 'I_n: A = 1', '```'];
  const written = ['<!-- results -->', '| result | value | note |', '| :-- | --: | :-- |', '| I_n | 34.40 A | |', '<!-- end results -->'];

  it('puts them under their block, a blank line between', () => {
    check(['# T', ...block, '', 'Text.', ''], [[I_n]], ['# T', ...block, '', ...written, '', 'Text.', '']);
    check([...block, 'Text.'], [[I_n]], [...block, '', ...written, 'Text.']);
  });
  it('adds no last line end where the file has none', () => check(block, [[I_n]], [...block, '', ...written]));
  it('keeps the line ends of the file', () => {
    for (const end of ['\r\n', '\r']) check([...block, ''], [[I_n]], [...block, '', ...written, ''], end);
  });
  it('replaces what is there and leaves the other blocks alone', () => {
    const old = written.map((line) => line.replace('34.40', '30'));
    check([...block, '', ...old, '', ...block, '', ...old], [[I_n]], [...block, '', ...written, '', ...block, '', ...old]);
  });
  it('removes them where there is nothing to show, and gives back the file as it was before them', () => {
    check([...block, '', ...written, '', 'b'], [[]], [...block, '', 'b']);
    check([...block, '', ...written], [[]], block);
  });
  it('leaves a block that says the same as a formatter has put it', () => {
    const padded = [
      written[0]!,
      '',
      '| result |   value | note |',
      '| :----- | ------: | :--- |',
      '| I_n    | 34.40 A |      |',
      '',
      written[4]!,
    ];
    check([...block, ...padded, 'b'], [[I_n]], [...block, ...padded, 'b']);
  });
  it('writes anew what was not closed, what has a foreign head, and what a merge left in conflict', () => {
    check([...block, '', ...written.slice(0, 4), '', 'b'], [[I_n]], [...block, '', ...written, '', 'b']);
    check([...block, '', written[0]!, '| a |', written[4]!], [[I_n]], [...block, '', ...written]);
    const conflict = ['<<<<<<< HEAD', '| I_n | 1 A | |', '=======', '| I_n | 2 A | |', '>>>>>>> b'];
    check([...block, '', ...written.slice(0, 3), ...conflict, written[4]!], [[I_n]], [...block, '', ...written]);
  });
  it('leaves a file with conflict markers elsewhere as it is', () => {
    const lines = [...block, '', '<<<<<<< HEAD', 'a', '=======', 'b', '>>>>>>> c', '', ...block];
    check(lines, [[I_n], [I_n]], lines);
  });
  it('leaves a block that is not closed as it is', () => check(block.slice(0, 2), [[I_n]], block.slice(0, 2)));

  const rowsFor = fc.array(fc.record({ result: fc.string(), value: fc.string(), note: fc.string() }), { maxLength: 3 });
  it('changes nothing else, in any text, and a second time changes nothing', () => {
    fc.assert(
      fc.property(markdownish, fc.array(rowsFor, { minLength: 1, maxLength: 4 }), (text, rows) => {
        const before = readSheet(text);
        const results = new Map(calcCells(before).map((cell) => [cell.number, rows[cell.number % rows.length]!]));
        const written = writeSheet(before, { results });
        const after = readSheet(written);
        assert.equal(writeSheet(after, { results }), written);
        assert.deepEqual(
          after.cells.map((cell) => [cell.kind, cell.text]),
          before.cells.map((cell) => [cell.kind, cell.text]),
        );
        assert.equal(after.lead, before.lead);
        if (before.conflicts.length > 0) assert.equal(written, text);
        else
          for (const cell of calcCells(after)) if (cell.closed) assert.ok(sameResults(cell.results?.rows ?? [], results.get(cell.number)!));
      }),
      { numRuns: 1000 },
    );
  });
  it('gives the same bytes back where the results are those of the file', () => {
    fc.assert(
      fc.property(markdownish, (text) => {
        const sheet = readSheet(text);
        const results = new Map(
          calcCells(sheet).flatMap((cell) => (cell.results?.rows?.length ? [[cell.number, cell.results.rows] as const] : [])),
        );
        assert.equal(writeSheet(sheet, { results, valueText: (value) => value.text }), text);
      }),
    );
  });
});
