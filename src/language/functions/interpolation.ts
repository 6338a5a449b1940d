// interpolate and interpolate_log: between the points of a table, never beyond them.
import { fromSI } from '../../units/quantity.ts';
import type { Checked } from '../checked.ts';
import { describeChecked } from '../checker/describe.ts';
import { raise } from '../fault.ts';
import { typeProblem } from '../problems/types.ts';
import { valueProblem } from '../problems/values.ts';
import { disagreement, elementOf, listOf } from '../type.ts';
import { best, combination, standard, subtract, type Uncertain } from '../uncertainty/dual.ts';
import type { Builtin, CallCheck, CallResult, CallSite } from './builtin.ts';
import { listArgument } from './checks.ts';
import { exp, ln } from './elementary.ts';

function check(call: CallCheck, logarithmic: boolean): CallResult | null {
  const [xs, ys, x] = call.args as [Checked, Checked, Checked];
  const a = listArgument(call, xs, '`xs`', 'dates');
  const b = listArgument(call, ys, '`ys`', 'dates');
  if (a === null || b === null) return null;
  const sought = elementOf(x.type);
  const agree =
    a.is === sought.is &&
    (a.is !== 'quantity' ||
      sought.is !== 'quantity' ||
      sought.zero ||
      (a.point === sought.point && disagreement(a.dimension, sought.dimension) === null));
  if (!agree) {
    call.c.problems.push(
      typeProblem('argument-type', x.at, {
        name: call.name,
        parameter: 'x',
        wanted: describeChecked({ ...xs, type: a }),
        found: describeChecked(x),
        hint: '',
        mends: [],
      }),
    );
    return null;
  }
  for (const [arg, type] of [
    [xs, a],
    [ys, b],
  ] as const) {
    if (logarithmic && (type.is === 'date' || (type.is === 'quantity' && type.point))) {
      call.c.problems.push(typeProblem('point-arithmetic', arg.at, { words: `\`${call.name}\` of points has no meaning`, mends: [] }));
      return null;
    }
  }
  const mapped = x.type.is === 'list';
  return { type: mapped ? listOf(b) : b, display: ys.display, mapped: [false, false, mapped] };
}

/** The points as plain numbers, once they are known to rise (and to lie above zero). */
function abscissas(site: CallSite, xs: readonly Uncertain[], ys: readonly Uncertain[], logarithmic: boolean): number[] {
  if (xs.length !== ys.length) raise(valueProblem('different-lengths', site.at, { left: xs.length, right: ys.length }));
  if (xs.length < 2) raise(valueProblem('too-few', site.at, { name: site.name, wanted: 2, found: xs.length }));
  const values = xs.map(best);
  for (let i = 1; i < values.length; i++) {
    if (!(values[i]! > values[i - 1]!)) raise(valueProblem('not-rising', site.args[0]?.at ?? site.at, { name: site.name, row: i + 1 }));
  }
  if (logarithmic && (values[0]! <= 0 || ys.some((y) => best(y) <= 0))) raise(valueProblem('not-positive', site.at, { name: site.name }));
  return values;
}

function interpolate(site: CallSite, xs: readonly Uncertain[], ys: readonly Uncertain[], x: Uncertain, logarithmic: boolean): Uncertain {
  const values = abscissas(site, xs, ys, logarithmic);
  const at = best(x);
  const last = values.length - 1;
  const slack = 1e-9 * Math.max(Math.abs(values[0]!), Math.abs(values[last]!));
  if (!(at >= values[0]! - slack && at <= values[last]! + slack)) {
    raise(
      valueProblem('extrapolation', site.args[2]?.at ?? site.at, {
        name: site.name,
        from: shown(site, values[0]!),
        to: shown(site, values[last]!),
        found: shown(site, at),
      }),
    );
  }
  let i = 1;
  while (i < last && at > values[i]!) i++;
  const [x0, x1] = [values[i - 1]!, values[i]!];
  const [y0, y1] = [ys[i - 1]!, ys[i]!];
  const kink = xs.some((knot, k) => k > 0 && k < last && isAtKnot(x, knot));
  if (logarithmic) {
    const t = ln(at / x0) / ln(x1 / x0);
    const exponent = ln(best(y1) / best(y0)) / ln(x1 / x0);
    const y = best(y0) * exp(t * ln(best(y1) / best(y0)));
    const weights = [
      (y / at) * exponent,
      ((1 - t) * y) / best(y0),
      (t * y) / best(y1),
      (-y * exponent * (1 - t)) / x0,
      (-y * exponent * t) / x1,
    ];
    return combination(y, [x, y0, y1, xs[i - 1]!, xs[i]!], weights, kink);
  }
  const t = (at - x0) / (x1 - x0);
  const y = at === x1 ? best(y1) : best(y0) + t * (best(y1) - best(y0));
  const rise = (best(y1) - best(y0)) / (x1 - x0);
  return combination(y, [x, y0, y1, xs[i - 1]!, xs[i]!], [rise, 1 - t, t, -rise * (1 - t), -rise * t], kink);
}

/** Whether a knot lies within one standard uncertainty (U6). */
function isAtKnot(x: Uncertain, knot: Uncertain): boolean {
  const difference = subtract(x, knot);
  const u = standard(difference);
  return u > 0 && Math.abs(best(difference)) <= u;
}

function shown(site: CallSite, si: number): string {
  const display = site.args[0]?.display ?? null;
  if (display === null || display === 'auto') return `${Number(si.toPrecision(6))}`;
  return `${Number(fromSI(si, display).toPrecision(6))} ${display.text}`;
}

const builtin = (
  name: string,
  logarithmic: boolean,
  words: { description: string; formula: string; example: string; source: string },
): Builtin => ({
  name,
  form: `${name}(xs, ys, x)`,
  parameters: [
    { name: 'xs', takes: 'a rising list' },
    { name: 'ys', takes: 'a list of as many values' },
    { name: 'x', takes: 'a value of the kind of xs, within their range' },
  ],
  least: 3,
  most: 3,
  ...words,
  check: (call) => check(call, logarithmic),
  run: {
    kind: 'whole',
    evaluate: (site) => (args) => {
      const [xs, ys, x] = args as [readonly Uncertain[], readonly Uncertain[], Uncertain | readonly Uncertain[]];
      return Array.isArray(x)
        ? x.map((one: Uncertain) => interpolate(site, xs, ys, one, logarithmic))
        : interpolate(site, xs, ys, x as Uncertain, logarithmic);
    },
  },
});

export const interpolations: readonly Builtin[] = [
  builtin('interpolate', false, {
    description: 'Straight lines between the points (xᵢ, yᵢ); no extrapolation.',
    formula: 'y₀ + (x − x₀)·(y₁ − y₀)/(x₁ − x₀)',
    source: 'common practice',
    example: 'interpolate([0 A, 10 A, 20 A], [0 V, 1 V, 5 V], 15 A)',
  }),
  builtin('interpolate_log', true, {
    description: 'Straight lines between the points on double-logarithmic paper; no extrapolation.',
    formula: 'y₀·(y₁/y₀)^(ln(x/x₀)/ln(x₁/x₀))',
    source: 'common practice',
    example: 'interpolate_log([10 A, 100 A], [1e6, 1e4], 30 A)',
  }),
];
