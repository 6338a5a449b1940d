// Laws of the notation: order means nothing, what is printed reads back, agreement is symmetric.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { common, disagreement } from '../../src/language/type.ts';
import type { Shown } from '../../src/run/result.ts';
import { answers, evaluated, values } from '../support/answers.ts';
import { GIVEN, wellTyped } from '../support/well-typed.ts';
import { anyDimension } from '../units/support.ts';

const TABLE = `Table t — Values, invented

| tag | I / A | R / mohm |
| --- | --: | --- |
| a | 3 | 0.40 ± 0.01 |
| b | 5 | 0.42 ± 2 % |
| c | 9 | 0.5 |
`;

describe('the order of statements', () => {
  const lines = `
x = 10 V ± 1 V
y = 3 V ± 2 %
z = x + y * w
w = 2 ± 0.1
k = z / v
v = x - 1 V
f(a: V) = a * w + g(a)
g(b: V) = b / 2
q = f(x) + f(y)
t.P = I * row.R * I
t.s = P / total
total = sum(t.P)
K = least I of t where P > 0.005 W and I > i
i = 4 A
n = K.P
shall n <= 20 mW
shall x <= 11 V and y >= 3 V
should I <= 9 A for each t
r = readings [12.1 mV, 12.4 mV, 12.2 mV] ± 0.1 mV
s = r / x
bad = 3 V + 2 A
worse = bad + 1
loop_a = loop_b + 1
loop_b = loop_a + 1
late = early
early = 1 / 0
m = slope([1, 2, 3, 4], [1 V, 2 V, 2.5 V, y])
root_x = root of a * x / 1 V - 5 over a from 0 to 5`
    .trim()
    .split('\n');

  /** What each statement answers, whatever the order they stand in; a circle is told at its first one. */
  const sorted = (code: string) =>
    answers(code, { before: TABLE })
      .filter((line) => !/loop_|^! circle/.test(line))
      .sort();
  const wanted = sorted(lines.join('\n'));

  it('means nothing', () => {
    assert.ok(wanted.length > 25);
    fc.assert(
      fc.property(fc.shuffledSubarray(lines, { minLength: lines.length }), (shuffled) =>
        assert.deepEqual(sorted(shuffled.join('\n')), wanted),
      ),
      { numRuns: 60 },
    );
  });

  it('means nothing to random formulas', () => {
    const given = GIVEN.trim().split(/\n(?! )/);
    fc.assert(
      fc.property(wellTyped(3), wellTyped(3), fc.infiniteStream(fc.nat()), ({ text }, { text: other }, order) => {
        const all = [...given, `x = ${text}`, `y = ${other}`, 'z = x', 'p = [y, y]'];
        const keyed = all.map((line) => ({ line, key: order.next().value as number }));
        const shuffled = keyed.sort((a, b) => a.key - b.key).map(({ line }) => line);
        const inOrder = values(all.join('\n'));
        const inAnother = values(shuffled.join('\n'));
        for (const name of ['x', 'y', 'z', 'p']) assert.equal(inAnother[name], inOrder[name], shuffled.join('\n'));
      }),
      { numRuns: 150 },
    );
  });
});

describe('what is printed', () => {
  const uncertainty = (shown: Shown) => (shown.kind === 'quantity' ? shown.uncertainty : null);

  /** Reads a shown quantity back as an input; gives what is shown of that. */
  function readBack(shown: Shown): Shown {
    const value = evaluated(`x = ${shown.text}`).result.entries.get('x')?.value;
    assert.ok(value, shown.text);
    return value;
  }

  function check(shown: Shown | null | undefined): void {
    if (shown?.kind !== 'quantity') return;
    const again = readBack(shown);
    assert.equal(again.text, shown.text);
    const [u, v] = [uncertainty(shown), uncertainty(again)];
    assert.equal(v === null, u === null);
    // U has two digits; with it stand u and the degrees of freedom.
    if (u !== null && v !== null) {
      assert.ok(Math.abs(v.expanded / u.expanded - 1) <= 0.05, shown.text);
      assert.equal(v.nu, u.nu);
      assert.equal(v.k === null, u.k === null);
      if (u.k !== null) assert.ok(Math.abs(v.standard / u.standard - 1) <= 0.06, shown.text);
    }
  }

  it('of exact results reads back as the same', () => {
    fc.assert(
      fc.property(wellTyped(3), ({ text }) => check(evaluated(`${GIVEN}\nx = ${text}`).result.entries.get('x')?.value)),
      { numRuns: 300 },
    );
  });

  const halves = fc.constantFrom('± 2 %', '± 0.1 % (k=2)', '± 1 % (k=2.13, nu=20)', '± 3 % (k=1, nu=4)', '± 30 % (k=3.31, nu=3)');
  it('of uncertain results reads back as the same value, U and u (F2)', () => {
    fc.assert(
      fc.property(wellTyped(3), halves, halves, ({ text }, a, b) => {
        const given = GIVEN.replace(/^(u_1 = .*|i_2 = .*|n_1 = .*)$/gm, `$1 ${a}`).replace(/^(u_2 = .*|t_1 = .*|i_1 = .*)$/gm, `$1 ${b}`);
        check(evaluated(`${given}\nx = ${text}`).result.entries.get('x')?.value);
      }),
      { numRuns: 400 },
    );
  });

  it('of inputs reads back as the same', () => {
    const number = fc
      .double({ min: -1e8, max: 1e8, noNaN: true, noDefaultInfinity: true })
      .map((x) => `${Number(x.toPrecision(6))}`.replace('e+', 'e'));
    const unit = fc.constantFrom('V', 'kW', 'mohm', 'N·m', '1/K', 'degF', 'degC', '%', 'W/(m²·K)', 'rpm', 'A·s^(1/2)/mm²');
    fc.assert(
      fc.property(number, unit, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (n, u, width) => {
        const half = `${Number(width.toPrecision(3))} ${u.replace('degF', 'degR').replace('degC', 'K')}`;
        check(evaluated(`x = ${n} ${u} ± ${half}`).result.entries.get('x')?.value);
        check(evaluated(`x = ${n} ${u}`).result.entries.get('x')?.value);
      }),
      { numRuns: 300 },
    );
  });
});

describe('agreement of dimensions (R1, R2)', () => {
  const twisted = fc.tuple(anyDimension, anyDimension, fc.boolean()).map(([a, b, same]) => [a, same ? a : b] as const);
  it('is symmetric', () => {
    fc.assert(fc.property(twisted, ([a, b]) => assert.equal(disagreement(a, b), disagreement(b, a))));
  });
  it('of a dimension with itself is always there', () => {
    fc.assert(fc.property(anyDimension, (a) => assert.equal(disagreement(a, a), null)));
  });
  it('gives a common dimension that agrees with both, whichever comes first', () => {
    fc.assert(
      fc.property(twisted, ([a, b]) => {
        fc.pre(disagreement(a, b) === null);
        assert.equal(common(a, b), common(b, a));
        assert.equal(common(a, b).si, a.si);
      }),
    );
  });

  const units = [
    'Hz',
    'rpm',
    'rad/s',
    '1/s',
    'cycle',
    'rev',
    'rad',
    'deg',
    '1',
    'rev/min',
    'cycle·rad',
    'rad·rev/s',
    'V·s',
    'V/Hz',
    'V/rpm',
    'N·m',
    'J',
    'J/rev',
  ];
  it('is symmetric in the notation: a + b and b + a, a < b and b > a', () => {
    const literal = (unit: string) => (unit === '1' ? '3' : `3 ${unit}`);
    for (const a of units)
      for (const b of units) {
        const sound = (expression: string) => values(`x = ${expression}`)['x'] !== null;
        assert.equal(sound(`${literal(a)} + ${literal(b)}`), sound(`${literal(b)} + ${literal(a)}`), `${a} + ${b}`);
        assert.equal(sound(`${literal(a)} < ${literal(b)}`), sound(`${literal(b)} > ${literal(a)}`), `${a} < ${b}`);
        assert.equal(sound(`max(${literal(a)}, ${literal(b)})`), sound(`max(${literal(b)}, ${literal(a)})`), `max of ${a} and ${b}`);
        if (a !== '1' && b !== '1') {
          const declared = (x: string, y: string) => values(`x: ${y} = 3 ${x}`)['x'] !== null;
          assert.equal(declared(a, b), declared(b, a), `${a} as ${b}`);
        }
      }
  });
});
