// CSV: read back by another reader, numbers as numbers, no text that a spreadsheet would take for a formula.
import assert from 'node:assert/strict';
import { parse } from 'csv-parse/sync';
import { field, sheetCsv } from '../../src/report/csv.ts';
import { evaluated } from '../support/shown.ts';

function lines(code: string): readonly Record<string, string>[] {
  return parse(sheetCsv(evaluated(code)), { columns: true, record_delimiter: '\r\n' });
}

describe('CSV', () => {
  const fields: readonly (readonly [value: string | number | null, written: string])[] = [
    ['plain', 'plain'],
    ['a, b', '"a, b"'],
    ['say "x"', '"say ""x"""'],
    ['two\nlines', '"two\nlines"'],
    ['=1+1', "'=1+1"],
    ['+1', '+1'],
    ['-5 degC', "'-5 degC"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['\t=1', "'\t=1"],
    ['=a, "b"', `"'=a, ""b"""`],
    [-5, '-5'],
    [1e-30, '1e-30'],
    [null, ''],
  ];
  for (const [value, written] of fields) it(`writes ${JSON.stringify(value)} as ${written}`, () => assert.equal(field(value), written));

  it('has a line for each entry: value, unit and uncertainty apart', () => {
    const [x, T] = lines('x = 12 mV ± 1 mV (k=2) from plate "M, 12" "drop"\nT = -5 degC');
    assert.deepEqual(
      [
        x?.['kind'],
        x?.['name'],
        Number(x?.['value']),
        x?.['unit'],
        Number(x?.['uncertainty']),
        x?.['text'],
        x?.['source'],
        x?.['description'],
        x?.['block'],
      ],
      ['input', 'x', 12, 'mV', 1, '12.0 mV ± 1.0 mV (k=2)', 'plate "M, 12"', 'drop', '1'],
    );
    assert.deepEqual([T?.['value'], T?.['text']], ['-5', "'-5 degC"]);
  });

  it('has a line for each requirement: status, both sides, margin', () => {
    const [one] = lines('shall 44 A <= 40 A because "duty" accepted by "A. Sample" until 2027-03-31 because "x"');
    const { kind, name, status, left, relation, right, margin, unit, because, accepted } = one as Record<string, string>;
    assert.deepEqual(
      [kind, name, status, left, relation, right, margin, unit, because, accepted],
      ['shall', '44 A <= 40 A', 'fails', '44', '<=', '40', '-4', 'A', 'duty', 'A. Sample'],
    );
  });

  it('tells errors', () => assert.match(lines('x = 1/0')[0]?.['error'] ?? '', /zero/));

  it('ends every line with CR LF', () => {
    const csv = sheetCsv(evaluated('x = 1'));
    assert.match(csv, /\r\n$/);
    assert.equal(csv.split('\r\n').length, 3);
  });
});
