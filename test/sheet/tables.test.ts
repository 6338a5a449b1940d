// Tables of a sheet: captions, heads, cells, and the exact place of whatever could not be read.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { readSheet } from '../../src/sheet/read-sheet.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import type { Cell, ColumnType, Table } from '../../src/sheet/table.ts';
import type { Problem } from '../../src/text/problem.ts';
import { markdownish } from './support.ts';

/** `name / unit: cell, cell`; an absent cell is `-`, one that could not be read `!`, values are in coherent SI. */
function outline(table: Table): string[] {
  return table.columns.map(
    (column) => `${column.broken ? '!' : ''}${column.name}${suffix(column.type)}: ${column.cells.map(shown).join(', ')}`,
  );
}

function suffix(type: ColumnType): string {
  return type.kind === 'text' ? '' : type.kind === 'date' ? ' / date' : ` / ${type.unit.text || '1'}`;
}

function shown({ value, bounds }: Cell): string {
  const text = value === null ? '-' : value === undefined ? '!' : `${value}`;
  return bounds ? `${text} ± ${Number(bounds.halfWidth.toPrecision(12))}` : text;
}

function told(problems: readonly Problem[], text: string): string[] {
  return problems.map((p) => `${text.slice(p.at.start, p.at.end)}: ${p.message}`);
}

/** Reads the lines as a sheet with one table under the caption `Table t — T`. */
function check(rows: readonly string[], columns: readonly string[], problems: readonly string[] = []): void {
  const text = ['Table t — T', '', ...rows, ''].join('\n');
  const sheet = readSheet(text);
  assert.deepEqual(sheet.tables.map(outline)[0], columns);
  assert.deepEqual(told(sheet.problems, text), problems);
  for (const { cells, at } of sheet.tables[0]!.columns) {
    assert.ok(text.slice(at.start, at.end).length > 0);
    for (const cell of cells)
      if (cell.text !== '' && !/[|\\]/.test(cell.text))
        assert.equal(text.slice(cell.at.start, cell.at.end).replaceAll('\\', ''), cell.text);
  }
}

/** Reads lines as a sheet and compares the tables by name, caption, source and path. */
function captions(lines: readonly string[], found: readonly string[], problems: readonly string[] = []): Sheet {
  const text = lines.join('\n');
  const sheet = readSheet(text);
  const all = [...sheet.tables, ...sheet.csvTables].map(
    (t) => `${t.name}: ${t.caption}${t.source ? ` <${t.source.kind} ${t.source.text}>` : ''}${t.path ? ` (${t.path})` : ''}`,
  );
  assert.deepEqual(all, found);
  assert.deepEqual(told(sheet.problems, text), problems);
  return sheet;
}

const pipe = ['| a |', '| - |', '| x |'];

describe('a table', () => {
  it('is a pipe table under a line `Table NAME — caption`', () => {
    for (const dash of ['—', '–', '--', '-'])
      captions([`Table contactors ${dash} Contactor range`, '', ...pipe], ['contactors: Contactor range']);
    captions(['Text.', 'Table contactors — Range', ...pipe], ['contactors: Range']);
  });
  it('may have a source at the end of its caption', () => {
    captions(
      ['Table t — Range, invented  from datasheet "invented \\"so\\""', '', ...pipe],
      ['t: Range, invented <datasheet invented "so">'],
    );
    captions(['Table t — Values from the maker', '', ...pipe], ['t: Values from the maker']);
    captions(
      ['Table t — X from datasheet our range', '', ...pipe],
      ['t: X from datasheet our range'],
      ['our range: The text of a source stands in quotation marks; write `from datasheet "our range"`'],
    );
    captions(
      ['Table t — X from datashet "y"', '', ...pipe],
      ['t: X <assumption y>'],
      ['datashet: `datashet` is no kind of source; did you mean `datasheet`'],
    );
  });
  it('may stand in a CSV file that the caption links to', () => {
    const sheet = captions(
      ['Table motors — [The mill](data/motors.csv) from report "survey"', '', ...pipe],
      ['motors: The mill <report survey> (data/motors.csv)'],
    );
    assert.equal(sheet.tables.length, 0);
    captions(['Table t — [see](https://example.org/x)', '', ...pipe], ['t: [see](https://example.org/x)']);
  });
  it('has a name of the notation, Greek letters as their names', () => {
    captions(['Table η_n — T', '', ...pipe], ['eta_n: T']);
    captions(
      ['Table motor-list — T', '', ...pipe],
      [],
      [
        'motor-list: `motor-list` is no name for a table; write `motor_list`. A name has letters, digits and `_` and is no word of the notation',
      ],
    );
    captions(
      ['Table first — T', '', ...pipe],
      [],
      ['first: `first` is no name for a table. A name has letters, digits and `_` and is no word of the notation'],
    );
  });
  it('has a name of its own', () => {
    captions(
      ['Table t — A', '', ...pipe, '', 'Table t — B', '', ...pipe],
      ['t: A'],
      ['t: The table `t` stands in this sheet twice; the first one counts'],
    );
  });
  it('is not a numbered table, one without a caption, or one in a list, a comment or code', () => {
    captions(['Table 3 — Ratings', '', ...pipe, '', 'Text.', '', ...pipe], []);
    captions(
      [
        '- Table t — A',
        '',
        ...pipe.map((line) => `  ${line}`),
        '',
        '<!--',
        'Table t — A',
        '',
        ...pipe,
        '-->',
        '',
        '```',
        'Table t — A',
        '```',
      ],
      [],
    );
  });
  it('is missed where its caption stands alone', () => {
    const words = 'No table follows this caption of `t`, and it links to no CSV file; it is read as prose';
    captions(['Table t — A', '', 'Text.', '', ...pipe], [], [`Table t — A: ${words}`]);
    captions(['As in', 'Table t — A'], []);
  });
  it('spans its caption and its rows', () => {
    const text = ['a', '', 'Table t — T', '', ...pipe, '', 'b'].join('\r\n');
    const { at, nameAt } = readSheet(text).tables[0]!;
    assert.equal(text.slice(at.start, at.end), ['Table t — T', '', ...pipe].join('\r\n'));
    assert.equal(text.slice(nameAt.start, nameAt.end), 't');
  });
});

describe('a column', () => {
  it('holds texts, numbers in a unit, plain numbers or dates, as its head says', () => {
    check(
      [
        '| type | I_AC3 / A | alpha / (1/K) | n / 1 | seen / date | U/kV |',
        '| --- | --: | --: | --: | --- | --- |',
        '| K4 | 31.5 | 0.004 | 3 | 2026-09-14 | 0.1 |',
      ],
      ['type: K4', 'I_AC3 / A: 31.5', 'alpha / 1/K: 0.004', 'n / 1: 3', 'seen / date: 20710', 'U / kV: 100'],
    );
  });
  it('of temperatures holds points', () => check(['| T / degC |', '| - |', '| 25 ± 2 |'], ['T / degC: 298.15 ± 2']));
  it('may be named by any word', () => check(['| from | row |', '| - | - |', '| a | b |'], ['from: a', 'row: b']));
  it('whose head is no name is left out, the others stay', () => {
    check(
      ['| I AC3 / A | b | |', '| - | - | - |', '| 1 | x | y |'],
      ['b: x'],
      [
        'I AC3 / A: `I AC3` is no name, so this column is left out; a head is a name, `name / unit` or `name / date`, such as `I_AC3 / A`',
        ': This column has no name, so it is left out',
      ],
    );
  });
  it('whose unit stands in brackets or behind a comma is told the form', () => {
    const meant = (head: string, instead: string) =>
      check(
        [`| a | ${head} |`, '| - | - |', '| x | 1 |'],
        ['a: x'],
        [
          `${head}: \`${head}\` is no name, so this column is left out; a head is a name, \`name / unit\` or \`name / date\`, such as \`${instead}\``,
        ],
      );
    meant('I_n (A)', 'I_n / A');
    meant('I_n [A]', 'I_n / A');
    meant('I_n, A', 'I_n / A');
    meant('Rated I (A)', 'Rated_I_A_');
  });
  it('whose unit is wrong has a name and no values, the others stay', () => {
    check(
      ['| a / Amp | b |', '| - | - |', '| 1 | x |'],
      ['!a / 1: !', 'b: x'],
      ['Amp: Unknown unit `Amp`; did you mean `A`. Nothing in this column is read'],
    );
    check(
      ['| a / W/m²/K |', '| - |', '| 1 |'],
      ['!a / 1: !'],
      ['W/m²/K: Unknown unit `W/m²/K`; did you mean `W/(m²·K)`. Nothing in this column is read'],
    );
    check(
      ['| a / N m |', '| - |', '| 1 |'],
      ['!a / 1: !'],
      ['N m: Unknown unit `N m`; did you mean `N·m`. Nothing in this column is read'],
    );
    check(['| a / |', '| - |', '| 1 |'], ['!a / 1: !'], ['a /: A unit is missing behind the `/`; numbers without a unit have `1` there']);
  });
  it('that stands twice counts once, also under its other spelling', () => {
    check(
      ['| η / % | eta / % |', '| - | - |', '| 92.4 | 91 |'],
      ['eta / %: 0.924'],
      ['eta / %: The column `eta` stands here twice; the first one counts'],
    );
  });
});

describe('a cell', () => {
  const number = (text: string, value: string, problem?: string, unit = 'A') => {
    check(
      [`| I / ${unit} |`, '| - |', `| ${text} |`],
      [`I / ${unit}: ${value}`],
      problem === undefined ? [] : [`${text}: Row 1, column \`I\`: ${problem}`],
    );
  };
  it('is a number as the notation writes it', () => {
    number('31.5', '31.5');
    number('-1.5e-3', '-0.0015');
    number('−2', '-2');
    number('0', '0');
  });
  it('may have limits: in the unit of its head, or in percent of itself', () => {
    number('40 ± 2', '40 ± 2');
    number('40+/-0.5', '40 ± 0.5');
    number('-40 ± 5 %', '-40 ± 2');
    number('40 ± 5%', '0.04 ± 0.002', undefined, 'mA');
    number('92.4 ± 0.5', '0.924 ± 0.005', undefined, '%');
    number('92.4 ± 0.5 %', '0.924 ± 0.005', undefined, '%');
    number('25 ± 2 %', '!', 'a point of temperature has no percent; give the half-width as a difference', 'degC');
    number('40 ± x', '!', '`x` behind ± is neither a number nor a number with %');
    number('40 ± -1', '!', 'a half-width is not negative');
    number('± 1', '!', 'a number is missing in front of ±');
  });
  it('that is a number where the head names no unit is a text, and the head is told', () => {
    const told =
      'I: Every cell of `I` is a number, but its head names no unit, so they are read as texts; write `I / A` or the like, `I / 1` for plain numbers';
    check(
      ['| type | I |', '| - | - |', '| K4 | 31.5 |', '| K5 | 40 ± 2 % |', '| K6 | |'],
      ['type: K4, K5, K6', 'I: 31.5, 40 ± 2 %, -'],
      [told],
    );
    check(['| type | I |', '| - | - |', '| K4 | 31.5 |', '| K5 | as K4 |'], ['type: K4, K5', 'I: 31.5, as K4']);
  });
  it('that is empty or – is not given, never zero', () => {
    check(['| a | b / A | c / date |', '| - | - | - |', '|  | | – |', '| – | – | |'], ['a: -, -', 'b / A: -, -', 'c / date: -, -']);
  });
  it('that is no number says why and what to write', () => {
    number('1,5', '!', 'the decimal sign is a point; write `1.5`');
    number('1,500,000', '!', 'the decimal sign is a point; write `1500000`');
    number('1 500', '!', 'a number has no spaces, marks or leading zeros in it; write `1500`');
    number('007', '!', 'a number has no spaces, marks or leading zeros in it; write `7`');
    number('.5', '!', 'a decimal point has digits on both sides; write `0.5`');
    number('5.', '!', 'a decimal point has digits on both sides; write `5`');
    number('31.5 A', '!', 'the head gives the column the unit `A`, so a cell holds the number alone; write `31.5`');
    number('31.5 mA', '!', 'the head gives the column the unit `A`, so a cell holds the number alone');
    number('3 pcs', '!', 'the head gives the column no unit, so a cell holds the number alone', '1');
    number('n/a', '!', '`n/a` is no number; leave the cell empty, or write –, where the value is not given');
    number('1e999', '!', '`1e999` is outside the range of numbers that can be calculated with');
  });
  it('that is no date says why', () => {
    const date = (text: string, problem: string) =>
      check(['| d / date |', '| - |', `| ${text} |`], ['d / date: !'], [`${text}: Row 1, column \`d\`: ${problem}`]);
    date('2026-02-30', 'there is no date 2026-02-30');
    date('2026-9-14', 'a date has two digits each for month and day; write `2026-09-14`');
    date('14.9.2026', '`14.9.2026` is no date as in `2026-09-14`');
  });
  it('that could not be read is named by row and column, the others stay', () => {
    check(
      ['| type | I / A |', '| - | - |', '| K4 | 31.5 |', '| K5 | forty |', '| K6 | 50 |'],
      ['type: K4, K5, K6', 'I / A: 31.5, !, 50'],
      ['forty: Row 2 (`K5`), column `I`: `forty` is no number; leave the cell empty, or write –, where the value is not given'],
    );
  });
  it('has the escapes of Markdown undone', () =>
    check(['| a | b\\_c |', '| - | - |', '| x \\| y | \\* \\\\ |'], ['a: x | y', 'b_c: * \\']));
  it('of a row with too many or too few cells is not read', () => {
    check(
      ['| a | b / A |', '| - | - |', '| x | 1 | 2 |', '| y |', '| z | 3 |'],
      ['a: !, !, z', 'b / A: !, !, 3'],
      [
        '| x | 1 | 2 |: Row 1 (`x`) has 3 cells and the head 2, so nothing in this row is read; a `|` inside a text is written `\\|`',
        '| y |: Row 2 (`y`) has 1 cell and the head 2, so nothing in this row is read; a `|` inside a text is written `\\|`',
      ],
    );
  });
  it('is reported twenty times a table, the rest is counted', () => {
    const text = ['Table t — T', '', '| a / A |', '| - |', ...Array.from({ length: 50 }, () => '| x |')].join('\n');
    const { problems } = readSheet(text);
    assert.equal(problems.length, 21);
    assert.equal(problems.at(-1)?.message, '30 more cells and rows of `t` could not be read');
  });
});

describe('tables in any text', () => {
  it('have columns of equal length and places inside the text', () => {
    const cells = fc.constantFrom(
      '1',
      'x',
      '',
      '–',
      '1 ± 2 %',
      '1,5',
      'a\\|b',
      '\\',
      '`|`',
      '2026-01-01',
      'é',
      '1e400',
      '± ',
      'constructor',
    );
    const heads = fc.constantFrom('a', 'b / A', 'c / date', 'd / %', 'e / xx', '__proto__', 'constructor / 1', '/', '', 'T / degC');
    const line = (of: fc.Arbitrary<string>) => fc.array(of, { minLength: 1, maxLength: 4 }).map((its) => `| ${its.join(' | ')} |`);
    const table = fc.tuple(line(heads), fc.array(line(cells), { maxLength: 4 })).map(([head, rows]) => {
      const rule = head.replaceAll(/[^|]+/g, ' - ');
      return ['Table t — T', '', head, rule, ...rows, ''].join('\n');
    });
    fc.assert(
      fc.property(fc.oneof(table, markdownish), (text) => {
        const sheet = readSheet(text);
        for (const { columns, rowCount, at } of sheet.tables) {
          assert.ok(at.end <= text.length);
          for (const column of columns) {
            assert.equal(column.cells.length, rowCount);
            for (const cell of column.cells) {
              assert.ok(cell.at.start <= cell.at.end && cell.at.end <= text.length);
              assert.ok(typeof cell.value !== 'number' || Number.isFinite(cell.value));
              assert.ok(column.type.kind === 'text' ? typeof cell.value !== 'number' : typeof cell.value !== 'string');
            }
          }
        }
        for (const { at } of sheet.problems) assert.ok(0 <= at.start && at.start <= at.end && at.end <= text.length);
      }),
      { numRuns: 1000 },
    );
  });
});
