// Tables in CSV files: the same heads and cells as a pipe table, RFC 4180, with the exact place of a fault.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { MAX_CSV_CHARACTERS, readCsvTable } from '../../src/sheet/csv.ts';
import { readSheet } from '../../src/sheet/read-sheet.ts';

const caption = readSheet('Table motors — [The mill](motors.csv) from report "survey"\n').csvTables[0]!;

/** Reads a file's text; compares columns as `name: values`, and problems as `place: message`. */
function check(text: string, columns: readonly string[], problems: readonly string[] = []): void {
  const read = readCsvTable(text, caption);
  assert.deepEqual(
    read.table.columns.map(
      (c) => `${c.name}: ${c.cells.map(({ value }) => (value === undefined ? '!' : value === null ? '-' : value)).join(', ')}`,
    ),
    columns,
  );
  assert.deepEqual(
    read.problems.map((p) => `${text.slice(p.at.start, p.at.end)}: ${p.message}`),
    problems,
  );
}

describe('a CSV table', () => {
  it('has the heads and cells of a pipe table, under its caption', () => {
    const { table } = readCsvTable('motor,P / kW,seen / date\nM-12,18.5,2026-10-02\nM-20,–,\n', caption);
    assert.deepEqual(
      [table.name, table.caption, table.path, table.source?.kind, table.rowCount],
      ['motors', 'The mill', 'motors.csv', 'report', 2],
    );
    check('motor,P / kW,seen / date\nM-12,18.5 ± 1 %,2026-10-02\nM-20,–,\n', ['motor: M-12, M-20', 'P: 18500, -', 'seen: 20728, -']);
  });
  it('has quoted fields, with commas, line ends and doubled quotation marks in them', () => {
    check('a,"b / A"\r\n"x, ""y""\r\nz","1"\r\n', ['a: x, "y"\r\nz', 'b: 1']);
  });
  it('may have any line ends, blank lines, a byte order mark, blanks around fields, and no last line end', () => {
    for (const end of ['\n', '\r\n', '\r']) check(`\ufeffa, b / A ${end}${end}x, 1${end}y ,2`, ['a: x, y', 'b: 1, 2']);
  });
  it('without rows has columns', () => check('a,b / A\n', ['a: ', 'b: ']));

  it('names row and column of what is no number, and marks the field', () => {
    check(
      'é,b / A\n"x, y",1\n"🙂""",forty\n',
      ['é: x, y, 🙂"', 'b: 1, !'],
      ['forty: Row 2 (`🙂"`), column `b`: `forty` is no number; leave the cell empty, or write –, where the value is not given'],
    );
    check('a,b / A\n"p,q","1,5"\n', ['a: p,q', 'b: !'], ['"1,5": Row 1 (`p,q`), column `b`: the decimal sign is a point; write `1.5`']);
  });
  it('names a ragged row, and reads the others', () => {
    check(
      'a,b\nx\ny,p\nz,1,2\n',
      ['a: !, y, !', 'b: !, p, !'],
      [
        'x: Row 1 (`x`) has 1 field and the head 2, so nothing in this row is read; a text with a comma stands in quotes',
        'z,1,2: Row 3 (`z`) has 3 fields and the head 2, so nothing in this row is read; a text with a comma stands in quotes',
      ],
    );
  });
  it('names a column that stands twice and a unit that is none', () => {
    check(
      'a,a,b / kw\np,2,3\n',
      ['a: p', 'b: !'],
      [
        'a: The column `a` stands here twice; the first one counts',
        'kw: Unknown unit `kw`; did you mean `kW`. Nothing in this column is read',
      ],
    );
  });
  it('with a quotation mark that is not closed names the mark', () => {
    check(
      'a,b\n"x",1\ny,"2\nz,3\n',
      [],
      ['"2: The file is no valid CSV (RFC 4180): the quotation mark that opens in line 3 is never closed'],
    );
  });
  it('with a stray quotation mark names the line', () => {
    check(
      'a,b\nx,1"2\n',
      [],
      [
        'x,1"2: The file is no valid CSV (RFC 4180): in line 2 a quotation mark stands inside a field that does not begin with one; put the field in quotes and double the mark inside',
      ],
    );
    check(
      'a,b\n"x"y,1\n',
      [],
      [
        '"x"y,1: The file is no valid CSV (RFC 4180): in line 2 something follows the closing quotation mark of a field; a mark inside a field in quotes is doubled',
      ],
    );
  });
  it('separated by anything but commas says so', () => {
    const rest = 'a CSV file (RFC 4180) separates them by commas and has the point as decimal sign';
    check('a;b / A\nx;1,5\n', [], [`a;b / A: The fields of this file are separated by semicolons; ${rest}`]);
    check('a\tb\n', [], [`a\tb: The fields of this file are separated by tabs; ${rest}`]);
  });
  it('in an empty file is an error', () => {
    for (const text of ['', '\ufeff', '\r\n\r\n']) check(text, [], [': The file is empty; its first line names the columns']);
  });

  it('has stated limits', () => {
    const limit = (text: string) => readCsvTable(text, caption).problems.map((p) => p.message);
    assert.deepEqual(limit(`a\n${'x\n'.repeat(100_000)}`), []);
    assert.deepEqual(limit(`a\n${'x\n'.repeat(100_001)}`), ['`motors` is too large to be read: a table has at most 100,000 rows']);
    assert.deepEqual(limit(`${'a,'.repeat(1_000)}b\n`), ['`motors` is too large to be read: a table has at most 1,000 columns']);
    assert.deepEqual(limit(`${'a,'.repeat(99)}b\n${`${','.repeat(99)}\n`.repeat(20_001)}`), [
      '`motors` is too large to be read: a table has at most 2,000,000 cells',
    ]);
    assert.deepEqual(limit('x'.repeat(MAX_CSV_CHARACTERS + 1)), [
      '`motors` is too large to be read: a table has at most 16,000,000 characters',
    ]);
    assert.equal(readCsvTable('x'.repeat(MAX_CSV_CHARACTERS + 1), caption).table.broken, true);
  });

  it('reads back whatever texts it holds, and marks every row where it stands', () => {
    const field = fc.oneof(fc.string(), fc.string({ unit: 'binary' }), fc.stringMatching(/^[",\r\n a]*$/));
    const quote = (text: string) => `"${text.replaceAll('"', '""')}"`;
    const rows = fc.array(fc.tuple(field, field), { maxLength: 8 });
    fc.assert(
      fc.property(rows, fc.constantFrom('\n', '\r\n', '\r'), (given, end) => {
        const lines = given.map((row) => row.map(quote).join(','));
        const text = ['a,b', ...lines].join(end);
        const { table, problems } = readCsvTable(text, caption);
        assert.deepEqual(problems, []);
        const clean = (its: string) => its.replace(/^[ \t]+|[ \t]+$/g, '');
        for (const i of [0, 1]) {
          assert.deepEqual(
            table.columns[i]!.cells.map((cell) => cell.text),
            given.map((row) => clean(row[i]!)),
          );
          assert.deepEqual(
            table.columns[i]!.cells.map(({ at }) => text.slice(at.start, at.end)),
            lines,
          );
        }
      }),
    );
  });
  it('never throws, on any text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.stringMatching(/^[",;\r\n\t a1./]*$/)), (text) => {
        for (const { at } of readCsvTable(text, caption).problems) assert.ok(0 <= at.start && at.start <= at.end && at.end <= text.length);
      }),
      { numRuns: 1000 },
    );
  });
});
