// How formulas are set: names, quotients, roots, powers, parentheses, words.
import assert from 'node:assert/strict';
import { parse } from '../../src/language/parser.ts';
import { mathParts } from '../../src/view/math.ts';
import { toHtml } from '../../src/view/node.ts';
import { mathText } from '../support/shown.ts';

function parts(expression: string) {
  const [statement] = parse(`x = ${expression}`).statements;
  assert.ok(statement?.kind === 'entry' && !statement.broken, expression);
  return mathParts(statement.value);
}

function check(rows: readonly (readonly [notation: string, expected: string])[]) {
  for (const [notation, expected] of rows) it(notation, () => assert.equal(mathText(parts(notation)), expected));
}

// A thin space stands where a sign of multiplication is left out.
const by = '\u2009';

describe('formulas', () => {
  describe('set names as symbols', () => {
    check([
      ['I_n', 'I_{n}'],
      ['U_s_max', 'U_{s, max}'],
      ['I_AC3', 'I_{AC3}'],
      ['R_20', 'R_{20}'],
      ['eta', 'η'],
      ['eta_n', 'η_{n}'],
      ['Delta_U', 'Δ_{U}'],
      ['U_phi', 'U_{φ}'],
      ['pf', 'pf'],
      ['_x', '_x'],
      ['a__b', 'a__b'],
      ['K.I_AC3', 'K.I_{AC3}'],
      ['motors.P_n', 'motors.P_{n}'],
    ]);
  });

  describe('set numbers with their units', () => {
    check([
      ['400 V', '400 V'],
      ['-5 degC', '−5 °C'],
      ['0.4 mohm', '0.4 mΩ'],
      ['18.1 ohm/km', '18.1 Ω/km'],
      ['1e6', '10^{6}'],
      ['1.2e-3 ohm', '1.2 · 10^{−3} Ω'],
      ['2*pi', '2| · π'],
      ['115 A·s^(1/2)/mm²', '115 A·s^{1/2}/mm²'],
      ['400 V ± 2 %', '400 V ± 2 %'],
      ['12.4 mV ± (1.5 % + 0.5 mV) (k=2)', '12.4 mV ± (1.5 % + 0.5 mV) (k = 2)'],
      ['92.4 % within 91.3 % to 92.4 %', '92.4 % within 91.3 % to 92.4 %'],
      ['readings [12.1 mV, 12.4 mV] ± 0.1 mV', 'readings [12.1 mV, |12.4 mV] ± 0.1 mV'],
      ['2026-09-14', '2026-09-14'],
      ['"110 V AC"', '“110 V AC”'],
      ['yes', 'yes'],
    ]);
  });

  describe('set quotients as fractions, read from the left', () => {
    check([
      ['P / (√3 * U * eta * pf)', '{P}/{√{3} · U · η · pf}'],
      ['a * b / c', `{a${by}b}/{c}`],
      ['a / b / c', `{a}/{b${by}c}`],
      ['a / b * c', `{a}/{b}|${by}c`],
      ['1 / 2 * m * v^2', `{1}/{2}|${by}m|${by}v^{2}`],
      ['(a + b) / (c - d)', '{a + b}/{c − d}'],
      ['a / (b / c)', '{a}/{{b}/{c}}'],
      ['(a / b)^2', '({a}/{b})^{2}'],
      ['2^(1/3)', '2^{1 / 3}'],
    ]);
  });

  describe('need a multiplication sign only where letters would run together', () => {
    check([
      ['2 * r * L_run', `2|${by}r|${by}L_{run}`],
      ['1.1 * I_n', `1.1|${by}I_{n}`],
      ['R * I^2', `R|${by}I^{2}`],
      ['r * 2', 'r| · 2'],
      ['2 * 3', '2| · 3'],
      ['tol * U', 'tol| · U'],
      ['2 * 400 V', '2| · 400 V'],
      ['a * (b + c)', 'a| · (b + c)'],
      ['√3 * U', `√{3}|${by}U`],
    ]);
  });

  describe('have parentheses only where reading needs them', () => {
    check([
      ['(a)', 'a'],
      ['((a + b))', 'a| + b'],
      ['a + (b + c)', 'a| + b + c'],
      ['a - (b + c)', 'a| − (b + c)'],
      ['a - (b * c)', `a| − b${by}c`],
      ['a + (-b)', 'a| + (−b)'],
      ['-b + a', '−b| + a'],
      ['a * (-b)', 'a| · (−b)'],
      ['-(a + b)', '−(a + b)'],
      ['-x^2', '−x^{2}'],
      ['(-x)^2', '(−x)^{2}'],
      ['(5 m)^2', '(5 m)^{2}'],
      ['(a^b)^c', '(a^{b})^{c}'],
      ['2^-3', '2^{−3}'],
      ['U_n^2', 'U_{n}^{2}'],
      ['K.I^2', 'K.I^{2}'],
      ['(U/2)²', '({U}/{2})^{2}'],
      ['not (a and b)', 'not (a and b)'],
      ['(a or b) and c', '(a or b)| and c'],
      ['a or b and c', 'a| or b and c'],
      ['(if a > b then c else d) + 1', '({c if a > b; d otherwise)| + 1'],
    ]);
  });

  describe('compare with the signs of mathematics', () => {
    check([
      ['a <= b', 'a| ≤ b'],
      ['0.85*U_s <= U_c <= 1.10*U_s', `0.85${by}U_{s}| ≤ U_{c}| ≤ 1.10${by}U_{s}`],
      ['a == b', 'a| = b'],
      ['a != b', 'a| ≠ b'],
      ['coil is "110 V AC"', 'coil| is “110 V AC”'],
      ['coil is not "x"', 'coil| is not “x”'],
    ]);
  });

  describe('use the signs that mathematics has for functions', () => {
    check([
      ['sqrt(a + b)', '√{a + b}'],
      ['√(a + b)', '√{a + b}'],
      ['abs(a - b)', '|a − b|'],
      ['hypot(R, X)', '√{R^{2} + X^{2}}'],
      ['hypot(xs)', 'hypot(xs)'],
      ['log10(x)', 'log_{10}(x)'],
      ['uncertainty_of(x)', 'u(x)'],
      ['fla_3ph(P_n, U_n, eta, pf)', 'fla_3ph(P_{n}, |U_{n}, |η, |pf)'],
      ['coil_current(S = 80 VA, U = 110 V)', 'coil_current(S = 80 VA, |U = 110 V)'],
      ['f(x)', 'f(x)'],
      ['U_c(x)', 'U_{c}(x)'],
      ['[1 A, 2 A]', '[1 A, |2 A]'],
    ]);
  });

  describe('read choices, look-ups, roots and cases as words', () => {
    check([
      [
        'least I_AC3 of contactors where I_AC3 >= 1.1 * I_n and f == 50 Hz',
        `least I_{AC3}| of contactors| where I_{AC3} ≥ 1.1${by}I_{n}| and f = 50 Hz`,
      ],
      ['first of contactors', 'first| of contactors'],
      ['the R of wires where row.A == a', 'the R| of wires| where row.A = a'],
      ['root of g(x) - y over x from 0 m to 500 m', 'root of g(x)| − y| over x from 0 m| to 500 m'],
      ['if a > 0 then b else c', 'b| if a > 0¶c| otherwise'],
      ['if a > 0 then b else if a < -1 then c else d', 'b| if a > 0¶c| if a < −1¶d| otherwise'],
      ['f(if a then b else c)', 'f({b if a; c otherwise)'],
    ]);
  });

  it('break long halves of a fraction', () => {
    assert.equal(
      mathText(parts('max(first_long_name, second_long_name, third_long_name) / m')),
      '{max(first_{long, name}, second_{long, name}, ; third_{long, name})}/{m}',
    );
  });

  it('break long sums below a root and in brackets before an operator, arguments of a call stay together', () => {
    const stacked = 'alpha_number_one + loop_resistance(r_hot, L_run)';
    const text = 'α_{number, one};  + loop_resistance(r_{hot}, L_{run})';
    assert.equal(mathText(parts(`sqrt(${stacked})`)), `√{${text}}`);
    assert.equal(mathText(parts(`(${stacked})^2`)), `(${text})^{2}`);
    assert.equal(mathText(parts('sqrt(a + b)')), '√{a + b}');
  });

  it('are plain MathML', () => {
    assert.equal(
      toHtml(parts('I_n / 2')),
      '<math displaystyle="true"><mfrac><msub data-name="I_n"><mi>I</mi><mi mathvariant="normal">n</mi></msub><mn>2</mn></mfrac></math>',
    );
  });

  it('set a sum of many terms without running out of stack', () => {
    const many = Array.from({ length: 20_000 }, () => 'a').join(' + ');
    assert.equal(parts(many).length, 20_000);
  });
});
