// Formulas with values put in, and the formulas behind calls.
import assert from 'node:assert/strict';
import { entryOf, mathText, requirementOf } from '../support/shown.ts';

const MOTOR = 'P_n = 18.5 kW\nU_n = 400 V\neta = 92.4 %\npf = 0.84\n';
const by = '\u2009';

function check(rows: readonly (readonly [title: string, code: string, formula: string, putIn: string | null])[]) {
  for (const [title, code, formula, putIn] of rows) {
    it(title, () => {
      const view = entryOf('x', code).formula;
      assert.equal(mathText(view?.parts ?? null), formula);
      assert.equal(mathText(view?.putIn ?? null), putIn);
    });
  }
}

describe('values put in', () => {
  check([
    ['stand for the names', 'a = 2 A\nx = a * 3 ohm', 'a| · 3 Ω', '2 A| · 3 Ω'],
    ['get parentheses under a power', 'a = 2 A\nx = a^2', 'a^{2}', '(2 A)^{2}'],
    ['get parentheses where they are negative', 'T = -5 degC\nx = 20 degC - T', '20 °C| − T', '20 °C| − (−5 °C)'],
    ['are left out where there are no names', 'x = 2 A * 3 ohm', '2 A| · 3 Ω', null],
    ['leave what has no value as it is', 'a = 1/0\nb = 3\nx = a + b', 'a| + b', 'a| + 3'],
    ['are lists while they are short', 'a = [1 A, 2 A]\nx = sum(a)', 'sum(a)', 'sum([1 A, |2 A])'],
    ['keep the name of a long list', 'a = [1 A, 2 A, 3 A, 4 A, 5 A]\nb = 2\nx = b * sum(a)', 'b| · sum(a)', '2| · sum(a)'],
    [
      'do not reach the variable of a root',
      'a = 4\nx = root of t^2 - a over t from 0 to 9',
      `root of t^{2}| − a| over t from 0| to 9`,
      'root of t^{2}| − 4| over t from 0| to 9',
    ],
    ['keep words in quotes', 's = "K5"\nx = s is "K5"', 's| is “K5”', '“K5”| is “K5”'],
  ]);

  it('are not put in for local names of the same name', () => {
    const view = entryOf('x', 'a = 2 A\nx = b + a with b = a * 2').formula;
    assert.equal(mathText(view?.putIn ?? null), 'b| + 2 A');
    assert.deepEqual(
      view?.where.map((local) => [mathText([local.symbol]), mathText(local.parts), mathText(local.putIn)]),
      [['b', 'a| · 2', '2 A| · 2']],
    );
  });

  it('are the cells of a chosen row', () => {
    const table = 'Table t — Range  from datasheet "d"\n\n| type | I / A |\n| --- | --: |\n| K4 | 30 |\n| K5 | 40 |\n';
    assert.equal(mathText(entryOf('x', 'K = least I of t where I > 35 A\nx = 2 * K.I', table).formula?.putIn ?? null), '2| · 40 A');
    assert.equal(mathText(requirementOf('K = least I of t where I > 35 A\nshall 20 A <= K.I', table).condition.putIn), '20 A| ≤ 40 A');
  });
});

describe('a call', () => {
  it('of a library function shows that function’s formula with its arguments', () => {
    const view = entryOf('x', `${MOTOR}x = fla_3ph(P_n, U_n, eta, pf)`).formula;
    assert.equal(mathText(view?.parts ?? null), '{P_{n}}/{√{3} · U_{n} · η · pf}');
    assert.equal(mathText(view?.putIn ?? null), '{18.5 kW}/{√{3} · 400 V · 92.4 % · 0.84}');
    assert.equal(mathText(view?.call ?? null), 'fla_3ph(P_{n}, |U_{n}, |η, |pf)');
    assert.equal(view?.written, 'fla_3ph(P_n, U_n, eta, pf)');
  });

  it('takes named arguments', () => {
    const view = entryOf('x', 'S = 80 VA\nx = coil_current(U = 110 V, S = S)').formula;
    assert.equal(mathText(view?.parts ?? null), '{S}/{110 V}');
  });

  check([
    ['of a function of the sheet shows its formula', 'f(a: A): A = 2 * a + b\nb = 1 A\nx = f(3 A)', '2 · 3 A| + b', '2 · 3 A| + 1 A'],
    [
      'puts expressions in parentheses where the formula needs them',
      'f(a: A) = a^2\nb = 1 A\nx = f(b + 2 A)',
      '(b + 2 A)^{2}',
      '(1 A + 2 A)^{2}',
    ],
    ['inside a formula stays a call', 'f(a: A): A = 2 * a\nb = 1 A\nx = f(b) + b', 'f(b)| + b', 'f(1 A)| + 1 A'],
    [
      'whose argument has the name of a local of the function stays a call',
      'f(a: A): A = a + m with m = 2 * a\nm = 1 A\nx = f(m)',
      'f(m)',
      'f(1 A)',
    ],
    [
      'of a function that only passes on goes on to the formula behind it',
      'f(a: A): A = 2 * a\ng(c: A): A = f(c)\nb = 1 A\nx = g(b)',
      `2|${by}b`,
      '2| · 1 A',
    ],
  ]);
});

describe('an input', () => {
  it('is shown as it was given where that says more than its value', () => {
    const rows: readonly (readonly [string, string | null])[] = [
      ['400 V', null],
      ['400 V ± 8 V', null],
      ['400 V ± 2 %', '400 V ± 2 %'],
      ['12.4 mV ± (1.5 % + 0.5 mV)', '12.4 mV ± (1.5 % + 0.5 mV)'],
      ['400 V ± 8 V (k=2)', '400 V ± 8 V (k = 2)'],
      ['92.4 % within 91.3 % to 92.4 %', '92.4 % within 91.3 % to 92.4 %'],
      ['readings [12.1 mV, 12.4 mV]', 'readings [12.1 mV, |12.4 mV]'],
    ];
    for (const [literal, expected] of rows) {
      assert.equal(mathText(entryOf('x', `x = ${literal}`).formula?.parts ?? null), expected, literal);
    }
  });
});
