// The lexer, rule by rule: which characters make which token.
import assert from 'node:assert/strict';
import { lex } from '../../src/language/lexer.ts';
import { tokensOf } from '../support/parsing.ts';

/** One row a text: what is read, and the codes of what is wrong (`''` for nothing). */
function check(rule: string, rows: readonly (readonly [text: string, tokens: string, codes?: string])[]): void {
  describe(rule, () => {
    for (const [text, tokens, codes = ''] of rows) {
      it(`${JSON.stringify(text).slice(0, 80)} is ${tokens.slice(0, 80)}${codes && `, with ${codes}`}`, () => {
        assert.equal(tokensOf(text), tokens);
        assert.equal(
          lex(text)
            .problems.map((problem) => problem.code)
            .join(' '),
          codes,
        );
      });
    }
  });
}

describe('lexer', () => {
  check('a unit begins behind a number or a colon and is the longest of the catalogue (L1)', [
    ['400 V', '<400 V>'],
    ['400 V*A', '<400 V·A>'],
    ['400 V*I_n', '<400 V> * I_n'],
    ['5 V*min(a, b)', '<5 V> * min ( a , b )'],
    ['2 A*K.I_AC3', '<2 A> * K . I_AC3'],
    ['2 K.I_AC3', '2 K . I_AC3'],
    ['5 V[1]', '5 V [ 1 ]'],
    ['5 min', '<5 min>'],
    ['5 min(a)', '5 min ( a )'],
    ['5 m2', '5 m2'],
    ['5 V_n', '5 V_n'],
    ['1.2e-3 ohm', '<1.2e-3 ohm>'],
    ['18.1 ohm/km', '<18.1 ohm/km>'],
    ['5 \n V', '5 V'],
    ['A = 25 mm²', 'A = <25 mm²>'],
    ['x: A', 'x : <:A>'],
    ['x: [ ohm ]', 'x : [ <:ohm> ]'],
    ['x: 1 = 2', 'x : <:1> = 2'],
    ['x: [1] = 2', 'x : [ <:1> ] = 2'],
    ['x: text = a', 'x : text = a'],
    ['x: kw = 2', 'x : kw = 2'],
    ['V = 3 V', 'V = <3 V>'],
    ['from 0 m to 5 m', "'from' <0 m> 'to' <5 m>"],
  ]);

  check('unspaced signs behind a unit join if a unit follows (L2)', [
    ['5 N·m', '<5 N·m>'],
    ['5 N⋅m', '<5 N·m>'],
    ['5 N *m', '<5 N> * m'],
    ['5 N* m', '<5 N> * m'],
    ['5 N * m', '<5 N> * m'],
    ['10 W/(m²·K)', '<10 W/(m²·K)>'],
    ['10 W/(a + b)', '<10 W> / ( a + b )'],
    ['10 W/(m²·K', '<10 W> / ( m <^2> * K'],
    ['10 W/x', '<10 W> / x'],
    ['2*K', '2 * K'],
    ['2·A', '2 * A'],
    ['1/2 s', '1 / <2 s>'],
  ]);

  check('a unit has one solidus (L3)', [
    ['10 W/m²/K', '<10 W/(m²·K)>', 'second-solidus'],
    ['5 m/s*kg', '<5 m·kg/s>', 'second-solidus'],
    ['x: W/m/K', 'x : <:W/(m·K)>', 'second-solidus'],
  ]);

  check('powers of units are unspaced and numeric (L5)', [
    ['5 m^2', '<5 m²>'],
    ['5 m²', '<5 m²>'],
    ['5 m^-2', '<5 1/m²>'],
    ['115 A·s^(1/2)/mm²', '<115 A·s^(1/2)/mm²>'],
    ['5 A^1.5', '<5 A^(3/2)>'],
    ['5 m ^2', '<5 m> ^ 2'],
    ['5 m^n', '<5 m> ^ n'],
    ['5 m^0', '<5 m>', 'unit-power'],
    ['x² + y⁻¹ + z²³', 'x <^2> + y <^-1> + z <^23>'],
    ['(U/2)²', '( U / 2 ) <^2>'],
  ]);

  check('`1/` before a unit is part of it (L6)', [
    ['alpha = 0.00393 1/K', 'alpha = <0.00393 1/K>'],
    ['0.5 1/(m·K)', '<0.5 1/(m·K)>'],
    ['x: 1/K = 2', 'x : <:1/K> = 2'],
    ['2 K⁻¹', '<2 1/K>'],
    ['2 K^-1', '<2 1/K>'],
    ['2 * 1/K', '2 * 1 / K'],
  ]);

  check('numbers have digits on both sides of a point, no leading zeros, no gaps (L7)', [
    ['0', '0'],
    ['0.5, 1.25e3, 2E+4, 3e-2', '0.5 , 1.25e3 , 2E+4 , 3e-2'],
    ['3e−2', '3e-2'],
    ['2eta', '2 eta'],
    ['2e', '2 e'],
    ['25°C', '<25 degC>'],
    ['92.4%', '<92.4 %>'],
    ['1,5 kW', '<1.5 kW>', 'comma-in-number'],
    ['f(1,5)', 'f ( 1.5 )', 'comma-in-number'],
    ['[1,2,3]', '[ 1 ]', 'comma-in-number'],
    ['x_1,5', 'x_1 , 5', 'comma-in-number'],
    ['f(1, 5)', 'f ( 1 , 5 )'],
    ['f(a,5)', 'f ( a , 5 )'],
    ['10 000 V', '<10000 V>', 'gap-in-number'],
    ['10\u2009000.5 V', '<10000.5 V>', 'gap-in-number'],
    ['10_000', '10000', 'gap-in-number'],
    ['1 2 3', '123', 'gap-in-number'],
    ['1.5 2.5', '1.5', 'gap-in-number'],
    ['007', '7', 'leading-zeros'],
    ['00.5', '0.5', 'leading-zeros'],
    ['.5', '0.5', 'point-without-digits'],
    ['5. + 1', '5 + 1', 'point-without-digits'],
    ['1.2.3', '1.2', 'point-without-digits'],
    ['1e999', '1e999', 'number-out-of-range'],
    ['1e-999', '1e-999', 'number-out-of-range'],
    ['1e308 kV', '<1e308 kV>', 'number-out-of-range'],
    ['0e0', '0e0'],
  ]);

  check('dates are days of the calendar, exactly dddd-dd-dd (L8)', [
    ['2026-09-14', '<2026-09-14>'],
    ['2024-02-29', '<2024-02-29>'],
    ['2026 - 9 - 14', '2026 - 9 - 14'],
    ['2026-9-14', '<2026-09-14>', 'date-form'],
    ['2026-09-1', '<2026-09-01>', 'date-form'],
    ['2026-9-145', '<no date>', 'date-form'],
    ['2026-02-30', '<no date>', 'no-such-date'],
    ['2025-02-29', '<no date>', 'no-such-date'],
    ['2026-13-01', '<no date>', 'no-such-date'],
    ['2026-09-14x', '<2026-09-14>', 'date-form'],
    ['2026-09-14_2', '<2026-09-14>', 'date-form'],
    ['a-2026-09-14', 'a - <2026-09-14>', 'date-touches-sign'],
    ['2026-09-14-2026-01-01', '<2026-09-14>', 'date-form'],
    ['2026-09-14 - 2026-01-01', '<2026-09-14> - <2026-01-01>'],
    ['2026–09–14', '<2026-09-14>', 'date-form'],
    ['2026-09-14T10:00', '<2026-09-14>', 'date-with-time'],
    ['20260-9-1', '20260 - 9 - 1'],
    ['12.2026-9', '12.2026 - 9'],
  ]);

  check('pi is a number, and rad alone may follow it (L9)', [
    ['2*pi rad * f', '2 * <pi rad> * f'],
    ['2*pi rad*f', '2 * <pi rad> * f'],
    ['2*pi rad*s', '2 * <pi rad> * s'],
    ['2*pi rad/rev * n', '2 * <pi rad/rev> * n'],
    ['π rad', '<pi rad>'],
    ['pi d', 'pi d'],
    ['2 pi', '2 pi'],
    ['pi_1', 'pi_1'],
    ['K.pi', 'K . pi'],
  ]);

  check('limits have a sign of their own (L10)', [
    ['400 V ± 2 %', '<400 V> ± <2 %>'],
    ['400 V+/-2 %', '<400 V> ± <2 %>'],
    ['a +- b', 'a + - b'],
    ['± (1.5 % + 0.3 A) (k=2, nu=18)', '± ( <1.5 %> + <0.3 A> ) ( k = 2 , nu = 18 )'],
  ]);

  check('spellings that mean the same are the same (L12)', [
    ['a − b', 'a - b'],
    ['a ⋅ b · c × d ÷ e', 'a * b * c * d / e'],
    ['a ≤ b ≥ c ≠ d', 'a <= b >= c != d'],
    ['5 µm + 5 μm + 5 um', '<5 µm> + <5 µm> + <5 µm>'],
    ['5 Ω + 5 \u2126 + 5 ohm', '<5 ohm> + <5 ohm> + <5 ohm>'],
    ['20 ℃ + 20 °C', '<20 degC> + <20 degC>'],
    ['a\u00A0+\u2009b\u202F+ c', 'a + b + c'],
    ['η_n + eta_n', 'eta_n + eta_n'],
    ['Δϑ + Δθ', 'Deltatheta + Deltatheta'],
    ['\u00B5_r + μ_r', 'mu_r + mu_r'],
    ['e\u0301 + \u00E9', '\u00E9 + \u00E9'],
    ['\u212B + \u00C5', '\u00C5 + \u00C5'],
    ['Länge + длина + 長さ', 'Länge + длина + 長さ'],
  ]);

  check('look-alikes are errors, and read as what was meant where that is clear (L12)', [
    ['a – b', 'a - b', 'look-alike'],
    ['a — b', 'a - b', 'look-alike'],
    ['“abc”', '"abc"', 'wrong-quotes'],
    ["'abc'", '"abc"', 'wrong-quotes'],
    ['«a "b"»', '"a \\"b\\""', 'wrong-quotes'],
    ["x' = 3", "x <!'> = 3", 'stray-characters'],
    ['a ＋ b', 'a <!＋> b', 'look-alike'],
    ['ｘ１ = 3', '<!ｘ１> = 3', 'look-alike'],
    ['𝑥 = 3', 'x = 3', 'look-alike'],
    ['I₁', 'I <!₁>', 'look-alike'],
    ['25 ºC', '25 <!º> C', 'look-alike'],
    ['a\u3000b', 'a <!\u3000> b', 'look-alike'],
    ['a ** b', 'a ^ b', 'other-operator'],
    ['a <> b =< c => d := e', 'a != b <= c >= d = e', 'other-operator other-operator other-operator other-operator'],
    ['a && b', 'a <!&&> b', 'other-operator'],
    ['a // b\nc', 'a c', 'other-comment'],
    ['a\u200Bb', 'a <!\u200B> b', 'invisible-character'],
    ['a\u202Eb', 'a <!\u202E> b', 'bidi-control'],
    ['"a\u202Eb"', '"a\u202Eb"', 'bidi-control'],
    ['# a\u2066\u2067b\u2069', '', 'bidi-control bidi-control'],
  ]);

  check('names that mix scripts are warned of, unless nothing in them looks like another letter (L12)', [
    ['η_n', 'eta_n'],
    ['ΔU', 'DeltaU'],
    ['Р_n', 'Р_n', 'mixed-scripts'],
    ['Ι_n', 'Iota_n', 'mixed-scripts'],
    ['длина', 'длина'],
    ['電圧V', '電圧V'],
  ]);

  check('texts stand on one line, with two escapes (L14)', [
    ['"a \\"b\\" \\\\"', '"a \\"b\\" \\\\"'],
    ['"a # b"', '"a # b"'],
    ['"\\n"', '"\\\\n"', 'text-escape'],
    ['"abc', '"abc"', 'unclosed-text'],
    ['"abc\nx = 3', '"abc" x = 3', 'unclosed-text'],
    ['"abc\\', '"abc\\\\"', 'unclosed-text text-escape'],
    [`"${'x'.repeat(10_000)}"`, JSON.stringify('x'.repeat(10_000))],
    [`"${'x'.repeat(10_001)}"`, JSON.stringify('x'.repeat(10_001)), 'text-too-long'],
  ]);

  check('reserved words are no names, contextual ones are (K1 to K3)', [
    ['and or not is if then else where', "'and' 'or' 'not' 'is' 'if' 'then' 'else' 'where'"],
    ['of for from to over the least greatest first', "'of' 'for' 'from' 'to' 'over' 'the' 'least' 'greatest' 'first'"],
    ['shall should throughout use curve tabulate', "'shall' 'should' 'throughout' 'use' 'curve' 'tabulate'"],
    ['because with needs yes no row', "'because' 'with' 'needs' 'yes' 'no' 'row'"],
    ['each root step log within by on accepted until due', 'each root step log within by on accepted until due'],
    ['mark limit readings k nu plate text date any', 'mark limit readings k nu plate text date any'],
    ['runs.from row.to', "runs . from 'row' . to"],
    ['constructor __proto__ toString', 'constructor __proto__ toString'],
  ]);

  check('what belongs to no token is one error, run together', [
    ['a $@ b', 'a <!$@> b', 'stray-characters'],
    ['a; b', 'a <!;> b', 'stray-semicolon'],
    ['a ! b', 'a <!!> b', 'other-operator'],
    ['a % b', 'a <!%> b', 'unit-without-number'],
    ['5 %of', "5 <!%> 'of'", 'unit-without-number'],
    ['😀😀', '<!😀😀>', 'stray-characters'],
    ['\uD800', '<!\uD800>', 'stray-characters'],
  ]);

  it('gives each token its place in the layout: first on its line, and how far the line is indented (Y1)', () => {
    const { tokens } = lex('a = 1\n  \t# only a comment\n\t from b\r\nc\r  d');
    assert.deepEqual(
      tokens.map((t) => [t.first, t.indent]),
      [
        [true, 0],
        [false, 0],
        [false, 0],
        [true, 2],
        [false, 2],
        [true, 0],
        [true, 2],
      ],
    );
  });

  it('keeps blanks, line ends and comments as trivia', () => {
    const text = 'a  # note\r\n\tb';
    assert.deepEqual(
      lex(text).trivia.map((t) => [t.kind, text.slice(t.at.start, t.at.end)]),
      [
        ['blank', '  '],
        ['comment', '# note'],
        ['line end', '\r\n'],
        ['blank', '\t'],
      ],
    );
  });
});
