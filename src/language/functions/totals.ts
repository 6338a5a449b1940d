// sum, mean, hypot over a list or across arguments; count of a list or table.

import type { Checked } from '../checked.ts';
import { describeValue } from '../checker/describe.ts';
import { raise } from '../fault.ts';
import { typeProblem } from '../problems/types.ts';
import { valueProblem } from '../problems/values.ts';
import type { TableModel } from '../program.ts';
import { NUMBER, type Type } from '../type.ts';
import { best, combination, standard, type Uncertain } from '../uncertainty/dual.ts';
import type { Builtin, CallSite } from './builtin.ts';
import { mappedResult, metType, wholeResult } from './checks.ts';
import { isWhole } from './extremes.ts';

/** Left to right, so that every machine gives the same digits (F5). */
function total(values: readonly Uncertain[]): Uncertain {
  let sum = 0;
  for (const v of values) sum += best(v);
  return combination(
    sum,
    values,
    values.map(() => 1),
  );
}

function mean(values: readonly Uncertain[]): Uncertain {
  let sum = 0;
  for (const v of values) sum += best(v);
  return combination(
    sum / values.length,
    values,
    values.map(() => 1 / values.length),
  );
}

/** Scaled by the greatest magnitude, so that squares neither overflow nor vanish. */
function hypot(values: readonly Uncertain[]): Uncertain {
  const scale = values.reduce<number>((most, v) => Math.max(most, Math.abs(best(v))), 0);
  if (scale === 0)
    return combination(
      0,
      values,
      values.map(() => 0),
      values.some((v) => standard(v) > 0),
    );
  let squares = 0;
  for (const v of values) squares += (best(v) / scale) * (best(v) / scale);
  const size = scale * Math.sqrt(squares);
  const weights = values.map((v) => best(v) / size);
  const linear = combination(size, values, weights);
  const u = Math.sqrt(values.reduce<number>((s, v) => s + standard(v) * standard(v), 0));
  return size <= u ? combination(size, values, weights, true) : linear;
}

function overList(
  name: string,
  points: 'points' | 'no points',
  of: (values: readonly Uncertain[]) => Uncertain,
  words: { description: string; formula: string; source: string; example: string },
): Builtin {
  return {
    name,
    form: `${name}(xs) or ${name}(a, b, …)`,
    parameters: [{ name: 'xs', takes: 'a list, or several values of one kind' }],
    least: 1,
    most: Number.POSITIVE_INFINITY,
    ...words,
    check: (call) => {
      const met = metType(call, name === 'hypot' ? call.args.map(withoutKind) : call.args);
      if (met === null) return null;
      const isPoint = met.type.is === 'date' || (met.type.is === 'quantity' && met.type.point);
      if (isPoint && points === 'no points') {
        const words = `\`${name}\` of ${met.type.is === 'date' ? 'dates' : 'points of temperature'} has no meaning; take differences`;
        call.c.problems.push(typeProblem('point-arithmetic', call.at, { words, mends: [] }));
        return null;
      }
      return isWhole(call.args) ? wholeResult(call, met.type, met.display) : mappedResult(call, met.type, met.display);
    },
    run: {
      kind: 'scalar',
      plain:
        () =>
        (...args) =>
          of(args) as number,
      dual: () => (args) => of(args),
    },
    ofList: (site: CallSite) => (args) => {
      const values = args[0] as readonly Uncertain[];
      if (values.length === 0 && name !== 'sum') raise(valueProblem('empty-list', site.at, { name }));
      return of(values);
    },
  };
}

/** A root of squares keeps no kind of power (W1). */
function withoutKind(arg: Checked): Checked {
  const bare = (type: Type): Type =>
    type.is === 'quantity' ? { ...type, power: null } : type.is === 'list' ? { ...type, of: bare(type.of) } : type;
  return { ...arg, type: bare(arg.type) };
}

export const totals: readonly Builtin[] = [
  overList('sum', 'no points', total, {
    description: 'Sum of a list, or of several values element by element.',
    formula: 'Σ xᵢ',
    source: 'ISO 80000-2:2019, 2-10',
    example: 'sum([1 A, 2 A])',
  }),
  overList('mean', 'points', mean, {
    description: 'Arithmetic mean of a list, or of several values element by element.',
    formula: 'Σ xᵢ / n',
    source: 'ISO 80000-2:2019, 2-10',
    example: 'mean([20 degC, 25 degC])',
  }),
  overList('hypot', 'no points', hypot, {
    description: 'Root of the sum of squares.',
    formula: '√Σ xᵢ²',
    source: 'IEEE 754-2019, 9.2',
    example: 'hypot(3 ohm, 4 ohm)',
  }),
  {
    name: 'count',
    form: 'count(xs)',
    parameters: [{ name: 'xs', takes: 'a list or a table' }],
    least: 1,
    most: 1,
    description: 'Number of elements of a list, or of rows of a table.',
    formula: 'n',
    source: 'ISO 80000-2:2019, 2-10',
    example: 'count([1 A, 2 A, 3 A])',
    endsUncertainty: true,
    check: (call) => {
      const { type } = call.args[0]!;
      if (type.is === 'list' || type.is === 'table') return wholeResult(call, NUMBER, null);
      const [arg] = call.args;
      const facts = { name: 'count', parameter: 'xs', wanted: 'a list or a table', found: describeValue(arg!), hint: '', mends: [] };
      call.c.problems.push(typeProblem('argument-type', arg!.at, facts));
      return null;
    },
    run: {
      kind: 'whole',
      evaluate:
        () =>
        ([xs]) =>
          Array.isArray(xs) ? xs.length : (xs as TableModel).rowCount,
    },
  },
];
