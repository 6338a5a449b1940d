// round, ceil, floor: to whole numbers or to steps; they end the uncertainty and say where it could change the number (T11, U8).

import { PLAIN } from '../../units/dimension.ts';
import { fromSI } from '../../units/quantity.ts';
import { describeChecked } from '../checker/describe.ts';
import { raise } from '../fault.ts';
import { typeProblem } from '../problems/types.ts';
import { valueProblem } from '../problems/values.ts';
import { disagreement, NUMBER, type QuantityType } from '../type.ts';
import { combined } from '../uncertainty/combine.ts';
import { best, type Uncertain } from '../uncertainty/dual.ts';
import type { Builtin, CallSite } from './builtin.ts';
import { mappedResult, quantityOf } from './checks.ts';

/** A value within 1e-9 of a whole number counts as it; for `round` of half a one as well. */
function settled(x: number): number {
  const whole = Math.round(x);
  return Math.abs(x - whole) <= 1e-9 * Math.max(1, Math.abs(x)) ? whole : x;
}

const ROUNDINGS = {
  round: (x: number) => Math.sign(x) * Math.floor(settled(2 * Math.abs(x)) / 2 + 0.5),
  ceil: (x: number) => Math.ceil(settled(x)),
  floor: (x: number) => Math.floor(settled(x)),
} as const;

function rounding(name: keyof typeof ROUNDINGS, description: string, example: string): Builtin {
  const to = ROUNDINGS[name];
  const value = (site: CallSite, x: number, step: number) => {
    if (!(step > 0))
      raise(valueProblem('out-of-domain', site.args[1]?.at ?? site.at, { name, takes: 'a step above zero', found: `${step}` }));
    const steps = to(x / step);
    const inverse = Math.round(1 / step);
    const result = inverse > 1 && 1 / inverse === step ? steps / inverse : steps * step;
    return result === 0 ? 0 : result;
  };
  return {
    name,
    form: `${name}(x, step)`,
    parameters: [
      { name: 'x', takes: 'a plain number, or a quantity with a step' },
      { name: 'step', takes: 'the step, of the same dimension; 1 where it is left out' },
    ],
    least: 1,
    most: 2,
    description,
    formula: name === 'round' ? 'nearest multiple of the step, halves away from zero' : name === 'ceil' ? '⌈x/step⌉·step' : '⌊x/step⌋·step',
    source: 'ISO 80000-2:2019, 2-10; halves away from zero as IEEE 754-2019, 4.3.1',
    example,
    endsUncertainty: true,
    check: (call) => {
      const x = quantityOf(call, call.args[0]!, 'no points');
      const step: QuantityType | null = call.args[1] === undefined ? NUMBER : quantityOf(call, call.args[1], 'no points');
      if (x === null || step === null) return null;
      if (call.args[1] === undefined && x.dimension.si !== PLAIN) {
        const hint = `; give a step, such as \`${name}(x, 0.1 ${describeChecked(call.args[0]!)})\``;
        call.c.problems.push(
          typeProblem('argument-type', call.args[0]!.at, {
            name,
            parameter: 'x',
            wanted: 'a plain number',
            found: describeChecked(call.args[0]!),
            hint,
            mends: [],
          }),
        );
        return null;
      }
      if (call.args[1] !== undefined && disagreement(x.dimension, step.dimension) !== null) {
        call.c.problems.push(
          typeProblem('argument-type', call.args[1].at, {
            name,
            parameter: 'step',
            wanted: describeChecked(call.args[0]!),
            found: describeChecked(call.args[1]),
            hint: '',
            mends: [],
          }),
        );
        return null;
      }
      return mappedResult(call, x, call.args[0]!.display);
    },
    run: {
      kind: 'scalar',
      plain:
        (site) =>
        (x, step = 1) =>
          value(site, x, step),
      dual:
        (site) =>
        ([x, step], frame) => {
          const unit = best(step ?? 1);
          const result = value(site, best(x!), unit);
          if (!frame.run.shifting) noteOthers(site, x!, unit, result, frame.run.notes);
          return result;
        },
    },
  };
  function noteOthers(
    site: CallSite,
    x: Uncertain,
    step: number,
    result: number,
    notes: { push(p: ReturnType<typeof valueProblem>): unknown },
  ): void {
    const { expanded } = combined(x);
    const others = [value(site, best(x) - expanded, step), value(site, best(x) + expanded, step)].filter((other) => other !== result);
    if (others.length === 0) return;
    const display = site.args[0]!.display;
    const shown = (si: number) =>
      display === null || display === 'auto' ? `${si}` : `${Number(fromSI(si, display).toPrecision(12))} ${display.text}`;
    notes.push(valueProblem('also-rounds-to', site.at, { other: others.map(shown).join(' or ') }));
  }
}

export const roundings: readonly Builtin[] = [
  rounding('round', 'Nearest whole number, or nearest multiple of a step.', 'round(34.37 A, 0.1 A)'),
  rounding('ceil', 'Next whole number upward, or next multiple of a step.', 'ceil(1.1 * 10)'),
  rounding('floor', 'Next whole number downward, or next multiple of a step.', 'floor(7.9)'),
];
