// A sheet for many rows: what a row replaces, what it gets, what is wrong with it (F9).
import assert from 'node:assert/strict';
import { openBatch } from '../../src/run/batch.ts';
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { NO_FILES } from '../../src/run/files.ts';
import { openSheet } from '../../src/run/open-sheet.ts';

const inputs = ['P_n = 18.5 kW', 'U_n = 400 V ± 2 %', 'eta = 92.4 %', 'pf = 0.84', 'duty = "S1"', 'day = 2026-10-02'];
const formulas = ['I_n: A = P_n / (sqrt(3) * U_n * eta * pf)', 'x = 1 / (P_n - 22 kW)', 'shall I_n <= 40 A', 'should I_n >= 10 A'];
const sheet = (lines: readonly string[]) => `\`\`\`ampwright\n${lines.join('\n')}\n\`\`\`\n`;

function open(heads: string, lines: readonly string[] = [...inputs, ...formulas]) {
  const cells = heads.split('|').map((text) => ({ text, at: { start: 0, end: text.length } }));
  return openBatch(openSheet(sheet(lines), NO_FILES), cells);
}

function rows(heads: string, ...all: readonly string[]) {
  const { batch, problems } = open(heads);
  assert.notEqual(batch, null, problems.map((p) => p.message).join());
  return { heads: batch!.heads, rows: all.map((row) => batch!.run(row.split('|'))) };
}

describe('a sheet for many rows', () => {
  it('gives every calculated entry, the width of uncertain ones, every requirement, and what is wrong', () => {
    const wanted = ['I_n / A', 'U_of_I_n / A', 'x / (1/W)', 'shall_I_n_at_most_40_A', 'should_I_n_at_least_10_A', 'error'];
    assert.deepEqual(rows('P_n / kW').heads, wanted);
  });

  it('replaces the whole literal, its `±` included', () => {
    const [uncertain, exact] = rows('U_n / V', '400 ± 2%', '400').rows;
    assert.equal(Number(uncertain!.cells[1]).toFixed(2), '0.69');
    assert.equal(Number(exact!.cells[1]), 0);
    assert.equal(Number(uncertain!.cells[0]).toFixed(2), '34.40');
  });

  it('gives each row what the sheet itself gives with these inputs, whatever stood in the row before', () => {
    const values = [
      [18.5, 400],
      [1000, 1],
      [22.5, 380],
      [18.5, 400],
      [5, 690],
    ] as const;
    const { rows: found } = rows('P_n / kW|U_n / V', ...values.map((v) => v.join('|')));
    values.forEach(([P, U], i) => {
      const lines = [`P_n = ${P} kW`, `U_n = ${U} V`, ...inputs.slice(2), ...formulas];
      const { result } = evaluateSheet(sheet(lines));
      const I = result.entries.get('I_n')!.value;
      assert.ok(I?.kind === 'quantity');
      assert.equal(Number(found[i]!.cells[0]), I.value);
      const status = result.cells[0]!.statements.flatMap((s) => (s.kind === 'requirement' ? [s.status] : []));
      assert.deepEqual(found[i]!.cells.slice(3, 5), status);
    });
  });

  it('tells what is wrong in a row, and the next row is calculated all the same', () => {
    const { rows: found } = rows('P_n / kW|U_n / V', 'abc|400', '22|400', '18.5', '18.5|400');
    assert.match(found[0]!.errors.join(), /P_n: `abc` is no number/);
    assert.match(found[1]!.errors.join(), /x: .*zero/i);
    assert.match(found[2]!.errors.join(), /1 field.* head 2/);
    assert.deepEqual(found[3]!.errors, []);
    assert.equal(found[3]!.verdict, 'holds');
    assert.equal(found[1]!.cells[0] === null, false, 'what does not need the faulty entry has its value');
  });

  it('says whether the row holds by its `shall` alone', () => {
    const verdicts = rows('P_n / kW', '18.5', '30', '2', '21.4').rows.map((r) => r.verdict);
    assert.deepEqual(verdicts, ['holds', 'fails', 'holds', 'undecided']);
  });

  const refused: readonly (readonly [heads: string, message: RegExp])[] = [
    ['P_n / A', /`P_n`: found A, the sheet wants kW/],
    ['P_n', /`P_n`: found a text/],
    ['I_n / A', /I_n/],
    ['P_n / kW|P_n / kW', /P_n/],
    ['P_n / kww', /kww/],
  ];
  for (const [heads, message] of refused) {
    it(`refuses the heads ${heads}`, () => {
      const { batch, problems } = open(heads);
      assert.equal(batch, null);
      assert.match(problems.map((p) => p.message).join(), message);
    });
  }

  it('carries columns along that are no inputs', () => {
    assert.deepEqual(open('tag|P_n / kW|remark').batch!.carried, ['tag', 'remark']);
  });

  it('is refused where the sheet has errors that no row can mend', () => {
    const { batch, errors } = open('P_n / kW', [...inputs, ...formulas, 'broken = 1 V + 1 A']);
    assert.equal(batch, null);
    assert.deepEqual(
      errors.map((e) => e.problem.code),
      ['dimension-mismatch'],
    );
  });

  /** Each row's cells against the sheet with the row's literals written into it. */
  function sameAsSheet(heads: string, lines: (row: readonly string[]) => readonly string[], given: readonly (readonly string[])[]) {
    const { batch, problems } = open(heads, lines(given[0]!));
    assert.notEqual(batch, null, problems.map((p) => p.message).join());
    for (const row of given) {
      const { cells, errors } = batch!.run(row);
      assert.deepEqual(errors, []);
      const { result } = evaluateSheet(sheet(lines(row)));
      const wanted = result.cells[0]!.statements.flatMap((s): unknown[] => {
        if (s.kind === 'requirement') return [s.status];
        if (s.kind !== 'entry' || s.role === 'input' || s.value?.kind !== 'quantity') return [];
        return [s.value.value, s.value.uncertainty?.expanded ?? 0];
      });
      assert.deepEqual(cells.slice(0, -1), wanted, row.join());
    }
  }

  it("reads with the instrument of the input: its gain is one for all readings, its zero is each reading's own", () => {
    sameAsSheet(
      'U_a / V|U_b / V',
      ([a, b]) => [
        'instrument DMM ± (1 % + 0.1 V) serial "B41" calibrated 2026-03-01 due 2027-03-01',
        `U_a = ${a} V by DMM on 2026-10-02`,
        `U_b = ${b} V by DMM on 2026-10-02`,
        'difference: V = U_a - U_b',
        'ratio: 1 = U_a / U_b',
        'shall difference <= 3 V',
      ],
      [
        ['100', '100'],
        ['103', '100'],
        ['230', '227.5'],
        ['5', '100'],
      ],
    );
  });

  it("decides throughout a range of operation, the range's own input replaced or another one", () => {
    const lines = ([U, L]: readonly string[]) => [
      `U_0 = ${U!.replace(' ±', ' V ±')} V`,
      `L = ${L} m`,
      'U_c: V = U_0 - 0.06 V/m * L',
      'shall U_c >= 93.5 V throughout U_0 from 104.5 V to 115.5 V',
      'should U_c >= 93.5 V throughout L from 0 m to 150 m',
    ];
    sameAsSheet('U_0 / V|L / m', lines, [
      ['110 ± 0.5', '60'],
      ['110 ± 0.5', '183'],
      ['101', '184'],
      ['110', '400'],
      ['95 ± 2', '10'],
    ]);
  });
});
