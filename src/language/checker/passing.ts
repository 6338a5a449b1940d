// Passing an argument to a parameter: the declared type, one element of a list, or anything for `any` (T3, T4).
import type { Mend } from '../../text/problem.ts';
import type * as ast from '../ast.ts';
import type { Checked } from '../checked.ts';
import { typeProblem } from '../problems/types.ts';
import { disagreement, elementOf, type QuantityType, type Type } from '../type.ts';
import { turnMends } from './agreement.ts';
import type { Context } from './context.ts';
import { displayOfMark, typeOfMark } from './declared.ts';
import { degreesInstead } from './degrees.ts';
import { describe, describeChecked } from './describe.ts';
import { withUnit } from './unit-mends.ts';

export interface Passed {
  /** The type that the body sees. */
  readonly type: Type;
  /** Whether the argument is a list over which the call is mapped. */
  readonly mapped: boolean;
}

interface Target {
  readonly name: string;
  readonly parameter: string;
}

/** What the body sees of an argument; null where it does not fit (reported). */
export function passes(c: Context, arg: Checked, mark: ast.TypeMark | null, target: Target): Passed | null {
  if (mark?.kind === 'list') {
    if (arg.type.is !== 'list') return refuse(c, arg, wordsOf(mark), target);
    if (mark.of.kind === 'any') return { type: arg.type, mapped: false };
    const type = element(c, arg, arg.type.of, mark, target);
    return type === null ? null : { type: { is: 'list', of: type }, mapped: false };
  }
  if (mark?.kind === 'any') {
    return arg.type.is === 'list' ? { type: withoutZero(arg.type.of), mapped: true } : { type: withoutZero(arg.type), mapped: false };
  }
  const mapped = arg.type.is === 'list';
  const type = element(c, arg, arg.type.is === 'list' ? arg.type.of : arg.type, mark, target);
  return type === null ? null : { type, mapped };
}

/** A `0` handed to `any` is a plain number inside. */
function withoutZero(type: Type): Type {
  return type.is === 'quantity' && type.zero ? { ...type, zero: false } : type;
}

/** The type of one element that the parameter takes; null where the found one does not fit (reported). */
function element(c: Context, arg: Checked, found: Type, mark: ast.TypeMark | null, target: Target): Type | null {
  const wanted = elementOf(typeOfMark(mark));
  if (found.is === 'unknown') return null;
  if (wanted.is !== 'quantity') return wanted.is === found.is ? wanted : refuse(c, arg, wordsOf(mark), target);
  if (found.is !== 'quantity') return refuse(c, arg, wordsOf(mark), target);
  if (found.zero && !wanted.point) return wanted;
  const why = disagreement(found.dimension, wanted.dimension);
  if (why === 'angle' || why === 'turns') {
    const doing = `\`${target.parameter}\` of \`${target.name}\` ${why === 'angle' ? 'mixes' : 'holds'}`;
    c.problems.push(typeProblem(why === 'angle' ? 'turns-against-radians' : 'bare-turns', arg.at, { doing, mends: turnMends(arg) }));
    return null;
  }
  if (why !== null || found.point !== wanted.point) return refuse(c, arg, wordsOf(mark), target, found, wanted);
  if (found.power !== null && wanted.power !== null && found.power !== wanted.power) {
    c.problems.push(typeProblem('power-declared', arg.at, { found: found.power, wanted: wanted.power }));
  }
  return wanted;
}

function refuse(c: Context, arg: Checked, wanted: string, target: Target, found?: QuantityType, expected?: QuantityType): null {
  const offer = expected === undefined ? { hint: '', mends: [] } : instead(arg, wanted, expected, found);
  c.problems.push(typeProblem('argument-type', arg.at, { ...target, wanted, found: describeChecked(arg), ...offer }));
  return null;
}

function instead(arg: Checked, wanted: string, expected: QuantityType, found?: QuantityType): { hint: string; mends: readonly Mend[] } {
  const isTemperature = found !== undefined && found.dimension.si === expected.dimension.si;
  if (found?.point && !expected.point && isTemperature)
    return { hint: '; a point of temperature is no difference, take `T - …`', mends: withUnit(arg, wanted) };
  if (!expected.point) return { hint: '', mends: withUnit(arg, wanted) };
  return isTemperature ? { hint: '; a difference is no point of temperature, write degC', mends: [] } : degreesInstead(arg, expected);
}

function wordsOf(mark: ast.TypeMark | null): string {
  if (mark?.kind === 'list' && mark.of.kind === 'any') return 'a list';
  return describe(typeOfMark(mark), displayOfMark(mark));
}
