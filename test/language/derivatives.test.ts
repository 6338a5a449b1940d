// Derivatives of every operator and function against central differences, and what correlated values leave.
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { BUILTINS } from '../../src/language/functions/index.ts';
import type { SheetEvaluation } from '../../src/run/evaluate.ts';
import { evaluated, numberOf, values } from '../support/answers.ts';
import { GIVEN, wellTyped } from '../support/well-typed.ts';

/** Standard uncertainty of an input `± a`: so small that no kink lies within it. */
const HALF_WIDTH = 1e-6;
const U = HALF_WIDTH / Math.sqrt(3);

const inputs = (at: Readonly<Record<string, number>>, half: number | null) =>
  Object.entries(at).map(([name, value]) => `${name} = ${value}${half === null ? '' : ` ± ${half}`}`);

const GIVEN_FUNCTIONS = `
f(a, b) = c * a - b
  with c = a^2 + b
g(a: any) = if a > 1 then a * a else 3 * a
h(a) = g(a) + f(a, 2 * a)
`;

/** |∂y/∂input| from the uncertainty budget. */
function slopeOf(evaluation: SheetEvaluation, input: string): number {
  return (evaluation.result.budget('y').find((line) => line.input === input)?.contribution ?? 0) / U;
}

function check(expression: string, at: Readonly<Record<string, number>>): void {
  it(`of ${expression} at ${Object.entries(at)
    .map(([n, v]) => `${n} = ${v}`)
    .join(', ')}`, () => {
    const exactly = (moved: Readonly<Record<string, number>>) =>
      numberOf(evaluated([...inputs({ ...at, ...moved }, null), GIVEN_FUNCTIONS, `y = ${expression}`].join('\n')), 'y');
    // The sign of a slope shows beside a term whose slope is known.
    const steep = 1000;
    for (const name of Object.keys(at)) {
      const code = [...inputs(at, HALF_WIDTH), GIVEN_FUNCTIONS, `y_1 = ${expression}`, `y = y_1 + ${steep} * ${name}`].join('\n');
      const found = slopeOf(evaluated(code), name) - steep;
      const step = 1e-5 * Math.max(1, Math.abs(at[name]!));
      const wanted = (exactly({ [name]: at[name]! + step }) - exactly({ [name]: at[name]! - step })) / (2 * step);
      assert.ok(Math.abs(found - wanted) <= 1e-5 * Math.max(1, Math.abs(wanted)), `∂/∂${name}: ${found}, by differences ${wanted}`);
    }
  });
}

describe('the derivative', () => {
  const both = { x: 1.7, w: 0.6 };
  for (const operation of [
    'x + w',
    'x - w',
    'w - x',
    'x * w',
    'x / w',
    'w / x',
    '-x * w',
    'x * x * w',
    'x / w / x * w * x',
    '3 * x - x * 2 + w',
  ])
    check(operation, both);
  for (const power of ['x^2', 'x^3', 'x^0.5', 'x^-1.5', 'x²', 'x⁻¹', 'x^0', 'x^1', '2^x', 'x^w', 'x^-w', '(x * w)^(1/3)'])
    check(power, both);
  check('x^3 + w^2', { x: -1.7, w: -0.6 });
  check('(-x)^3 * w', both);

  /** One row at least for each function of the mathematics. */
  const ROWS: Readonly<Record<string, readonly string[]>> = {
    sqrt: ['sqrt(x)', '√(x * w)'],
    exp: ['exp(x)', 'exp(-x * w)'],
    ln: ['ln(x)', 'ln(x * w)'],
    log10: ['log10(x / w)'],
    sin: ['sin(x)', 'sum(sin([x, w]))'],
    cos: ['cos(x * w)'],
    tan: ['tan(w)'],
    asin: ['asin(w)', 'asin(w / x)'],
    acos: ['acos(w)'],
    atan: ['atan(x)'],
    atan2: ['atan2(x, w)', 'atan2(w, -x)', 'atan2(-x, -w)'],
    hypot: ['hypot(x, w)', 'hypot(x, w, 3)', 'hypot([x, w, -x])'],
    round: ['round(x * 10 + 0.2) + w'],
    ceil: ['ceil(x * 10 + 0.5) + w'],
    floor: ['floor(x * 10 + 0.5) * w'],
    abs: ['abs(x)', 'abs(-x * w)'],
    min: ['min(x, w)', 'min(x, 3 * w, 1)', 'min([x, w])'],
    max: ['max(x, w)', 'max(-x, -w)', 'max([x, w, 0])'],
    sum: ['sum([x, w, x])', 'sum(x, w, x)', 'sum([x, w] * [w, x])', 'sum(x * [1, w, 3])'],
    mean: ['mean(x, w, 3)', 'mean([x, w, x * w])', 'sum(([x, w, 2] - mean([x, w, 2]))^2)'],
    count: ['count([x, w]) * x'],
    interpolate: [
      'interpolate([0, 1, 4], [1, 5, 6], x)',
      'interpolate([0, 2 * w, 4], [1, 5 * w, 6], x)',
      'sum(interpolate([0, 1, 4], [1, w, 6], [x, 2 * x]))',
    ],
    interpolate_log: ['interpolate_log([0.5, 1, 4], [1, 5, 2], x)', 'interpolate_log([0.5, 2 * w, 4], [1, 5 * w, 6], x)'],
    integrate: ['integrate([0, x, 3], [1, w, 2])', 'integrate([0, w, x], [x, w, x * w])'],
    differences: ['sum(differences([x, w, x * w]))', 'sum(differences([x, w, x * w])^2)'],
    slope: ['slope([1, 2, 4], [x, w, 2])', 'slope([x, 2, 4 * w], [3, w, 2])'],
    fit: ['fit([1, 2, 4], [x, w, 2], 3)', 'fit([1, 2, 4], [3, 1, 2], x) + w', 'fit([x, 2, 4 * w], [3, w, 2], 2.5)'],
    uncertainty_of: ['uncertainty_of(3 * x) * 1e-3 + w'],
  };
  for (const { name } of BUILTINS) {
    it(`is tested for ${name}`, () => assert.ok(ROWS[name] !== undefined && ROWS[name].length > 0));
    for (const row of ROWS[name] ?? []) check(row, both);
  }

  for (const own of ['f(x, w)', 'f(w, x)', 'f(b = x, a = w)', 'g(x)', 'g(w)', 'h(x) * w', 'h(h(w))', 'sum(g([x, w]))', 'f(x, f(x, w))'])
    check(own, both);
  for (const branch of ['if x > w then x^2 else w', 'if x < w then x^2 else w * x', 'if x > 1 and w < 1 then x * w else 0'])
    check(branch, both);
  for (const root of [
    'root of t^3 + w * t - x over t from 0 to 5',
    'w * (root of exp(t) - x over t from 0 to 5)',
    'root of x - w * t over t from 0 to 10',
  ])
    check(root, both);
});

describe('a random expression', () => {
  const NAMES = ['u_1', 'u_2', 'u_3', 'i_1', 'i_2', 't_1', 't_2', 'n_1', 'n_2'];
  const uncertain = GIVEN.replace(/^([uitn]_\d = .*)$/gm, '$1 ± 1e-5 %');

  it('has the derivatives that differences give', () => {
    let compared = 0;
    fc.assert(
      fc.property(wellTyped(3), fc.constantFrom(...NAMES), ({ text }, name) => {
        if (text.includes('floor')) return;
        const code = (head: string) => `${head}\ny = ${text}`;
        const evaluation = evaluated(code(uncertain));
        const shown = evaluation.result.entries.get('y')?.value;
        if (shown?.kind !== 'quantity' || shown.uncertainty?.shifted) return;
        const si = numberOf(evaluation, name);
        const u = (Math.abs(si) * 1e-7) / Math.sqrt(3);
        const found = (evaluation.result.budget('y').find((line) => line.input === name)?.contribution ?? 0) / u;
        const moved = (by: number) =>
          numberOf(
            evaluated(
              code(GIVEN.replace(new RegExp(`^(${name} = )(\\S+)`, 'm'), (_, head, n) => `${head}${(Number(n) * (1 + by)).toFixed(12)}`)),
            ),
            'y',
          );
        const difference = (by: number) => (moved(by) - moved(-by)) / (2 * by * Math.abs(si));
        const [coarse, fine] = [difference(1e-4), difference(5e-5)];
        const scale = Math.max(Math.abs(shown.si / si), Math.abs(fine));
        if (!(Math.abs(coarse - fine) <= 1e-6 * scale)) return;
        compared++;
        assert.ok(Math.abs(Math.abs(fine) - found) <= 1e-5 * scale, `${text} by ${name}: ${found}, by differences ${fine}`);
      }),
      { numRuns: 500 },
    );
    assert.ok(compared > 200, `${compared} were compared`);
  });

  it('has a budget whose shares are one', () => {
    fc.assert(
      fc.property(wellTyped(3), ({ text }) => {
        const evaluation = evaluated(`${uncertain}\ny = ${text}`);
        const shares = evaluation.result.budget('y').map((line) => line.share);
        if (shares.length === 0) return;
        const total = shares.reduce((sum, share) => sum + share, 0);
        assert.ok(Math.abs(total - 1) < 1e-9 && shares.every((s) => s >= 0), `${text}: ${shares}`);
        assert.deepEqual(
          [...shares].sort((a, b) => b - a),
          shares,
        );
      }),
      { numRuns: 300 },
    );
  });
});

describe('values of one input', () => {
  const check = (expression: string, expected: string) =>
    it(`${expression} is ${expected}`, () =>
      assert.equal(values(`x = 10 V ± 1 V\nw = 3 V ± 1 V\ny = x\nk(a: V) = a\nz = ${expression}`)['z'], expected));
  for (const zero of [
    'x - x',
    'x - y',
    'y - x',
    'k(x) - x',
    '2 * x - x - y',
    'x + w - (w + x)',
    'x * w / w - x',
    'sqrt(x^2) - x',
    'mean(x, y) - x',
    'max(x, 0 V) - x',
    'sum([x, -y])',
    '(x + w)^2 / (x + w) - (w + x)',
    '(if x > 5 V then x else w) - y',
  ])
    check(zero, '0 V');
  check('x / y', '1.000');
  check('x + y', '20.0 V ± 2.0 V');
  check('x - 0.5 * y', '5.00 V ± 0.50 V');
  check('x + w - w', '10.0 V ± 1.0 V');
});
