// Types in plain words, for messages.
import { PLAIN } from '../../units/dimension.ts';
import { displayUnit } from '../../units/display-unit.ts';
import type { Checked, Display } from '../checked.ts';
import type { Type } from '../type.ts';
import { inFact } from './degrees.ts';

/** `V`, `a plain number`, `a temperature in degC`, `a list of A`, `a row of motors` … */
export function describe(type: Type, display: Display = 'auto'): string {
  switch (type.is) {
    case 'quantity': {
      if (type.dimension === PLAIN)
        return display !== null && display !== 'auto' && display.text !== '' ? `a plain number (${display.text})` : 'a plain number';
      const unit = display === 'auto' || display === null ? displayUnit(type.dimension, type.power, type.point, 1) : display;
      return type.point ? `a temperature in ${unit.text}` : `${unit.text}${inFact(unit)}`;
    }
    case 'date':
      return 'a date';
    case 'text':
      return 'a text';
    case 'yesno':
      return 'yes or no';
    case 'list':
      return type.of.is === 'unknown' ? 'a list' : `a list of ${several(type.of, display)}`;
    case 'table':
      return `the table \`${type.table.name}\``;
    case 'row':
      return `a row of \`${type.table.name}\``;
    case 'unknown':
      return 'an unknown value';
  }
}

function several(type: Type, display: Display): string {
  switch (type.is) {
    case 'quantity':
      return type.dimension === PLAIN ? 'plain numbers' : type.point ? 'temperatures' : describe(type, display);
    case 'row':
      return `rows of \`${type.table.name}\``;
    default:
      return type.is === 'yesno' ? 'yes and no' : `${type.is}s`;
  }
}

/** The same for a checked expression, in the unit that it would be shown in. */
export function describeChecked(node: Checked): string {
  return describe(node.type, node.display);
}

/** What a value is, where a unit alone would not say it: `a value in V`. */
export function describeValue(node: Checked): string {
  const whole = describeChecked(node);
  return node.type.is === 'quantity' && !node.type.point && node.type.dimension !== PLAIN ? `a value in ${whole}` : whole;
}
