// What the rows of the ledger say: values, statuses, margins, reasons, choices, curves, records.
import assert from 'node:assert/strict';
import { toView } from '../../src/view/to-view.ts';
import { entryOf, evaluated, mathText, requirementOf, rowOf, rowsOf } from '../support/shown.ts';

const plain = (text: string | null | undefined) => text?.replaceAll('\u00A0', ' ') ?? null;

const RANGE = `Table range — Contactors, invented  from datasheet "invented"

| type | I_AC3 / A | coil |
| --- | --: | --- |
| K4 | 31.5 | 110 V AC |
| K5 | 40 | 110 V AC |
| K6 | 40 | 110 V AC |
| K7 | 63 | 24 V DC |
`;

describe('the value of an entry', () => {
  const rows: readonly (readonly [literal: string, text: string, plusMinus: string | null, coverage: string | null])[] = [
    ['18.5 kW', '18.5 kW', null, null],
    ['-5 degC', '−5 °C', null, null],
    ['0.4 mohm', '0.4 mΩ', null, null],
    ['1.3e6', '1.3·10⁶', null, null],
    ['400 V ± 2 %', '400.0 V', '± 8.0 V', null],
    ['400 V ± 8 V (k=2)', '400.0 V', '± 8.0 V', 'k = 2'],
    ['77 degF ± 2 K', '77.0 °F', '± 3.6 degR', null],
    ['readings [12.1 mV, 12.4 mV, 12.2 mV] ± 0.1 mV', '12.23 mV', '± 0.30 mV', 'k = 2.87, ν = 4'],
    ['[1 A, 2 A ± 0.1 A]', '[1 A, 2.00 A ± 0.10 A]', null, null],
    ['"K5"', 'K5', null, null],
    ['2026-09-14', '2026-09-14', null, null],
    ['yes', 'yes', null, null],
  ];
  for (const [literal, text, plusMinus, coverage] of rows) {
    it(literal, () => {
      const { value } = entryOf('x', `x = ${literal}`);
      assert.deepEqual([plain(value?.text), plain(value?.plusMinus), plain(value?.coverage)], [text, plusMinus, coverage]);
    });
  }

  it('lists the first eight of many elements', () => {
    const many = Array.from({ length: 20 }, (_, i) => `${i} A`).join(', ');
    assert.equal(plain(entryOf('x', `x = [${many}]`).value?.text)?.slice(-20), ' 7 A, … (20 values)]');
  });

  it('says when it was evaluated by shifting', () => {
    assert.equal(entryOf('y', 'x = 0 V ± 1 V\ny = sqrt(x * 1 V)').value?.remark, 'evaluated by shifting');
  });
});

describe('an entry', () => {
  it('tells its source, its description, its reason and the instrument of a reading', () => {
    const code =
      'instrument DMM_7 ± (1.5 % + 0.5 mV) serial "B41"\nx = 12.4 mV by DMM_7 on 2026-10-02 from measurement "survey" because "worst pole" "drop of pole L1"';
    const row = entryOf('x', code);
    assert.deepEqual(row.source, { kind: 'measurement', text: 'survey' });
    assert.deepEqual([row.description, row.because, row.reading], ['drop of pole L1', 'worst pole', 'read with DMM_7 on 2026-10-02']);
  });

  it('tells what it depends on and what uses it, with values', () => {
    const row = entryOf('b', 'a = 2 A\nb = 3 * a\nc = b + a\nshall b <= 10 A');
    assert.deepEqual(
      row.reads.map((l) => [l.text, plain(l.value)]),
      [['a', '2 A']],
    );
    assert.deepEqual(
      row.usedBy.map((l) => [l.text, plain(l.value), l.symbol === null]),
      [
        ['c', '8.000 A', false],
        ['shall b <= 10 A', null, true],
      ],
    );
  });

  it('has an uncertainty budget, largest share first', () => {
    const row = entryOf('R', 'U = 10 V ± 1 %\nI = 2 A ± 3 %\nR = U / I');
    assert.deepEqual(
      row.budget.map((l) => [l.input.text, plain(l.contribution), plain(l.share)]),
      [
        ['I', '0.087 Ω', '90 %'],
        ['U', '0.029 Ω', '10 %'],
      ],
    );
  });

  it('without a value says why', () => {
    assert.equal(entryOf('x', 'x = 1/0').missing, 'it has an error');
    assert.equal(entryOf('y', 'x = 1/0\ny = x + 1').missing, 'x has no value');
    assert.equal(entryOf('y', 'a = 1/0\nb = 1/0\ny = a + b').missing, 'a and b have no value');
  });

  it('carries its problems with their line, message and mends', () => {
    const [problem] = entryOf('x', 'a = 1\nx = 5 kw').problems;
    assert.deepEqual([problem?.severity, problem?.line], ['error', 2]);
    assert.match(problem!.message, /kw/);
    assert.ok(problem!.mends.length > 0);
  });
});

describe('a choice', () => {
  const row = entryOf('K', 'I = 34.4 A ± 2 %\nK = least I_AC3 of range where I_AC3 >= 1.1 * I and coil is "110 V AC"', RANGE);

  it('shows the chosen row', () => {
    assert.equal(row.role, 'choice');
    assert.deepEqual(
      row.choice?.cells.map((c) => [mathText([c.symbol]), plain(c.value)]),
      [
        ['type', 'K5'],
        ['I_{AC3}', '40 A'],
        ['coil', '110 V AC'],
      ],
    );
  });

  it('tells how many rows each part of its condition ruled out, and ties', () => {
    assert.deepEqual(row.choice?.ruledOut, [
      { condition: 'I_AC3 >= 1.1 * I', count: 1 },
      { condition: 'coil is "110 V AC"', count: 1 },
    ]);
    assert.deepEqual([row.choice?.rows, row.choice?.ties], [4, 2]);
  });

  it('says when its condition is undecided within the uncertainty', () => {
    const close = entryOf('K', 'I = 36.2 A ± 2 %\nK = least I_AC3 of range where I_AC3 >= 1.1 * I', RANGE);
    assert.equal(close.choice?.undecided, 'undecided within the uncertainty; K7 is the next row that holds with it');
  });
});

describe('a requirement', () => {
  const rows: readonly (readonly [code: string, status: string, sides: string, margin: string, uncertainty: string | null])[] = [
    ['shall 30 A <= 40 A', 'holds', '30 A ≤ 40 A', '10.00 A (25 %) in hand', null],
    ['shall 44 A <= 40 A', 'fails', '44 A ≤ 40 A', '4.000 A (10 %) short', null],
    ['shall 40 A <= 40 A', 'holds', '40 A ≤ 40 A', 'exactly at the limit', null],
    ['shall 0.1 A + 0.2 A <= 0.3 A', 'holds', '0.3000 A ≤ 0.3 A', 'exactly at the limit', null],
    ['shall 40 A != 40 A', 'fails', '40 A ≠ 40 A', '', null],
    ['shall 40 A == 40 A', 'holds', '40 A = 40 A', '', null],
    ['x = 34.4 A ± 2 %\nshall x <= 35 A', 'undecided', '34.40 A ≤ 35 A', '0.60 A (1.7 %) in hand', 'U = 0.69 A'],
    ['shall 85 degC <= 130 degC', 'holds', '85 °C ≤ 130 °C', '45.00 K in hand', null],
    ['s = "a"\nshall s is "a"', 'holds', 'a is a', '', null],
    ['shall 2026-01-01 <= 2026-02-01', 'holds', '2026-01-01 ≤ 2026-02-01', '31 d in hand', null],
  ];
  for (const [code, status, sides, margin, uncertainty] of rows) {
    it(code.replace('\n', '; '), () => {
      const row = requirementOf(code);
      const shown = row.sides && plain(`${row.sides.left.text} ${row.sides.relation} ${row.sides.right.text}`);
      assert.deepEqual([row.status, shown, plain(row.sides?.margin), plain(row.sides?.uncertainty)], [status, sides, margin, uncertainty]);
    });
  }

  it('that can not be calculated says what is missing', () => {
    const row = requirementOf('x = 1/0\nshall x <= 3');
    assert.deepEqual([row.status, row.sides, row.missing], ['not calculated', null, 'x has no value']);
  });

  it('shows on its scale which side of the limit is allowed', () => {
    const gauge = (code: string) => {
      const g = requirementOf(code).sides?.gauge;
      return g && [g.value, g.limit, g.allowed, g.fromZero];
    };
    assert.deepEqual(gauge('shall 30 A <= 40 A'), [30, 40, 'below', true]);
    assert.deepEqual(gauge('shall 90 V >= 93.5 V'), [90, 93.5, 'above', true]);
    assert.deepEqual(gauge('shall 32 A <= 34 A <= 60 A'), [34, 32, 'above', true]);
    assert.deepEqual(gauge('shall 32 A <= 58 A <= 60 A'), [58, 60, 'below', true]);
    assert.deepEqual(gauge('shall 20 degC <= 40 degC'), [20, 40, 'below', false]);
    assert.equal(gauge('shall "a" is "a"'), null);
  });

  it('shows its uncertainty on the scale in the unit of the sides', () => {
    const gauge = requirementOf('x = 12 mV ± 1 mV\nshall x <= 15 mV').sides?.gauge;
    assert.ok(Math.abs(gauge!.width - 1) < 1e-9);
  });

  it('tells its concession', () => {
    const row = requirementOf('shall 3 A <= 2 A accepted by "plant manager, A. Sample" until 2027-03-31 because "part load"');
    assert.deepEqual(row.concession, { by: 'plant manager, A. Sample', until: '2027-03-31', because: 'part load' });
    assert.equal(row.status, 'fails');
  });

  it('throughout a range shows the worst point', () => {
    const row = requirementOf('U_0 = 110 V\nshall U_0 - 10 V >= 93.5 V throughout U_0 from 104.5 V to 115.5 V');
    assert.equal(plain(row.throughout), 'throughout U_0 from 104.5 V to 115.5 V; the worst point is U_0 = 104.5 V');
    assert.equal(plain(row.sides?.left.text), '94.50 V');
  });

  it('for each row of a table lists the rows, worst first', () => {
    const row = requirementOf('shall I_AC3 <= 45 A for each range', RANGE);
    assert.equal(row.forEach, 'for each row of range');
    assert.deepEqual(
      row.rows.slice(0, 2).map((r) => [r.label, r.status]),
      [
        ['K7', 'fails'],
        ['K5', 'holds'],
      ],
    );
  });
});

describe('other rows', () => {
  it('a function has a head, its parameters with units, a formula and its needs', () => {
    const row = rowOf(
      'function',
      'f(I: A, L: m, n): V = I * 2 ohm * n * L / 1 m needs I > 0 because "a current flows" from practice "rule" "drop"',
    );
    assert.equal(mathText(row.head), 'f(I, |L, |n)');
    assert.deepEqual(
      row.parameters.map((p) => [mathText([p.symbol]), p.unit]),
      [
        ['I', 'A'],
        ['L', 'm'],
        ['n', 'number'],
      ],
    );
    assert.deepEqual([row.result, row.description, row.source?.text], ['V', 'drop', 'rule']);
    assert.deepEqual(
      row.needs.map((n) => [mathText(n.parts), n.because]),
      [['I| > 0', 'a current flows']],
    );
    assert.equal(row.formula.putIn, null);
  });

  it('a computed column has a value for each row of its table', () => {
    const row = rowOf('column', 'range.half: A = I_AC3 / 2', RANGE);
    assert.equal(mathText([row.symbol]), 'range.half');
    assert.deepEqual(
      row.values.map((v) => plain(v?.text)),
      ['15.75 A', '20.00 A', '20.00 A', '31.50 A'],
    );
  });

  it('a curve has axes, traces, marks and limits in the units of its axes', () => {
    const row = rowOf(
      'curve',
      'L_run = 60 m\ncurve 110 V - 0.05 V/m * L: V "at the coil" over L from 0 m to 500 m\n  mark L_run "this run"\n  limit 93.5 V "pick-up"',
    );
    assert.deepEqual([row.x.name, row.x.unit, row.x.from, row.x.to, row.y.unit], ['L', 'm', 0, 500, 'V']);
    assert.deepEqual(row.traces[0]?.points.at(-1), { x: 500, y: 85 });
    assert.deepEqual([row.marks[0]?.label, row.marks[0]?.x, row.marks[0]?.y], ['this run', 60, [107]]);
    assert.deepEqual([row.limits[0]?.label, row.limits[0]?.points[0]?.y], ['pick-up', 93.5]);
  });

  it('a tabulation has heads with units and cells without', () => {
    const row = rowOf('tabulation', 'tabulate 2 * L: m over L from 0 m to 2 m step 1 m');
    assert.deepEqual(
      row.heads.map((h) => h.unit),
      ['m', 'm'],
    );
    assert.deepEqual(
      row.cells.map((c) => c[1]),
      ['0', '2.000', '4.000'],
    );
  });

  it('instruments, actions and unreadable lines are recorded', () => {
    const [instrument, action, unreadable] = rowsOf(
      'instrument DMM_7 ± (1.5 % + 0.5 mV) serial "B41" calibrated 2026-03-01 due 2027-03-01\naction "Renew the poles" by "maintenance" due 2026-12-15\njunk junk',
    );
    assert.ok(instrument?.kind === 'instrument' && action?.kind === 'action' && unreadable?.kind === 'unreadable');
    assert.deepEqual([mathText(instrument.bounds), instrument.serial, instrument.due], [' ± (1.5 % + 0.5 mV)', 'B41', '2027-03-01']);
    assert.deepEqual([action.text, action.by, action.due], ['Renew the poles', 'maintenance', '2026-12-15']);
    assert.deepEqual([unreadable.written, unreadable.problems.length], ['junk junk', 1]);
  });
});

describe('the view of a sheet', () => {
  it('is plain JSON', () => {
    const view = toView(evaluated('x = 2 A ± 1 %\nshall x <= 3 A\nf(a) = a^2\ny = f(3)').result);
    assert.deepEqual(JSON.parse(JSON.stringify(view)), view);
  });

  it('has the cells that are asked for', () => {
    assert.deepEqual(
      toView(evaluated('x = 2').result, { cells: new Set([0]) }).cells.map((c) => c.cell),
      [0],
    );
    assert.deepEqual(toView(evaluated('x = 2').result, { cells: new Set() }).cells, []);
  });

  it('gives statements that read alike keys of their own', () => {
    const keys = rowsOf('shall 1 < 2\nshall 1 < 2').map((row) => row.key);
    assert.equal(new Set(keys).size, 2);
  });

  it('keeps problems that belong to no statement', () => {
    const [cell] = toView(evaluated('x = 1\n\u202E').result).cells;
    const all = [...cell!.problems, ...cell!.rows.flatMap((row) => row.problems)];
    assert.ok(all.some((p) => p.severity === 'error'));
  });
});
