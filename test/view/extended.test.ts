// Tables with computed columns: what is read, what is computed, all rows of it.
import assert from 'node:assert/strict';
import { ledger } from '../../src/view/ledger.ts';
import type { ColumnRow } from '../../src/view/model.ts';
import { textOf, toHtml } from '../../src/view/node.ts';
import { toView } from '../../src/view/to-view.ts';
import { evaluated, mathText, rowsOf } from '../support/shown.ts';

const MOTORS = `Table motors — Motors, invented  from drawing "invented"

| tag | P / kW | I / A | T / degC |
| --- | --: | --: | --: |
| M-12 | 18.5 | 34.5 ± 2 % | 40 |
| M-20 | 22 | 39.8 | 45 |
`;

const plain = (text: string | null) => text?.replaceAll('\u00A0', ' ') ?? null;

/** The extended table in lines: heads, then rows; computed columns behind `‖`. */
function drawn(code: string, before = MOTORS): readonly (string | null)[] {
  return rowsOf(code, before)
    .filter((row): row is ColumnRow => row.kind === 'column')
    .map(({ extended: e }) => {
      if (e === null) return null;
      const heads = e.heads.map((h) => `${h.computed ? '‖ ' : ''}${mathText([h.symbol])}${h.unit && `/${h.unit}`}`);
      return [[e.label, ...heads], ...e.lines.map((l) => [l.label, ...l.cells.map((c) => plain(c.text) ?? '–')])]
        .map((line) => line.join(' | '))
        .join('\n');
    });
}

describe('a table with computed columns', () => {
  it('shows the columns that are read, and behind them those that are computed, with units in the heads', () => {
    assert.deepEqual(drawn('motors.double: A = 2 * I'), ['tag | I/A | ‖ double/A\nM-12 | 34.50 ± 0.69 | 69.0 ± 1.4\nM-20 | 39.8 | 79.60']);
  });

  it('stands once, behind the last of its columns in a cell', () => {
    const [first, second] = drawn('motors.a = 2 * I\nmotors.b = if P > 20 kW then "large" else "small"');
    assert.equal(first, null);
    assert.match(second!, /^tag \| P\/kW \| I\/A \| ‖ a\/A \| ‖ b\nM-12 \| 18\.5 \| .* \| small\nM-20 \| 22 \| .* \| large$/);
  });

  it('writes a width in another unit with its unit', () => {
    assert.match(drawn('motors.t: degC = T + k\nk = 5 K ± 1 K')[0]!, /‖ t\/°C\nM-12 \| 40 \| 45\.0 ± 1\.0 K/);
  });

  it('has no value where a row can not be calculated', () => {
    assert.match(drawn('motors.x = 1 / (I - 39.8 A)')[0]!, /M-20 \| 39\.8 \| –$/);
  });

  it('calls rows by their first column where the table has no texts', () => {
    const numbers = 'Table ns — Numbers, invented  from drawing "invented"\n\n| n / 1 |\n| --: |\n| 3 |\n| 4 |\n';
    assert.deepEqual(drawn('ns.twice = 2 * n', numbers), ['n | ‖ twice\n3 | 6.000\n4 | 8.000']);
  });

  it('is not there where nothing was calculated', () => {
    assert.deepEqual(drawn('motors.a = 2 * nothing'), [null]);
  });

  it('counts the rows that it does not show', () => {
    const many = `Table ns — Numbers, invented  from drawing "invented"\n\n| n / 1 |\n| --: |\n${Array.from({ length: 620 }, (_, i) => `| ${i} |`).join('\n')}\n`;
    const [cell] = toView(evaluated('ns.twice = 2 * n', many).result).cells;
    const html = toHtml(ledger(cell!));
    assert.equal(html.match(/<tr><th scope="row">/g)!.length, 500);
    assert.match(html, /Table ns, 620 rows, the first 500/);
  });

  it('is summed up in the row of each column by its first rows', () => {
    const four = `${MOTORS}| M-31 | 7.5 | 14.8 | 40 |\n| M-32 | 3 | 6.4 | 40 |\n`;
    const words = textOf(ledger(toView(evaluated('motors.a: A = 2 * I', four).result).cells[0]!)).replaceAll('\u00A0', ' ');
    assert.match(words, /M-12 69\.0 A ± 1\.4 A.*M-20 79\.60 A.*M-31 29\.60 A.*and 1 more in the table below/);
  });
});
