// Declared types (`: A`, `: [ohm]`, `: text`): they check, set the display, and end angle counts and kind of power (T3, T7).
import { differenceUnit } from '../../units/quantity.ts';
import type * as ast from '../ast.ts';
import type { Checked, Display } from '../checked.ts';
import { typeProblem } from '../problems/types.ts';
import { DATE, disagreement, listOf, NUMBER, type QuantityType, TEXT, type Type, typeOfUnit, UNKNOWN } from '../type.ts';
import { turnMends } from './agreement.ts';
import { type Context, unknown } from './context.ts';
import { degreesInstead } from './degrees.ts';
import { describe, describeChecked } from './describe.ts';
import { declaredAs, withUnit } from './unit-mends.ts';

/** The type that a mark means; null is the plain number. `any` gives the unknown type. */
export function typeOfMark(mark: ast.TypeMark | null): Type {
  if (mark === null) return NUMBER;
  switch (mark.kind) {
    case 'unit':
      return typeOfUnit(mark.unit.text === '' ? null : mark.unit);
    case 'text':
      return TEXT;
    case 'date':
      return DATE;
    case 'any':
      return UNKNOWN;
    case 'list':
      return listOf(typeOfMark(mark.of));
  }
}

/** The unit that a mark shows values in. */
export function displayOfMark(mark: ast.TypeMark | null): Display {
  if (mark?.kind === 'list') return displayOfMark(mark.of);
  return mark?.kind === 'unit' && mark.unit.text !== '' ? mark.unit : null;
}

/**
 * The value as a declaration has it. A list declared in a unit has elements in that unit. What does not fit has been
 * reported and gives an unknown value of the declared type, so that its users are checked all the same. The node itself
 * is retyped: it has just been made and nothing else holds it.
 */
export function declare(c: Context, value: Checked, mark: ast.TypeMark | null): Checked {
  if (mark === null || mark.kind === 'any') return value;
  const wanted = typeOfMark(mark);
  if (value.type.is === 'unknown') return { ...value, display: displayOfMark(mark) };
  const fitted = shapedTo(c, value, wanted, displayOfMark(mark), mark);
  if (fitted === null) return unknown(value.at);
  const display = displayOfMark(mark);
  const sameUnit =
    value.display === display || (value.display !== null && value.display !== 'auto' && value.display.text === unitText(display));
  if (value.kind === 'constant' && !sameUnit) return { ...value, type: fitted, display, written: null };
  return Object.assign(value, { type: fitted, display });
}

function unitText(display: Display): string {
  return display === null || display === 'auto' ? '' : display.text;
}

/** The declared type in the value's shape; null where it does not fit (reported). */
function shapedTo(c: Context, value: Checked, wanted: Type, display: Display, mark: ast.TypeMark): Type | null {
  const { at } = value;
  const element = value.type.is === 'list' ? value.type.of : value.type;
  const target = wanted.is === 'list' ? wanted.of : wanted;
  const listWanted = wanted.is === 'list';
  if (listWanted && value.type.is !== 'list') {
    c.problems.push(typeProblem('declared-type', at, { wanted: describe(wanted, display), found: describeChecked(value) }));
    return null;
  }
  if (element.is === 'unknown') return null;
  if (target.is === 'quantity' && element.is === 'quantity') {
    if (!agrees(c, element, target, value, display, mark)) return null;
    return value.type.is === 'list' ? listOf(target) : target;
  }
  if (target.is === element.is) return value.type;
  c.problems.push(typeProblem('declared-type', at, { wanted: describe(target, display), found: describeChecked(value) }));
  return null;
}

function agrees(c: Context, found: QuantityType, wanted: QuantityType, value: Checked, display: Display, mark: ast.TypeMark): boolean {
  const { at } = value;
  if (found.zero && !wanted.point) return true;
  const unit = display === null || display === 'auto' ? 'plain number' : display.text;
  const why = disagreement(found.dimension, wanted.dimension);
  if (why === 'angle' || why === 'turns') {
    const doing = `declared in ${unit}, this ${why === 'angle' ? 'mixes' : 'holds'}`;
    c.problems.push(typeProblem(why === 'angle' ? 'turns-against-radians' : 'bare-turns', at, { doing, mends: turnMends(value) }));
    return false;
  }
  if (why === 'dimension' || found.point !== wanted.point) {
    const instead = degreesInstead(value, wanted);
    const hint = why === null ? pointHint(found, display) : instead.hint;
    const mends =
      why === null ? [] : [...instead.mends, ...withUnit(value, unit === 'plain number' ? '' : unit), ...declaredAs(value, mark)];
    c.problems.push(typeProblem('wrong-dimension', at, { found: describeChecked(value), wanted: describe(wanted, display), hint, mends }));
    return false;
  }
  if (found.power !== null && wanted.power !== null && found.power !== wanted.power) {
    c.problems.push(typeProblem('power-declared', at, { found: found.power, wanted: wanted.power }));
  }
  return true;
}

function pointHint(found: QuantityType, display: Display): string {
  if (found.point) return '; a point is declared in degC, `T - absolute_zero` is in kelvins above zero';
  return `; a difference is declared in ${display !== null && display !== 'auto' ? differenceUnit(display).text : 'K'}`;
}
