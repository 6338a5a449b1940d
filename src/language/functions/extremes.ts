// abs, min, max.

import { raise } from '../fault.ts';
import { valueProblem } from '../problems/values.ts';
import type { elementOf } from '../type.ts';
import { best, combination, standard, subtract, type Uncertain } from '../uncertainty/dual.ts';
import { type Builtin, type CallSite, unary } from './builtin.ts';
import { mappedResult, metType, quantityOf, wholeResult } from './checks.ts';

/** The least or greatest of several; a tie within one standard uncertainty is a kink (U6). */
function extreme(values: readonly Uncertain[], better: (a: number, b: number) => boolean): Uncertain {
  let chosen = values[0]!;
  for (const v of values) if (better(best(v), best(chosen))) chosen = v;
  const rivals = values.filter((v) => v !== chosen && tied(v, chosen));
  if (rivals.length === 0) return chosen;
  return combination(best(chosen), [chosen, ...rivals], [1, ...rivals.map(() => 0)], true);
}

function tied(a: Uncertain, b: Uncertain): boolean {
  const difference = subtract(a, b);
  const u = standard(difference);
  return u > 0 && Math.abs(best(difference)) <= u;
}

function selection(name: 'min' | 'max', better: (a: number, b: number) => boolean, description: string): Builtin {
  const over = (site: CallSite) => (args: readonly unknown[]) => {
    const values = args[0] as readonly Uncertain[];
    if (values.length === 0) raise(valueProblem('empty-list', site.at, { name }));
    return extreme(values, better);
  };
  return {
    name,
    form: `${name}(xs) or ${name}(a, b, …)`,
    parameters: [{ name: 'xs', takes: 'a list, or several values of one kind' }],
    least: 1,
    most: Number.POSITIVE_INFINITY,
    description,
    formula: `${name} xᵢ`,
    source: 'ISO 80000-2:2019, 2-10',
    example: `${name}(3 V, 5 V)`,
    check: (call) => {
      const met = metType(call, call.args);
      if (met === null) return null;
      return isWhole(call.args) ? wholeResult(call, met.type, met.display) : mappedResult(call, met.type, met.display);
    },
    run: {
      kind: 'scalar',
      plain:
        (site) =>
        (...args) => {
          let chosen = args[0]!;
          for (const x of args) if (better(x, chosen)) chosen = x;
          return site.args.length === 0 ? Number.NaN : chosen;
        },
      dual: () => (args) => extreme(args, better),
    },
    ofList: over,
  };
}

/** One list: the function goes over the list (T2). */
export function isWhole(args: readonly { readonly type: Parameters<typeof elementOf>[0] }[]): boolean {
  return args.length === 1 && args[0]!.type.is === 'list';
}

export const extremes: readonly Builtin[] = [
  {
    name: 'abs',
    form: 'abs(x)',
    parameters: [{ name: 'x', takes: 'a quantity' }],
    least: 1,
    most: 1,
    description: 'Magnitude.',
    formula: '|x|',
    source: 'ISO 80000-2:2019, 2-10.16',
    example: 'abs(-3 V)',
    check: (call) => {
      const type = quantityOf(call, call.args[0]!, 'no points');
      return type === null ? null : mappedResult(call, type, call.args[0]!.display);
    },
    run: unary(
      Math.abs,
      (x) => Math.sign(x),
      undefined,
      (x) => Math.abs(x.value) <= standard(x) && standard(x) > 0,
    ),
  },
  selection('min', (a, b) => a < b, 'The least of a list, or of several values element by element.'),
  selection('max', (a, b) => a > b, 'The greatest of a list, or of several values element by element.'),
];
