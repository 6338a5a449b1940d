// sqrt, exp, ln, log10.
import { rootType } from '../checker/arithmetic.ts';
import { raise } from '../fault.ts';
import { valueProblem } from '../problems/values.ts';
import { NUMBER } from '../type.ts';
import { standard } from '../uncertainty/dual.ts';
import { type Builtin, type CallSite, unary } from './builtin.ts';
import { mappedResult, plainOf } from './checks.ts';
import { exp, ln, log10 } from './elementary.ts';

const notNegative = (x: number, site: CallSite) => {
  if (x < 0) raise(valueProblem('negative-root', site.at, { name: site.name }));
};
const positive = (x: number, site: CallSite) => {
  if (!(x > 0)) raise(valueProblem('out-of-domain', site.at, { name: site.name, takes: 'values above zero', found: `${x}` }));
};

/** The square root as a scalar function; also behind `√`. */
export const squareRoot = unary(
  Math.sqrt,
  (_x, y) => 0.5 / y,
  notNegative,
  (x) => x.value <= standard(x),
);

const plainFunction = (name: string, run: Builtin['run'], description: string, formula: string, example: string): Builtin => ({
  name,
  form: `${name}(x)`,
  parameters: [{ name: 'x', takes: 'a plain number' }],
  least: 1,
  most: 1,
  description,
  formula,
  source: 'ISO 80000-2:2019, 2-13',
  example,
  check: (call) => (plainOf(call, call.args[0]!) === null ? null : mappedResult(call, NUMBER, null)),
  run,
});

export const powers: readonly Builtin[] = [
  {
    name: 'sqrt',
    form: 'sqrt(x)',
    parameters: [{ name: 'x', takes: 'a quantity that is not negative' }],
    least: 1,
    most: 1,
    description: 'Square root; the exponents of the unit are halved.',
    formula: '√x',
    source: 'ISO 80000-2:2019, 2-10.6',
    example: 'sqrt(2) * 230 V',
    check: (call) => {
      const type = rootType(call.c, call.args[0]!, 'sqrt');
      return type === null ? null : mappedResult(call, type, 'auto');
    },
    run: squareRoot,
  },
  plainFunction(
    'exp',
    unary(exp, (_x, y) => y),
    'Exponential function.',
    'eˣ',
    'exp(-1)',
  ),
  plainFunction(
    'ln',
    unary(ln, (x) => 1 / x, positive),
    'Natural logarithm.',
    'ln x',
    'ln(2)',
  ),
  plainFunction(
    'log10',
    unary(log10, (x) => 1 / (x * Math.LN10), positive),
    'Decimal logarithm.',
    'lg x',
    'log10(1000)',
  ),
];
