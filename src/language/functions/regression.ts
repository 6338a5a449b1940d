// slope and fit: a straight line by least squares, with the uncertainty that its residuals give (JCGM 100, H.3; U10).
import { divide } from '../../units/dimension.ts';
import { describeChecked } from '../checker/describe.ts';
import type { Frame } from '../compiler/frame.ts';
import { makeInput } from '../compiler/made-input.ts';
import { raise } from '../fault.ts';
import { typeProblem } from '../problems/types.ts';
import { valueProblem } from '../problems/values.ts';
import { elementOf, quantity, type Type } from '../type.ts';
import { add, best, combination, type Uncertain } from '../uncertainty/dual.ts';
import type { Builtin, CallCheck, CallSite } from './builtin.ts';
import { listArgument, wholeResult } from './checks.ts';
import { differenceType } from './sequences.ts';

interface Line {
  readonly n: number;
  readonly meanX: number;
  readonly meanY: number;
  readonly slope: number;
  /** Σ(x − mean)². */
  readonly spread: number;
  /** Residual standard deviation with n − 2 degrees of freedom. */
  readonly residual: number;
  readonly dx: readonly number[];
  /** ∂slope/∂xᵢ. */
  readonly slopeByX: readonly number[];
}

function fitLine(site: CallSite, xs: readonly Uncertain[], ys: readonly Uncertain[]): Line {
  const n = xs.length;
  if (n !== ys.length) raise(valueProblem('different-lengths', site.at, { left: n, right: ys.length }));
  if (n < 3) raise(valueProblem('too-few', site.at, { name: site.name, wanted: 3, found: n }));
  const meanX = xs.reduce<number>((s, x) => s + best(x), 0) / n;
  const meanY = ys.reduce<number>((s, y) => s + best(y), 0) / n;
  const dx = xs.map((x) => best(x) - meanX);
  const spread = dx.reduce((s, d) => s + d * d, 0);
  if (!(spread > 0)) raise(valueProblem('no-spread', site.args[0]?.at ?? site.at, { name: site.name }));
  const slope = dx.reduce((s, d, i) => s + d * (best(ys[i]!) - meanY), 0) / spread;
  const slopeByX = dx.map((d, i) => (best(ys[i]!) - meanY - 2 * slope * d) / spread);
  const squares = ys.reduce<number>((s, y, i) => s + (best(y) - meanY - slope * dx[i]!) ** 2, 0);
  return { n, meanX, meanY, slope, spread, residual: Math.sqrt(squares / (n - 2)), dx, slopeByX };
}

/** The scale of x: dates count in days, durations in seconds. */
function scaleOf(site: CallSite): number {
  const of = site.args[0]?.type;
  return of?.is === 'list' ? differenceType(of.of, 'auto').scale : 1;
}

function checkLists(call: CallCheck): { x: Type; y: Type } | null {
  const x = listArgument(call, call.args[0]!, '`xs`', 'dates');
  const y = listArgument(call, call.args[1]!, '`ys`', 'no dates');
  return x === null || y === null ? null : { x, y };
}

/** The linear part by the points' own uncertainty, and one input for the scatter about the line. */
function withScatter(
  site: CallSite,
  frame: Frame,
  value: number,
  points: readonly Uncertain[],
  weights: readonly number[],
  u: number,
  n: number,
): Uncertain {
  const scatter = makeInput(frame, `${site.name}(…)`, site.at.start, { components: [{ u, nu: n - 2 }], limits: null });
  return add(combination(value, points, weights), scatter);
}

const parameters = [
  { name: 'xs', takes: 'a list of quantities or dates' },
  { name: 'ys', takes: 'a list of as many quantities' },
];

export const regressions: readonly Builtin[] = [
  {
    name: 'slope',
    form: 'slope(xs, ys)',
    parameters,
    least: 2,
    most: 2,
    description: 'Slope of the straight line that fits best by least squares, with the uncertainty that the scatter gives it.',
    formula: 'Σ(xᵢ − x̄)(yᵢ − ȳ) / Σ(xᵢ − x̄)²',
    source: 'JCGM 100:2008, H.3',
    example: 'slope([0 h, 1000 h, 2000 h, 3000 h], [0.40 mohm, 0.43 mohm, 0.45 mohm, 0.49 mohm])',
    makesUncertain: true,
    check: (call) => {
      const types = checkLists(call);
      if (types === null) return null;
      const x = differenceType(types.x, 'auto').type.dimension;
      const y = differenceType(types.y, 'auto').type.dimension;
      return wholeResult(call, quantity(divide(y, x)), 'auto');
    },
    run: {
      kind: 'whole',
      evaluate: (site) => {
        const scale = scaleOf(site);
        return (args, frame) => {
          const [xs, ys] = args as [readonly Uncertain[], readonly Uncertain[]];
          const line = fitLine(site, xs, ys);
          const weights = [...line.dx.map((d) => d / line.spread), ...line.slopeByX].map((w) => w / scale);
          const u = line.residual / Math.sqrt(line.spread) / scale;
          return withScatter(site, frame, line.slope / scale, [...ys, ...xs], weights, u, line.n);
        };
      },
    },
  },
  {
    name: 'fit',
    form: 'fit(xs, ys, x)',
    parameters: [...parameters, { name: 'x', takes: 'a value of the kind of xs' }],
    least: 3,
    most: 3,
    description: 'Value at x of the straight line that fits best by least squares, with the uncertainty that the scatter gives it.',
    formula: 'ȳ + b·(x − x̄)',
    source: 'JCGM 100:2008, H.3',
    example: 'fit([0 h, 1000 h, 2000 h, 3000 h], [0.40 mohm, 0.43 mohm, 0.45 mohm, 0.49 mohm], 4000 h)',
    makesUncertain: true,
    check: (call) => {
      const types = checkLists(call);
      if (types === null) return null;
      const x = call.args[2]!;
      const sought = elementOf(x.type);
      const agree =
        sought.is === types.x.is &&
        (sought.is !== 'quantity' || (types.x.is === 'quantity' && (sought.zero || sought.dimension.si === types.x.dimension.si)));
      if (!agree || x.type.is === 'list') {
        call.c.problems.push(
          typeProblem('argument-type', x.at, {
            name: 'fit',
            parameter: 'x',
            wanted: describeChecked({ ...call.args[0]!, type: types.x }),
            found: describeChecked(x),
            hint: '',
            mends: [],
          }),
        );
        return null;
      }
      return wholeResult(call, types.y, call.args[1]!.display);
    },
    run: {
      kind: 'whole',
      evaluate: (site) => (args, frame) => {
        const [xs, ys, x] = args as [readonly Uncertain[], readonly Uncertain[], Uncertain];
        const line = fitLine(site, xs, ys);
        const away = best(x) - line.meanX;
        const byY = line.dx.map((d) => 1 / line.n + (d * away) / line.spread);
        const byX = line.slopeByX.map((b) => b * away - line.slope / line.n);
        const u = line.residual * Math.sqrt(1 / line.n + (away * away) / line.spread);
        const fitted = withScatter(site, frame, line.meanY + line.slope * away, [...ys, ...xs], [...byY, ...byX], u, line.n);
        return typeof x === 'number' ? fitted : combination(best(fitted), [fitted, x], [1, line.slope]);
      },
    },
  },
];
