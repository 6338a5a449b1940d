// integrate and differences: consecutive values of lists (T12).
import { multiply } from '../../units/dimension.ts';
import { differenceUnit } from '../../units/quantity.ts';
import { parseUnit } from '../../units/read-unit.ts';
import type { Display } from '../checked.ts';
import { raise } from '../fault.ts';
import { typeProblem } from '../problems/types.ts';
import { valueProblem } from '../problems/values.ts';
import { listOf, type QuantityType, quantity, type Type } from '../type.ts';
import { best, combination, subtract, type Uncertain } from '../uncertainty/dual.ts';
import type { Builtin } from './builtin.ts';
import { listArgument, wholeResult } from './checks.ts';

const SECONDS_A_DAY = 86400;

/** The type of a difference of two values of a type, and the unit it is shown in. */
export function differenceType(type: Type, display: Display): { type: QuantityType; display: Display; scale: number } {
  if (type.is === 'date') return { type: quantity(parseUnit('s')!.dimension), display: parseUnit('d'), scale: SECONDS_A_DAY };
  const shown = display === null || display === 'auto' ? display : differenceUnit(display);
  return { type: { ...(type as QuantityType), point: false, zero: false }, display: shown, scale: 1 };
}

export const sequences: readonly Builtin[] = [
  {
    name: 'integrate',
    form: 'integrate(xs, ys)',
    parameters: [
      { name: 'xs', takes: 'a rising list' },
      { name: 'ys', takes: 'a list of as many values' },
    ],
    least: 2,
    most: 2,
    description: 'Integral of y over x by trapezoids between the points.',
    formula: 'Σ (xᵢ₊₁ − xᵢ)·(yᵢ + yᵢ₊₁)/2',
    source: 'common practice',
    example: 'integrate([0 s, 1 s, 3 s], [10 A, 10 A, 6 A])',
    check: (call) => {
      const [xs, ys] = call.args;
      const a = listArgument(call, xs!, '`xs`', 'dates');
      const b = listArgument(call, ys!, '`ys`', 'no dates');
      if (a === null || b === null || b.is !== 'quantity') return null;
      if (b.point) {
        call.c.problems.push(
          typeProblem('point-arithmetic', ys!.at, {
            words: 'the integral of points of temperature has no meaning; take differences',
            mends: [],
          }),
        );
        return null;
      }
      return wholeResult(call, quantity(multiply(differenceType(a, 'auto').type.dimension, b.dimension)), 'auto');
    },
    run: {
      kind: 'whole',
      evaluate: (site) => {
        const of = site.args[0]?.type;
        const scale = of?.is === 'list' ? differenceType(of.of, 'auto').scale : 1;
        return (args) => {
          const [xs, ys] = args as [readonly Uncertain[], readonly Uncertain[]];
          if (xs.length !== ys.length) raise(valueProblem('different-lengths', site.at, { left: xs.length, right: ys.length }));
          if (xs.length < 2) raise(valueProblem('too-few', site.at, { name: 'integrate', wanted: 2, found: xs.length }));
          const values: Uncertain[] = [];
          const weights: number[] = [];
          let sum = 0;
          for (let i = 1; i < xs.length; i++) {
            const width = (best(xs[i]!) - best(xs[i - 1]!)) * scale;
            if (!(width > 0)) raise(valueProblem('not-rising', site.args[0]!.at, { name: 'integrate', row: i + 1 }));
            const height = (best(ys[i - 1]!) + best(ys[i]!)) / 2;
            sum += width * height;
            values.push(ys[i - 1]!, ys[i]!, xs[i]!, xs[i - 1]!);
            weights.push(width / 2, width / 2, height * scale, -height * scale);
          }
          return combination(sum, values, weights);
        };
      },
    },
  },
  {
    name: 'differences',
    form: 'differences(xs)',
    parameters: [{ name: 'xs', takes: 'a list' }],
    least: 1,
    most: 1,
    description: 'Differences of consecutive elements: one fewer than the list has.',
    formula: 'xᵢ₊₁ − xᵢ',
    source: 'common practice',
    example: 'differences([1 mohm, 3 mohm, 6 mohm])',
    check: (call) => {
      const of = listArgument(call, call.args[0]!, 'its values', 'dates');
      if (of === null) return null;
      const difference = differenceType(of, call.args[0]!.display);
      return wholeResult(call, listOf(difference.type), difference.display);
    },
    run: {
      kind: 'whole',
      evaluate: (site) => {
        const of = site.args[0]?.type;
        const scale = of?.is === 'list' ? differenceType(of.of, 'auto').scale : 1;
        return ([xs]) => {
          const values = xs as readonly Uncertain[];
          if (values.length < 2) raise(valueProblem('too-few', site.at, { name: 'differences', wanted: 2, found: values.length }));
          return values.slice(1).map((v, i) => (scale === 1 ? subtract(v, values[i]!) : (best(v) - best(values[i]!)) * scale));
        };
      },
    },
  },
];
