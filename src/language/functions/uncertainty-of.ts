// uncertainty_of: the standard uncertainty of a value, as an exact value (U10).
import { combined } from '../uncertainty/combine.ts';
import type { Uncertain } from '../uncertainty/dual.ts';
import type { Builtin } from './builtin.ts';
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
      if (type === null || arg.type.is === 'list') return null;
      const difference = differenceType(type, arg.display);
      return wholeResult(call, difference.type, difference.display);
    },
    run: {
      kind: 'whole',
      evaluate:
        () =>
        ([x]) =>
          combined(x as Uncertain).standard,
    },
  },
];
