// sin, cos, tan and their inverses; angles are in radians or plain numbers (R3).
import { base } from '../../units/dimension.ts';
import { unitOf } from '../../units/read-unit.ts';
import { raise } from '../fault.ts';
import { valueProblem } from '../problems/values.ts';
import { NUMBER, quantity } from '../type.ts';
import { best, join, standard, type Uncertain } from '../uncertainty/dual.ts';
import { type Builtin, type CallSite, unary } from './builtin.ts';
import { angleOf, mappedResult, metType, plainOf } from './checks.ts';
import { acos, asin, atan, atan2, cos, sin, tan } from './elementary.ts';

const RADIANS = quantity(base('rad'));

const within1 = (x: number, site: CallSite) => {
  if (!(x >= -1 && x <= 1)) raise(valueProblem('out-of-domain', site.at, { name: site.name, takes: 'values from -1 to 1', found: `${x}` }));
};

function ofAngle(name: string, run: Builtin['run'], description: string): Builtin {
  return {
    name,
    form: `${name}(angle)`,
    parameters: [{ name: 'angle', takes: 'an angle in radians or degrees, or a plain number' }],
    least: 1,
    most: 1,
    description,
    formula: `${name} x`,
    source: 'ISO 80000-2:2019, 2-14',
    example: `${name}(30 deg)`,
    check: (call) => (angleOf(call, call.args[0]!) === null ? null : mappedResult(call, NUMBER, null)),
    run,
  };
}

function toAngle(name: string, run: Builtin['run'], description: string): Builtin {
  return {
    name,
    form: `${name}(x): rad`,
    parameters: [{ name: 'x', takes: 'a plain number' }],
    least: 1,
    most: 1,
    description,
    formula: `arc${name.slice(1)} x`,
    source: 'ISO 80000-2:2019, 2-14',
    example: `${name}(0.5)`,
    check: (call) => (plainOf(call, call.args[0]!) === null ? null : mappedResult(call, RADIANS, unitOf('rad'))),
    run,
  };
}

const nearOne = (x: Uncertain) => Math.abs(best(x)) + standard(x) >= 1;

export const trigonometry: readonly Builtin[] = [
  ofAngle(
    'sin',
    unary(sin, (x) => cos(x)),
    'Sine.',
  ),
  ofAngle(
    'cos',
    unary(cos, (x) => -sin(x)),
    'Cosine.',
  ),
  ofAngle(
    'tan',
    unary(tan, (_x, y) => 1 + y * y),
    'Tangent.',
  ),
  toAngle(
    'asin',
    unary(asin, (x) => 1 / Math.sqrt(1 - x * x), within1, nearOne),
    'Angle whose sine is x, from −π/2 to π/2.',
  ),
  toAngle(
    'acos',
    unary(acos, (x) => -1 / Math.sqrt(1 - x * x), within1, nearOne),
    'Angle whose cosine is x, from 0 to π.',
  ),
  toAngle(
    'atan',
    unary(atan, (x) => 1 / (1 + x * x)),
    'Angle whose tangent is x, from −π/2 to π/2.',
  ),
  {
    name: 'atan2',
    form: 'atan2(y, x): rad',
    parameters: [
      { name: 'y', takes: 'a quantity' },
      { name: 'x', takes: 'a quantity of the same dimension' },
    ],
    least: 2,
    most: 2,
    description: 'Angle of the point (x, y), from −π to π.',
    formula: 'arg(x + iy)',
    source: 'IEEE 754-2019, 9.2',
    example: 'atan2(3 ohm, 4 ohm)',
    check: (call) => {
      const met = metType(call, call.args);
      return met === null ? null : mappedResult(call, RADIANS, unitOf('rad'));
    },
    run: {
      kind: 'scalar',
      plain: () => (y, x) => atan2(y, x),
      dual:
        () =>
        ([y, x]) => {
          const [b, a] = [best(y!), best(x!)];
          const square = a * a + b * b;
          return join(atan2(b, a), y!, a / square, x!, -b / square, Math.hypot(a, b) <= Math.hypot(standard(x!), standard(y!)));
        },
    },
  },
];
