// Coverage factors against JCGM 100, and every kink against the shifting of inputs (U5, U6).
import assert from 'node:assert/strict';
import { coverageFactor } from '../../src/language/uncertainty/coverage.ts';
import { evaluated, numberOf } from '../support/answers.ts';

describe('the coverage factor', () => {
  /** JCGM 100:2008, table G.2, fraction 95.45 %. */
  const TABLE_G_2: readonly (readonly [nu: number, t: string])[] = [
    [1, '13.97'], [2, '4.53'], [3, '3.31'], [4, '2.87'], [5, '2.65'], [6, '2.52'], [7, '2.43'], [8, '2.37'], [9, '2.32'], [10, '2.28'],
    [11, '2.25'], [12, '2.23'], [13, '2.21'], [14, '2.20'], [15, '2.18'], [16, '2.17'], [17, '2.16'], [18, '2.15'], [19, '2.14'],
    [20, '2.13'], [25, '2.11'], [30, '2.09'], [35, '2.07'], [40, '2.06'], [45, '2.06'], [50, '2.05'], [100, '2.03'],
  ]; // biome-ignore format: a table
  for (const [nu, t] of TABLE_G_2) {
    it(`for ${nu} degrees of freedom is ${t} (JCGM 100:2008, table G.2)`, () => assert.equal(coverageFactor(nu).toFixed(2), t));
  }
  it('without bound of degrees of freedom is 2 (JCGM 100:2008, table G.2)', () => assert.equal(coverageFactor(null), 2));
  it('above 100 is 2, below 1 that of 1', () => {
    assert.equal(coverageFactor(101), 2);
    assert.equal(coverageFactor(0), coverageFactor(1));
  });
  it('falls with the degrees of freedom', () => {
    for (let nu = 2; nu <= 101; nu++) assert.ok(coverageFactor(nu) < coverageFactor(nu - 1), `${nu}`);
  });

  /** Two-sided probability of Student's t by Simpson's rule over its density (Abramowitz and Stegun, 26.7.1). */
  function probability(t: number, nu: number): number {
    const density = (x: number) => (1 + (x * x) / nu) ** (-(nu + 1) / 2);
    const simpson = (from: number, to: number, n: number) => {
      const h = (to - from) / n;
      let sum = density(from) + density(to);
      for (let i = 1; i < n; i++) sum += density(from + i * h) * (i % 2 === 1 ? 4 : 2);
      return (sum * h) / 3;
    };
    // The whole by x = tan(φ): ∫ cos(φ)^(ν − 1)·… is a constant of gamma functions; by recursion from ν = 1 (π/2) and 2 (√2).
    let whole = nu % 2 === 1 ? Math.PI / 2 : Math.SQRT2;
    for (let n = nu % 2 === 1 ? 1 : 2; n < nu; n += 2) whole *= ((n / (n + 1)) * Math.sqrt(n + 2)) / Math.sqrt(n);
    return simpson(0, t, 4000) / whole;
  }
  it('covers 95.45 % for each of 1 to 100 degrees of freedom', () => {
    for (let nu = 1; nu <= 100; nu++) {
      const covered = probability(coverageFactor(nu), nu);
      assert.ok(Math.abs(covered - 0.9545) < 5.5e-6, `${nu}: ${covered}`);
    }
  });
});

describe('a kink', () => {
  interface Inputs {
    readonly [name: string]: readonly [value: number, halfWidth: number];
  }
  const code = (inputs: Inputs, moved: Readonly<Record<string, number>>, rest: string) =>
    `${Object.entries(inputs)
      .map(([name, [value, half]]) => (moved[name] === undefined ? `${name} = ${value} ± ${half}` : `${name} = ${value + moved[name]}`))
      .join('\n')}\n${rest}`;

  /** Changes of the result by ±u of each input, others fixed, from runs with exact inputs. */
  function byShifting(inputs: Inputs, rest: string): number {
    const exact = Object.fromEntries(Object.keys(inputs).map((name) => [name, 0]));
    const at = numberOf(evaluated(code(inputs, exact, rest)), 'y');
    const parts = Object.entries(inputs).map(([name, [, half]]) => {
      const changes = [half, -half]
        .map((by) => numberOf(evaluated(code(inputs, { ...exact, [name]: by / Math.sqrt(3) }, rest)), 'y') - at)
        .filter((change) => !Number.isNaN(change));
      return Math.max(...changes.map(Math.abs));
    });
    return Math.hypot(...parts);
  }

  function check(expression: string, inputs: Inputs, before = ''): void {
    const where = Object.entries(inputs).map(([name, [value, half]]) => `${name} = ${value} ± ${half}`);
    it(`of ${expression} at ${where.join(', ')} takes the larger change by shifting`, () => {
      const rest = `${before}\ny = ${expression}`;
      const value = evaluated(code(inputs, {}, rest)).result.entries.get('y')?.value;
      assert.ok(value?.kind === 'quantity' && value.uncertainty !== null, value?.text);
      assert.ok(value.uncertainty.shifted, 'is evaluated by shifting');
      const wanted = byShifting(inputs, rest);
      assert.ok(Math.abs(value.uncertainty.standard - wanted) <= 1e-9 * wanted, `${value.uncertainty.standard}, by shifting ${wanted}`);
    });
  }

  for (const at of [0, 0.3, -0.3] as const) {
    check('abs(x)', { x: [at, 1] });
    check('max(x, 0)', { x: [at, 1] });
    check('min(0, x)', { x: [at, 1] });
    check('hypot(x, 0)', { x: [at, 1] });
    check('x^2', { x: [at, 1] });
    check('x * x', { x: [at, 1] });
    check('x^3', { x: [at, 1] });
    check('interpolate([-5, 0, 5], [1, 2, 9], x)', { x: [at, 1] });
    check('max([x, w])', { x: [at, 1], w: [0, 0.5] });
    check('min(x, w, 5)', { x: [at, 1], w: [0, 0.5] });
    check('hypot(x, w)', { x: [at, 1], w: [0, 0.5] });
    check('atan2(x, w)', { x: [at, 1], w: [0.1, 0.5] });
    check('2 * abs(x) + w', { x: [at, 1], w: [3, 0.5] });
    check('abs(abs(x) - w)', { x: [at, 1], w: [0.3, 0.5] });
    check('f(x) + w', { x: [at, 1], w: [3, 0.5] }, 'f(a) = abs(a) * 2');
    check('z * w', { x: [at, 1], w: [3, 0.5] }, 'z = max(x, 0)');
  }
  for (const at of [0, 0.3] as const) {
    check('sqrt(x)', { x: [at, 1] });
    check('√x', { x: [at, 1] });
    check('x^0.5', { x: [at, 1] });
    check('x^1.5', { x: [at, 1] });
    check('sqrt(x) + sqrt(w)', { x: [at, 1], w: [0, 2] });
  }
  check('asin(x)', { x: [1, 0.1] });
  check('acos(x)', { x: [1, 0.1] });
  check('asin(x)', { x: [0.99, 0.1] });
  check('interpolate([0, w, 20], [0, 1, 5], x)', { x: [10, 1], w: [10.2, 0.5] });
  check('sum(interpolate([0, 10, 20], [0, 1, 5], [x, x]))', { x: [10, 1] });
  check('sum(abs([x, w]))', { x: [0, 1], w: [3, 1] });
  check('root of t^3 - x over t from -2 to 2.01', { x: [0, 1] });
  check('unbalance_factor(x * 1 V, w * 1 V, 400 V)', { x: [400, 2], w: [400, 2] });

  it('away from it leaves the derivative', () => {
    for (const expression of ['abs(x)', 'sqrt(x)', 'max(x, 0)', 'hypot(x, 1)', 'x^2', 'interpolate([0, 1, 9], [1, 2, 9], x)']) {
      const value = evaluated(`x = 4 ± 1\ny = ${expression}`).result.entries.get('y')?.value;
      assert.ok(value?.kind === 'quantity' && value.uncertainty?.shifted === false, expression);
    }
  });

  it('of an exact value says nothing', () => {
    for (const expression of [
      'abs(0)',
      'sqrt(0)',
      'max(0, 0)',
      'hypot(0, 0)',
      '0^2',
      'interpolate([-1, 0, 9], [1, 2, 9], 0)',
      'abs(x - x)',
      'sqrt(x - x)',
    ]) {
      const value = evaluated(`x = 4 ± 1\ny = ${expression}`).result.entries.get('y')?.value;
      assert.ok(value?.kind === 'quantity' && value.uncertainty === null, expression);
    }
  });

  it('decides a requirement with finite numbers', () => {
    const kinks = ['abs(x)', 'sqrt(x)', 'max(x, 0)', 'hypot(x, 0)', 'x^2', 'interpolate([-5, 0, 5], [1, 2, 9], x)', '√x', 'x^0.5'];
    for (const kink of kinks) {
      const { result } = evaluated(`x = 0 ± 1\nshall ${kink} <= 3\nshall ${kink} <= 0.1\nshall ${kink} >= 10`);
      const statuses = result.cells[0]!.statements.map((s) => (s.kind === 'requirement' ? s.status : ''));
      const limit = kink.startsWith('interpolate') ? ['', 'undecided', 'fails', 'fails'] : ['', 'holds', 'undecided', 'fails'];
      assert.deepEqual(statuses, limit, kink);
    }
  });
});
