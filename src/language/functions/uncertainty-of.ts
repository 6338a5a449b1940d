// uncertainty_of: the standard uncertainty of a value, as an exact value (U10).
import type { Frame, Run } from '../compiler/frame.ts';
import { raise } from '../fault.ts';
import { valueProblem } from '../problems/values.ts';
import { listOf } from '../type.ts';
import { combined } from '../uncertainty/combine.ts';
import type { Uncertain } from '../uncertainty/dual.ts';
import type { Builtin, CallSite } from './builtin.ts';
import { quantityOf, wholeResult } from './checks.ts';
import { differenceType } from './sequences.ts';

export const uncertaintyOf: readonly Builtin[] = [
  {
    name: 'uncertainty_of',
    form: 'uncertainty_of(x)',
    parameters: [{ name: 'x', takes: 'a quantity' }],
    least: 1,
    most: 1,
    description: 'Standard uncertainty of a value, itself exact.',
    formula: 'u_c(x)',
    source: 'JCGM 100:2008, 5.1.2',
    example: 'uncertainty_of(12 mV)',
    endsUncertainty: true,
    check: (call) => {
      const arg = call.args[0]!;
      const type = quantityOf(call, arg, 'points');
      if (type === null) return null;
      const difference = differenceType(type, arg.display);
      return wholeResult(call, arg.type.is === 'list' ? listOf(difference.type) : difference.type, difference.display);
    },
    run: {
      kind: 'whole',
      evaluate:
        (site) =>
        ([x], frame) =>
          Array.isArray(x) ? x.map((one: Uncertain, i) => standardOf(site, one, i, frame)) : standardOf(site, x as Uncertain, null, frame),
    },
  },
];

/** By derivatives, or by shifting where they do not serve (U6). */
function standardOf(site: CallSite, x: Uncertain, element: number | null, frame: Frame): number {
  if (typeof x === 'number' || !x.kink) return combined(x).standard;
  const { again } = site;
  if (again === null) raise(valueProblem('uncertainty-in-function', site.at, {}));
  const anew = (run: Run) => {
    const value = again(0, frame, run);
    return (element === null ? value : (value as readonly unknown[])[element]) as Uncertain;
  };
  return frame.run.spread(x, anew).combined.standard;
}
