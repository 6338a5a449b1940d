// Checks that several functions of the mathematics share.
import { PLAIN } from '../../units/dimension.ts';
import type { Checked, Display } from '../checked.ts';
import { meet } from '../checker/agreement.ts';
import { describeChecked } from '../checker/describe.ts';
import { typeProblem } from '../problems/types.ts';
import { elementOf, isAngle, listOf, NUMBER, type QuantityType, type Type } from '../type.ts';
import type { CallCheck, CallResult } from './builtin.ts';

/** The result of a call mapped over the lists among its arguments. */
export function mappedResult(call: CallCheck, type: Type, display: Display): CallResult {
  const mapped = call.args.map((a) => a.type.is === 'list');
  return { type: mapped.some(Boolean) ? listOf(type) : type, display, mapped };
}

/** The result of a call that takes its arguments as they are. */
export function wholeResult(call: CallCheck, type: Type, display: Display): CallResult {
  return { type, display, mapped: call.args.map(() => false) };
}

/** The quantity type of an argument's elements; null where it is none, or a point where none may stand (reported). */
export function quantityOf(call: CallCheck, arg: Checked, points: 'no points' | 'points'): QuantityType | null {
  const type = elementOf(arg.type);
  if (type.is !== 'quantity')
    return refuse(call, typeProblem('wants-number', arg.at, { doing: `\`${call.name}\` takes`, found: describeChecked(arg) }));
  if (type.point && points === 'no points') {
    const words = `\`${call.name}\` of a point of temperature has no meaning; take a difference, such as \`T - absolute_zero\``;
    return refuse(call, typeProblem('point-arithmetic', arg.at, { words, mends: [] }));
  }
  return type;
}

/** Checks that an argument is a plain number (counts of rotation aside). */
export function plainOf(call: CallCheck, arg: Checked): QuantityType | null {
  const type = quantityOf(call, arg, 'no points');
  if (type === null) return null;
  if (type.dimension.si === PLAIN) return NUMBER;
  return refuse(
    call,
    typeProblem('argument-type', arg.at, {
      name: call.name,
      parameter: 'x',
      wanted: 'a plain number',
      found: describeChecked(arg),
      hint: '',
      mends: [],
    }),
  );
}

/** Checks that an argument is an angle or a plain number without turns or cycles. */
export function angleOf(call: CallCheck, arg: Checked): QuantityType | null {
  const type = quantityOf(call, arg, 'no points');
  if (type === null || isAngle(type.dimension)) return type;
  const turns = type.dimension.si === PLAIN;
  const found = turns ? 'this counts turns; write `2*pi rad` for one turn' : `found ${describeChecked(arg)}`;
  return refuse(call, typeProblem('not-an-angle', arg.at, { name: call.name, found, mends: [] }));
}

/** Checks that an argument is a list of quantities (or of dates where they are allowed). */
export function listArgument(call: CallCheck, arg: Checked, what: string, dates: 'dates' | 'no dates'): Type | null {
  const { type } = arg;
  if (type.is === 'list' && (type.of.is === 'quantity' || (type.of.is === 'date' && dates === 'dates'))) return type.of;
  return refuse(call, typeProblem('wants-list', arg.at, { name: call.name, what, found: describeChecked(arg) }));
}

/** The type of arguments that meet, such as those of `max`; null where they do not (reported). */
export function metType(call: CallCheck, args: readonly Checked[]): { type: Type; display: Display } | null {
  const odd = args.find((arg) => !['quantity', 'date'].includes(elementOf(arg.type).is));
  if (odd !== undefined) {
    return refuse(call, typeProblem('wants-number', odd.at, { doing: `\`${call.name}\` takes`, found: describeChecked(odd) }));
  }
  const doing = `\`${call.name}\` mixes`;
  let first = args[0]!;
  for (const arg of args.slice(1)) {
    const a = elementOf(first.type);
    const b = elementOf(arg.type);
    if (a.is === 'date' && b.is === 'date') continue;
    if (a.is !== 'quantity' || b.is !== 'quantity') {
      return refuse(call, typeProblem('different-kinds', arg.at, { doing, left: describeChecked(first), right: describeChecked(arg) }));
    }
    const type = meet(call.c, { ...first, type: a }, { ...arg, type: b }, { doing, at: call.at });
    if (type === null) return null;
    first = { ...first, type, display: a.zero ? arg.display : first.display };
  }
  return { type: elementOf(first.type), display: first.display };
}

function refuse(call: CallCheck, problem: ReturnType<typeof typeProblem>): null {
  call.c.problems.push(problem);
  return null;
}
