// Expressions, rule by rule: how their parts hang together.
import assert from 'node:assert/strict';
import type { QuantityLiteral } from '../../src/language/ast.ts';
import { parse } from '../../src/language/parser.ts';
import { shapeOf } from '../support/parsing.ts';

function check(rule: string, rows: readonly (readonly [text: string, expected: string])[]): void {
  describe(rule, () => {
    for (const [text, expected] of rows) it(`${text} is ${expected}`, () => assert.equal(shapeOf(text), expected));
  });
}

describe('expressions', () => {
  check('operators bind from `or`, loosest, to the dot, tightest (P1)', [
    ['a or b and not c < d + e * -f^g.h', '{a or {b and {not {c < {d + {e * {-{f ^ g.h}}}}}}}}'],
    ['a + b - c + d', '{a + b - c + d}'],
    ['a - (b - c)', '{a - ({b - c})}'],
    ['a * b / c * d', '{a * b / c * d}'],
    ['a + b * c', '{a + {b * c}}'],
    ['-x^2', '{-{x ^ 2}}'],
    ['2^-3^2', '{2 ^ {-{3 ^ 2}}}'],
    ['2^3^2', '{2 ^ {3 ^ 2}}'],
    ['2^-x', '{2 ^ {-x}}'],
    ['2^-1', '{2 ^ -1}'],
    ['x⁻¹ * (U/2)²', '{{x ^ -1} * {({U / 2}) ^ 2}}'],
    ['√3 * U', '{{√3} * U}'],
    ['√K.x + √f(x) + √(a)', '{{√K.x} + {√f(x)} + {√(a)}}'],
    ['√√x', '{√{√x}}'],
    ['x^√2', '{x ^ {√2}}'],
    ['not not a', '{not {not a}}'],
    ['a and b and c or d', '{{a and b and c} or d}'],
    ['not a == b', '{not {a == b}}'],
    ['a.b.c', 'a.b.c'],
    ['f(x).c', 'f(x).c'],
    ['row.P * runs.from', '{row.P * runs.from}'],
    ['yes or no', '{yes or no}'],
  ]);

  check('a minus belongs to the literal behind it, unless a power follows (L13)', [
    ['-5 degC', '-5 degC'],
    ['- 5 degC', '-5 degC'],
    ['-5^2', '{-{5 ^ 2}}'],
    ['-5²', '{-{5 ^ 2}}'],
    ['-5 m²', '-5 m²'],
    ['-(5 degC)', '{-(5 degC)}'],
    ['(-5)²', '{(-5) ^ 2}'],
    ['a -5 degC', '{a - 5 degC}'],
    ['a - -5 degC', '{a - -5 degC}'],
    ['2 * -5 K', '{2 * -5 K}'],
    ['--5', '{--5}'],
    ['-x', '{-x}'],
    ['-pi', '-pi'],
    ['-5 V ± 1 V', '-5 V ± 1 V'],
  ]);

  check('units and powers of literals (L2, L5, L6)', [
    ['1/2 s', '{1 / 2 s}'],
    ['2 A*K.I_AC3', '{2 A * K.I_AC3}'],
    ['10 W/(a + b)', '{10 W / ({a + b})}'],
    ['5 m^2 + (5 m)^2', '{5 m² + {(5 m) ^ 2}}'],
    ['0.00393 1/K * (T - T_0)', '{0.00393 1/K * ({T - T_0})}'],
    ['2*pi rad*f', '{2 * pi rad * f}'],
    ['5 m ^2', 'power-of-quantity'],
    ['5 m^n', 'power-of-quantity'],
    ['5 ^2', '{5 ^ 2}'],
    ['5^n', '{5 ^ n}'],
  ]);

  check('`if`, choices, look-ups and roots reach as far as they can (P2)', [
    ['if c then a else b + 1', '{if c then a else {b + 1}}'],
    ['if a then b else if c then d else e', '{if a then b else {if c then d else e}}'],
    ['if a then if b then c else d else e', '{if a then {if b then c else d} else e}'],
    ['1 + (if c then a else b)', '{1 + ({if c then a else b})}'],
    ['f(if c then a else b, 2)', 'f({if c then a else b}, 2)'],
    ['[if c then a else b]', '[{if c then a else b}]'],
    ['1 + if c then a else b', 'operand-needs-parentheses'],
    [
      'least I_AC3 of contactors where I_AC3 >= 1.1 * I_n and f == 50 Hz',
      '{least I_AC3 of contactors where {{I_AC3 >= {1.1 * I_n}} and {f == 50 Hz}}}',
    ],
    ['greatest P of motors', '{greatest P of motors}'],
    ['first of contactors where type is "K5"', '{first of contactors where {type is "K5"}}'],
    ['the R of wires where row.A == a', '{the R of wires where {row.A == a}}'],
    ['the from of runs where to is "x"', 'missing-value'],
    ['the from of runs where row.to is "x"', '{the from of runs where {row.to is "x"}}'],
    ['least to of runs', '{least to of runs}'],
    ['(the R of wires where A == a).x', '({the R of wires where {A == a}}).x'],
    ['root of t*t - 4 over t from -10 to 10', '{root of {{t * t} - 4} over t from -10 to 10}'],
    ['root * 2 + root', '{{root * 2} + root}'],
  ]);

  check('comparisons chain one way (P3, P5)', [
    ['0.85*U_s <= U_c <= 1.10*U_s', '{{0.85 * U_s} <= U_c <= {1.10 * U_s}}'],
    ['a < b <= c == d', '{a < b <= c == d}'],
    ['a > b >= c == d', '{a > b >= c == d}'],
    ['a == b == c', '{a == b == c}'],
    ['a < b > c', 'chain-turns'],
    ['a == b < c > d', 'chain-turns'],
    ['a != b != c', 'no-chain'],
    ['a is not "x" and b is "y"', '{{a is not "x"} and {b is "y"}}'],
    ['a is b < c', 'no-chain'],
    ['(a < b) == (c < d)', '{({a < b}) == ({c < d})}'],
  ]);

  check('arguments go by place, then by name (P8)', [
    ['f()', 'f()'],
    ['f (a, -1)', 'f(a, -1)'],
    ['coil_voltage(U_0 = 120 V, R = 5 ohm)', 'coil_voltage(U_0 = 120 V, R = 5 ohm)'],
    ['f(a, k = b == c)', 'f(a, k = {b == c})'],
    ['f(k = 1, a)', 'positional-behind-named'],
    ['f(a b)', 'missing-operator'],
    ['f(a,)', 'missing-value'],
    ['[a, b,]', '[a, b]'],
    ['[[a], [b]]', '[[a], [b]]'],
    ['[]', 'list-empty'],
  ]);

  check('limits stand behind literals (L10)', [
    ['400 V ± 2 %', '400 V ± 2 %'],
    ['400 V +/- 8 V', '400 V ± 8 V'],
    ['12.4 mV ± (1.5 % + 0.5 mV)', '12.4 mV ± 1.5 % + 0.5 mV'],
    ['5 V ± 1 V (k=2)', '5 V ± 1 V k 2'],
    ['5 V ± (1 % + 1 mV) (k = 2.87, nu = 4)', '5 V ± 1 % + 1 mV k 2.87 nu 4'],
    ['5 V ± 1 V (k=2, ν=4)', '5 V ± 1 V k 2 nu 4'],
    ['92 % within 91.3 % to 92.4 %', '92 % within 91.3 % to 92.4 %'],
    ['-5 degC within -6 degC to -4 degC', '-5 degC within -6 degC to -4 degC'],
    ['[5 V ± 1 V, -6 V, 7 V ± 1 %]', '[5 V ± 1 V, -6 V, 7 V ± 1 %]'],
    ['readings [12.1 mV, 12.4 mV] ± 0.1 mV', 'readings [12.1 mV, 12.4 mV] ± 0.1 mV'],
    ['readings [-1 V, 2 V]', 'readings [-1 V, 2 V]'],
    ['readings (U / I)', 'readings ({U / I})'],
    ['readings xs', 'readings xs'],
    ['readings [a, b] ± 1 V', 'readings [a, b] ± 1 V'],
    ['a +- b', '{a + {-b}}'],
    ['e + 10 V ± 1 V', 'uncertain-needs-name'],
    ['f(10 V ± 1 V)', 'uncertain-needs-name'],
    ['a where b', 'unexpected'],
  ]);

  it('has values in coherent SI, right to the bit (L16)', () => {
    const siOf = (text: string): number => {
      const [statement] = parse(`x = ${text}`).statements;
      assert.ok(statement?.kind === 'entry' && statement.value.kind === 'quantity', text);
      return statement.value.value;
    };
    assert.equal(siOf('0.1 kV'), siOf('100 V'));
    assert.equal(siOf('7 %'), 0.07);
    assert.equal(siOf('-5 degC'), 268.15);
    assert.equal(siOf('-40 degF'), siOf('-40 degC'));
    assert.equal(siOf('36 km/h'), 10);
    assert.equal(siOf('pi rad'), Math.PI);
    assert.equal(siOf('-pi'), -Math.PI);
    assert.equal(siOf('1e3 mm²'), 1e-3);
  });

  it('has half-widths as differences, and ends of limits as points', () => {
    const boundsOf = (text: string) => {
      const [statement] = parse(`x = ${text}`).statements;
      assert.ok(statement?.kind === 'entry' && statement.value.kind === 'quantity');
      return (statement.value as QuantityLiteral).bounds!;
    };
    const half = boundsOf('25 degC ± 2 degC');
    assert.ok(half.kind === 'plusminus' && half.parts[0]!.value === 2);
    const percent = boundsOf('400 V ± 2 %');
    assert.ok(percent.kind === 'plusminus' && percent.parts[0]!.value === 0.02 && percent.parts[0]!.unit?.text === '%');
    const ends = boundsOf('25 degC within 24 degC to 27 degC');
    assert.ok(ends.kind === 'within' && ends.from.value === 297.15 && ends.to.value === 300.15);
  });
});
